// Written by `npm run words`, save where each comes from.
export const body = {
  '0.93 × rise {0} + 0.39 × hip {1} + {2}': 'trade', // {0} mm(bodyRise), {1} mm(hipGirth), {2} mm(intercept)
  'A closed loop of tape that just slips over the pointed foot: lay it flat and double it.': 'plain',
  'ANSUR II (NATICK/TR-15/007, 2014), least and most of 6,068 adults': 'source',
  'ANSUR II (NATICK/TR-15/007, 2014), least squares over 6,068 adults, women and men counted alike, the waist at the navel':
    'source',
  'ANSUR II (NATICK/TR-15/007, 2014), regression over 6,068 adults, sexes pooled': 'source',
  Age: 'trade: a measurement of the body',
  Ankle: 'trade: a measurement of the body, which ISO 8559-1 has, too',
  'AnthroKids (UM-HSRI-77-17, 1977) begins at 2 years': 'source',
  'AnthroKids (UM-HSRI-77-17, 1977), 998 of 1,000 children of 2–20 years': 'source',
  'Anthropometry of Infants, Children and Youths to Age 18 for Product Safety Design (UM-HSRI-77-17, 1977), 2–20 years, sexes together':
    'source',
  'Body rise': 'trade: a measurement of the body',
  Calf: 'trade: a measurement of the body, which ISO 8559-1 has, too',
  'Close trousers that fit: lay them flat, measure across the seat where it is widest, double it and take off about {0} for their ease.':
    'trade', // {0} mm(50)
  'Crotch length': 'trade: a measurement of the body, which ISO 8559-1 has, too',
  'Foot entry': 'trade: a measurement of the body',
  'From the tied tape at centre front, close between the legs, up to the tied tape at centre back.': 'trade',
  'From the tied tape down the side to the middle of the kneecap.': 'plain',
  'From the tied tape down the side, over the hip, to the floor. It checks rise and inside leg.': 'trade',
  'From the tied tape straight down the side to the level at which the hip was measured.': 'plain',
  'From the top of the head to the floor.': 'plain',
  'From the waist at the front, between the legs, to the waist at the back.': 'plain',
  'From the waist down to the fullest part of the seat, along the side.': 'trade',
  'From the waist down to the middle of the knee, along the side.': 'plain',
  'From the waist down to the seat of a hard chair, sitting upright.': 'plain',
  'From the waist to the floor, along the side.': 'plain',
  'Front crotch length': 'trade: a measurement of the body',
  Height: 'trade: a measurement of the body, which ISO 8559-1 has, too',
  'High hip': 'trade: a measurement of the body, which ISO 8559-1 has, too',
  'High hip {0} lies halfway between waist {1} and hip {2}; it should measure {3} to {4}.': 'trade', // {0} mm(highHipGirth), {1} mm(waistGirth), {2} mm(hipGirth), {3} mm(least), {4} mm(most)
  Hip: 'trade: a measurement of the body, which ISO 8559-1 has, too',
  'Hip depth': 'trade: a measurement of the body',
  'In years. Children are estimated by children’s figures, and their cautions depend on it.': 'plain',
  'Inside leg': 'trade: a measurement of the body, which ISO 8559-1 has, too',
  'Inside leg {0} with body rise {1}: with that rise legs measure {2} to {3}. Measure both again, and look at the unit.':
    'trade', // {0} mm(insideLeg), {1} mm(bodyRise), {2} at(INSIDE_SHARE[0]), {3} at(INSIDE_SHARE[1])
  'Just below the fold of the seat, tape level.': 'trade',
  Knee: 'trade: a measurement of the body, which ISO 8559-1 has, too',
  'Lay trousers of a good length flat, one leg folded back; from the point where the four seams meet to the edge of the hem.':
    'trade',
  'Level round the fullest part of the abdomen; needed where it is fuller than the hip.': 'trade',
  'Look at it again; nothing was changed. Source: {0}.': 'plain', // {0} source
  'Middle values of {0} children of that age, each measurement by itself (AnthroKids, UM-HSRI-77-17, 1977). Their inside leg is inferred from the fold of the seat, and children today are heavier.':
    'source', // {0} number(people)
  'Middle values of {0} men {1}.': 'plain', // {0} number(people), {1} whose
  'Middle values of {0} women {1}.': 'plain', // {0} number(people), {1} whose
  'No tape: under eighteen, the estimates come from measured children.': 'plain',
  'Nobody under two years was measured for the estimates: measure what can be measured.': 'plain',
  'Of trousers that fit: from the crotch seam to the hem, along the inside of the leg.': 'trade',
  'On the body, from the crotch to the floor, inside of the leg.': 'trade',
  'On the same trousers: from the top edge in front to the point where the four seams meet.': 'trade',
  'Outside leg': 'trade: a measurement of the body',
  'Over both ankle bones.': 'plain',
  'Over the middle of the kneecap, the knee a little bent.': 'plain',
  'Point the foot; round the heel and over the top of the instep.': 'plain',
  'Rise and inside leg together are {0} + {1}{2} = {3}, the outside leg {4}; they should meet within {5}. One of the three was misread.':
    'trade', // {0} part(bodyRise), {1} part(insideLeg), {2} rounding(sum, bodyRise, insideLeg), {3} part(sum), {4} part(outsideLeg), {5} part(SUM.more)
  'Round the abdomen, halfway between waist and hip.': 'plain',
  'Round the ankle bones.': 'plain',
  'Round the body where the waist edge should sit.': 'trade',
  'Round the fullest part of the calf.': 'trade',
  'Round the fullest part of the seat, tape level.': 'trade',
  'Round the fullest part of the thigh.': 'trade',
  'Round the heel and over the instep: the least a hem has to pass over.': 'trade',
  'Round the knee, slightly flexed.': 'plain',
  'Sit on a hard, flat chair; from the tied tape down the side to the chair.': 'plain',
  'Stand with your feet together; slide the tape up and down until it shows the most, and keep it level.': 'plain',
  'Stand without shoes, feet slightly apart, a book held up at the crotch; from its top edge to the floor.': 'trade',
  'Standing height without shoes.': 'plain',
  'Tape level where it measures most below the knee.': 'plain',
  'The crotch length was not measured; two bodies in three like this one lie within {0} of {1}. That is too wide to fit a crotch by, so nothing is drawn from it.':
    'trade', // {0} mm(expected.spread), {1} mm(expected.value)
  'The front part of the crotch length counts only beside the whole: measure that too.': 'trade',
  'The front part of the crotch length, from the waist to the point where the inseams should meet.': 'trade',
  'The same tape, read at the middle between the legs.': 'plain',
  'These decide the draft: waist {0}, hip {1}, body rise {2}, inside leg {3}, and for a full length the inseam of trousers that fit, {4}.':
    'trade', // {0} mm(body.waistGirth), {1} mm(body.hipGirth), {2} mm(body.bodyRise), {3} mm(body.insideLeg), {4} mm(body.trouserInseam)
  'These four decide the draft: waist {0}, hip {1}, body rise {2}, inside leg {3}.': 'trade', // {0} mm(body.waistGirth), {1} mm(body.hipGirth), {2} mm(body.bodyRise), {3} mm(body.insideLeg)
  Thigh: 'trade: a measurement of the body, which ISO 8559-1 has, too',
  'Tie a tape or elastic where the waistband will sit and leave it there; every height starts from it.': 'trade',
  'Trouser inseam': 'trade',
  'Trouser inseam {0} beside inside leg {1}: full-length trousers then measure {2} to {3}. Was one written down for the other?':
    'trade', // {0} mm(trouserInseam), {1} mm(insideLeg), {2} mm(least), {3} mm(most)
  'Trouser inseam {0} with body rise {1}: with that rise trousers measure {2} to {3}. Measure both again, and look at the unit.':
    'trade', // {0} mm(trouserInseam), {1} mm(bodyRise), {2} at(INSIDE_SHARE[0]), {3} at(INSIDE_SHARE[1])
  'Trousers of a good length: measure the inseam from the crotch to the hem; worn, see how far the hem ends above the floor, and add that.':
    'trade',
  'Trousers of a good length: the side from the top edge to the hem, and how far the hem ends above the floor.':
    'trade',
  'Trousers that fit and sit at the same waist: lay them flat and measure from the top edge down the side to where the seat is widest.':
    'plain',
  'Trousers that fit and sit at the same waist: lay them flat and measure the side from the top edge to the hem, and the inseam from the crotch to the hem. The difference, less about {0} for their ease, is the rise.':
    'trade', // {0} mm(15)
  'Trousers that fit and sit at the same waist: measure along the seam from the top edge in front, through the crotch, to the top edge at the back, and take off about {0} for their ease.':
    'trade', // {0} mm(30)
  'Trousers that sit there and have no elastic: lay them flat, measure the top edge across and double it.': 'trade',
  Waist: 'trade: a measurement of the body, which ISO 8559-1 has, too',
  'Waist to knee': 'trade: a measurement of the body',
  'Waist to knee {0}: with this rise and inside leg the knee lies {1} to {2} below the waist.': 'trade', // {0} mm(waistToKnee), {1} at(KNEE_SHARE[1]), {2} at(KNEE_SHARE[0])
  'inferred from heights of the waist and of the fold of the seat (UM-HSRI-77-17, 1977); no child’s crotch height was measured':
    'source',
  'inferred: 0.557 × ankle + 0.121 × height, as on adults (ANSUR II, 2014); no survey of children took the foot entry. Ankle: {0}':
    'source', // {0} ankle.source
  'inferred: as wide as the calf, as on adults (ANSUR II, 2014); no survey of children took the knee. Calf: {0}':
    'source', // {0} calf.source
  'inferred: the knee at an adult’s share of the inside leg (ANSUR II, 2014); shin heights of children agree': 'source',
  measured: 'plain',
  practice: 'source',
  'practice, wider than {0} (0.45–0.82)': 'plain', // {0} ADULTS
  'practice: trousers hang about {0} below the body’s crotch and end about {1} above the floor': 'trade', // {0} mm(HANG.belowCrotch), {1} mm(HANG.offFloor)
  'the front part must be less than the whole crotch length of {0}.': 'trade', // {0} mm(crotchLength)
  'the fullest hip can’t lie more than {0} below the seat; the body rise is {1}.': 'trade', // {0} mm(HIP_BELOW_SEAT), {1} mm(bodyRise)
  'whose hip lies within {0} of it, each measurement by itself, the waist at the navel (ANSUR II, NATICK/TR-15/007, 2014)':
    'source', // {0} mm(25)
  'with this rise and inside leg the knee lies between {0} and {1} below the waist.': 'trade', // {0} mm(lowest), {1} mm(highest)
  '{0} (0.096–0.295, 998 in 1,000 above 0.117), wider for a natural waist': 'trade', // {0} ADULTS
  '{0} (0.70–1.22 at the navel; a natural waist is narrower); NHANES 2017–2020 (CDC), 8,302 adults; {1}': 'source', // {0} ADULTS, {1} CHILDREN
  '{0} (0.73–0.88 of the waist height), wider for a natural waist and for children': 'trade', // {0} ADULTS
  '{0} (2.29–5.4), wider for a rise taken sitting': 'trade', // {0} ADULTS
  '{0} = {1}. Source: {2}.': 'plain', // {0} sum, {1} mm(value), {2} source
  '{0} can’t be estimated for a body like this one; measure it: {1}': 'plain', // {0} m.name, {1} inside(m.definition)
  '{0} is needed: {1}': 'plain', // {0} m.name, {1} inside(m.definition)
  '{0} must lie between {1} and {2}.': 'plain', // {0} m.name, {1} limit(m.lowest), {2} limit(m.highest)
  '{0} was not measured but reckoned from trousers that fit: {1}, give or take {2}.': 'plain', // {0} name, {1} mm(value), {2} mm(spread)
  '{0} was not measured but taken from your own blocks: {1}, give or take {2}.': 'trade', // {0} name, {1} mm(value), {2} mm(spread)
  '{0} was not measured, and no survey of children measured it; by adults’ proportions two in three lie within {1} of {2}.':
    'plain', // {0} name, {1} mm(spread), {2} mm(value)
  '{0} was not measured; two bodies in three like this one lie within {1} of {2}.': 'plain', // {0} name, {1} mm(spread), {2} mm(value)
  '{0} {1} beside {2} {3}: on measured people it is {4} to {5}. Measure both again.': 'plain', // {0} measurementName(part), {1} mm(value), {2} inside(measurementName(of)), {3} mm(whole), {4} mm(lowest * whole), {5} mm(highest * whole)
  '{0} {1} will do in its place.': 'plain', // {0} needed, {1} measurementName(m.inPlace)
  '{0}, waist at the navel. Source: {1}.': 'plain', // {0} expected.sum ?? UNSAID, {1} expected.source
  '{0}: knee height ÷ crotch height': 'trade', // {0} ADULTS
  '{0}: the fold of the seat, with the crotch 0.018 of the stature above it (inferred)': 'trade', // {0} CHILDREN
  '{0}; 0.165 at the navel, 0.19 at a natural waist': 'trade', // {0} ADULTS
  '{0}; 0.74 at the navel, 0.83 at a natural waist': 'trade', // {0} ADULTS
  '{0}; knee = 0.95 × lower thigh': 'plain', // {0} ADULTS
  '{0}; practice': 'plain', // {0} ADULTS
  '{0}; the back part is 0.42–0.71': 'plain', // {0} ADULTS
} as const;
