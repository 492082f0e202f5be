// Written by `npm run words`, save where each comes from.
export const leg = {
  ' It was turned by {0} about centre front, so that it stands within 6° of square to both centre lines': 'trade', // {0} degrees(Math.abs(waistTurned))
  ' The back’s hip level was {0} off and was brought in line.': 'trade', // {0} mm(hipDifference)
  'Centre back keeps its lean of {0}.': 'trade', // {0} degrees(leg.back.lean)
  'Centre back leaned {0}; as chosen it is straightened to {1}.': 'trade', // {0} before, {1} after
  'Centre back leaned {0}; as much as the opening needs it is straightened to {1}.': 'trade', // {0} before, {1} after
  'Centre front leans inwards by {0}.': 'trade', // {0} mm(lean)
  'Centre front leans outwards by {0}, and stays so.': 'trade', // {0} mm(lean)
  'Centre lines and crotch curves of the {0} leg stay as long as those of the other, front and back, so that the two can be sewn to each other and their notches meet.':
    'trade', // {0} SIDE_NAMES[side]
  'It changes {0}.': 'plain', // {0} inTurn( changes.map(({ name, by }) => (by > 0 ? say`${name} by +${mm(by)}` : say`${name} by ${mm(by)}`)), ', ', )
  'Length: {0}. Both inseams are {1} long, measured from the crotch, and the hem is {2} round.': 'trade', // {0} lengthWords, {1} mm(pathLength(leg.front.inseam)), {2} mm(hem)
  'No finished measure changes.': 'ours: a finished measure, of the garment',
  'The blocks lie side by side, grainlines upright, {0} The gaps of {1} at the waist, {2} at the knee and {3} at the hem become part of the leg; {4}':
    'trade', // {0} contactWords(joined), {1} mm(leg.gapAtWaist), {2} mm(leg.gapAtKnee), {3} mm(leg.gapAtHem), {4} dartWords(joined)
  'The join is not spread.': 'ours: the join, where the two blocks meet',
  'The join is spread by {0}, parallel to the grain: the garment grows by 2 × {1}{2} = {3}.':
    'ours: the join, where the two blocks meet', // {0} part(leg.spread), {1} part(leg.spread), {2} rounding(2 * leg.spread, { mm: leg.spread, times: 2 }), {3} part(2 * leg.spread)
  'The leg falls straight from the knee.': 'plain',
  'The leg keeps the inseams of the blocks.': 'trade',
  'The leg runs evenly to the hem that was chosen.': 'trade',
  'The opening is {0}, and {1} must pass.': 'plain', // {0} mm(opening), {1} mm(needed)
  'The pyjama leg narrows in one hollow line each side {0}.': 'plain', // {0} pyjamaHemTold(hemBody, pyjamaHemOf(joined, choices))
  'The waist edge is lowered by {0} along the centre lines, the crotch lowered by {1}.': 'trade', // {0} mm(-raiseWaist), {1} mm(lowerCrotch)
  'The waist edge is one straight line from centre back to centre front, so that the casing’s fold is straight and its turning lies flat.{0}':
    'trade', // {0} squaringWords(leg)
  'The waist edge is raised by {0} along the centre lines, the crotch lowered by {1}.': 'trade', // {0} mm(raiseWaist), {1} mm(lowerCrotch)
  'The {0} hip is fuller by {1}: this leg is spread by that much more, parallel to the grain, half in front and half behind.':
    'trade', // {0} SIDE_NAMES[side], {1} mm(more.fullerHip)
  'The {0} hip is higher by {1}: the waist edge of this leg lies that much higher over the side, and as before at both centres, in one smooth line.':
    'trade', // {0} SIDE_NAMES[side], {1} mm(more.higherHip)
  'The {0} leg is as the measurements say.': 'plain', // {0} SIDE_NAMES[side]
  'The {0} leg is longer by {1}: both its inseams are, stretched along the grain, so that no width changes; the knee goes down by its share.':
    'trade', // {0} SIDE_NAMES[side], {1} mm(more.longerLeg)
  'The {0} seat is fuller by {1}: the back of this leg is moved out by so much, parallel to the grain.': 'trade', // {0} SIDE_NAMES[side], {1} mm(more.fullerSeat)
  'This leg alone: {0}': 'plain', // {0} inTurn( FIGURES.map(([name, of]) => { const by = of(after) - of(before); if (Math.abs(by) < TOLD) return UNSAID; return by < 0 ? say`${name} −${mm(-by)}` : say`${name} +${mm(by)}`; }), ', ', )
  'at the knee': 'trade: a length of trousers',
  'at this length no hem fits both legs; on a longer leg one would.': 'trade',
  'at this length the hem of this leg can be {0} to {1} round.': 'trade', // {0} mm(least), {1} mm(most)
  'below the knee': 'trade: a length of trousers',
  'crotch length': 'trade',
  'crotch seam': 'trade',
  full: 'trade: a length of trousers',
  inseam: 'trade',
  'it can be lowered by {0} at most': 'plain', // {0} mm(-lowest)
  'it can’t be lowered': 'plain',
  'leans {0}': 'plain', // {0} mm(lean)
  left: 'plain',
  'lowered by {0} the waist edge would come nearer than {1} to the hip line at centre back, or to the crotch curve below it; on these blocks {2}.':
    'trade', // {0} by, {1} mm(wanted), {2} most
  'lowered by {0} the waist edge would come nearer than {1} to the hip line at centre front, or to the crotch curve below it; on these blocks {2}.':
    'trade', // {0} by, {1} mm(wanted), {2} most
  'mid-calf': 'trade: a length of trousers',
  'mid-thigh': 'trade: a length of trousers',
  right: 'plain',
  short: 'trade: a length of trousers',
  'the one dart is not sewn.': 'trade',
  'the {0} darts are not sewn.': 'trade', // {0} number(count)
  'there are no darts.': 'trade',
  thigh: 'trade',
  'to what the foot passes with room to spare, {0} + {1}{2} = {3}': 'plain', // {0} part(foot), {1} part(HEM.footRoom), {2} rounding(width, foot, HEM.footRoom), {3} part(width)
  'to {0} × foot {1} + {2} × knee {3} + {4}{5} = {6}': 'plain', // {0} number(HEM.ofFoot), {1} part(foot), {2} number(HEM.ofKnee), {3} part(knee), {4} part(hemRoom(body)), {5} rounding(width, { mm: foot, times: HEM.ofFoot }, { mm: knee, times: HEM.ofKnee }, hemRoom(b
  'to {0}, and no further: on a shorter way to the ankle the inseams would start too steeply': 'trade', // {0} mm(width)
  'touching at the hip.{0}': 'plain', // {0} levels
  'touching where a side line bulges out; at the hip they stand {0} apart.{1}': 'plain', // {0} mm(gapAtHip), {1} levels
  '{0} The back crotch point lies {1} below the front’s, so that both inseams are equal.': 'trade', // {0} shapeTold(joined, choices), {1} mm(leg.backCrotchDrop)
  '{0} by +{1}': 'plain', // {0} name, {1} mm(by)
  '{0}, and lifted by {1}, so that centre back stays {2} above the level of the side.': 'trade', // {0} turned, {1} mm(waistLifted), {2} mm(LEAST_BACK_RAISE)
} as const;
