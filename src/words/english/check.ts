// Written by `npm run words`, save where each comes from.
export const check = {
  ' (estimated)': 'plain',
  ', or measure {0}': 'plain', // {0} what
  '; a full abdomen asks for it': 'plain',
  '; the measured crotch length asks for it': 'trade',
  'A band of knit': 'trade',
  'A crotch curve bends both ways; the corners at the crotch point add up to {0}.': 'trade', // {0} degrees(angle)
  'A pyjama leg slants less where the crotch meets it.': 'trade',
  'Allow more for the turn of the cloth, {0} at least.': 'trade', // {0} mm(ENOUGH_TURN)
  'Allow {0} for the turn of the cloth': 'trade', // {0} mm(value)
  'Allowances even': 'trade',
  'At each hem of a child’s trousers two ends of a cord would hang out; none may (EN 14682).':
    'standard: EN 14682, cords on children’s clothes',
  'At the back the hem is {0} off square to the inseam.': 'trade', // {0} degrees(worst)
  'At the back the waist edge is {0} off square to the centre seam.': 'trade', // {0} degrees(worst)
  'At the crotch point the front curve arrives at {0}, the back at {1} from level.': 'trade', // {0} degrees(front), {1} degrees(back)
  'At the front the hem is {0} off square to the inseam.': 'trade', // {0} degrees(worst)
  'At the front the waist edge is {0} off square to the centre seam.': 'trade', // {0} degrees(worst)
  'At the {0} the cut line is {1} off its allowance.': 'trade', // {0} edgeName(worst.edge), {1} mm(worst.off)
  'At the {0} the leg is {1} round, and what it lies on {2} (estimated).': 'plain', // {0} NAMES[worst.at], {1} mm(worst.leg), {2} mm(worst.limb)
  'At the {0} the leg is {1} round, and what it lies on {2}.': 'plain', // {0} NAMES[worst.at], {1} mm(worst.leg), {2} mm(worst.limb)
  'Back stands higher': 'ours: a check, said in words of the trade',
  'Below the waist at the side, the hip levels of front and back differ by {0}.': 'trade', // {0} mm(Math.abs(hipDifference))
  'Beyond the centre, the crotch reaches {0} in front and only {1} behind; in trousers it reaches farther behind.':
    'trade', // {0} mm(extensionFront), {1} mm(extensionBack)
  'Beyond the centre, the crotch reaches {0} in front and {1} behind.': 'trade', // {0} mm(extensionFront), {1} mm(extensionBack)
  'Centre back above its notch': 'trade',
  'Centre back stands {0} above centre front; {1} is wanted{2}.': 'trade', // {0} mm(tilt), {1} mm(wanted), {2} by
  'Centre back stands {0} below centre front; {1} above it is wanted{2}.': 'trade', // {0} mm(-tilt), {1} mm(wanted), {2} by
  'Centre back {0}, centre front {1}; inwards {2} and {3} are the most, outwards {4}.': 'trade', // {0} leaning(back), {1} leaning(front), {2} degrees(back.most), {3} degrees(front.most), {4} degrees(OUTWARDS)
  'Centre front above its notch': 'trade',
  'Centres lean gently': 'ours: a check, said in words of the trade',
  'Centres run smooth': 'ours: a check, said in words of the trade',
  'Channels have room': 'ours: a check, said in words of the trade',
  'Check body rise, hip depth and crotch length: the curve has too little height for its width.': 'trade',
  'Check waist, hip and body rise: no centre seam is drawn with a kink.': 'trade',
  'Choose a knit that stretches more, or an elastic casing.': 'trade',
  'Choose a straighter leg or another length: the inseam slants too much where it is cut.': 'trade',
  'Choose elastic at the hem.': 'trade',
  'Choose elastic instead of the cord.': 'trade',
  'Choose elastic, or cut the cord {0} long and sew it down at centre back.': 'trade', // {0} mm(opening + 2 * most)
  'Choose elastic: this waist is too wide for any cord.': 'trade',
  'Choose the pyjama shape': 'trade',
  'Choose the pyjama shape, which spreads the narrowing over the leg.': 'plain',
  'Choose the pyjama shape: this hem slants the inseams so that no good crotch curve meets them.': 'trade',
  'Cord at the hem': 'ours: a check, said in words of the trade',
  'Cord at the waist': 'ours: a check, said in words of the trade',
  'Crotch ends nearly level': 'ours: a check, said in words of the trade',
  'Crotch runs smooth': 'ours: a check, said in words of the trade',
  'Cut it {0} long, or use one that stretches to {1} times its length.': 'plain', // {0} mm(needed), {1} number(fullest / ring, 1)
  'Cut line doesn’t cross itself': 'trade',
  'Cut the elastic {0} long': 'trade', // {0} mm(value)
  'Draw the centre line and the crotch curve of the block so that one runs into the other.': 'trade',
  'Ease at the hip': 'ours: a check, said in words of the trade',
  'Ease at the knee': 'trade',
  'Ease at the thigh': 'trade',
  'Ease in the rise': 'trade',
  Elastic: 'trade',
  'Elastic stretches far enough': 'trade',
  'Estimated, not measured: {0}': 'plain', // {0} all(estimates.map(({ key }) => say`${inside(measurementName(key))}`))
  'Every cut line keeps its allowance within {0}.': 'trade', // {0} mm(TOLERANCE)
  'Face the waist': 'trade',
  'Finish the waist with a facing of its own shape, which lies flat on any line.': 'trade',
  'Foot goes through the hem': 'trade',
  'Fork fits between the legs': 'ours: a check, said in words of the trade',
  'From crotch to hem the front inseam slants {0}, the back {1}; {2} is the most, and {3} between them.': 'trade', // {0} degrees(front), {1} degrees(back), {2} degrees(steepest), {3} degrees(APART)
  'Front and back not swapped': 'plain',
  'Fullness at the waist': 'ours: a check, said in words of the trade',
  'Grainlines parallel': 'ours: a check, said in words of the trade',
  'Hem runs smooth': 'ours: a check, said in words of the trade',
  'Hip levels agree': 'ours: a check, said in words of the trade',
  'Hip line at the measured level': 'trade',
  'Hold the hems with elastic': 'trade',
  'Hold the waist with elastic': 'trade',
  'Inseams equal': 'ours: a check, said in words of the trade',
  'Inseams of the blocks agree': 'ours: a check, said in words of the trade',
  'Inseams slant alike': 'ours: a check, said in words of the trade',
  'It can be pulled on': 'plain',
  'It has to stretch to be pulled on: choose a thin, soft cloth.': 'trade',
  'It stands {0} above the side; at least {1} is wanted.': 'plain', // {0} mm(raise), {1} mm(least)
  'It stands {0} below the side; at least {1} above it is wanted.': 'plain', // {0} mm(-raise), {1} mm(least)
  'Joined, both centre seams run into the crotch curve without a kink over {0}.': 'trade', // {0} degrees(TOLERANCE)
  'Joined, the centre back seam has a kink of {0}; {1} is the most.': 'trade', // {0} degrees(worst), {1} degrees(TOLERANCE)
  'Joined, the centre front seam has a kink of {0}; {1} is the most.': 'trade', // {0} degrees(worst), {1} degrees(TOLERANCE)
  'Joined, the grainlines stand at {0} to each other.': 'trade', // {0} degrees(apart)
  'Laid over, the {0} differs by {1} ({2}) from the line it is stitched to.': 'trade', // {0} TURNED_NAMES[worst.what], {1} mm(off(worst)), {2} share(part)
  'Leave out the spread': 'trade',
  'Leave the back fork whole': 'trade',
  'Leave the back fork whole, or piece at least {0} of it.': 'trade', // {0} mm(WORTH_PIECING)
  'Leave the back fork whole, or see that the pattern goes on across the seam.': 'trade',
  'Leave the crotch where it was': 'trade',
  'Left and right meet': 'ours: a check, said in words of the trade',
  'Left leg: {0}': 'plain', // {0} worse.reason
  'Leg fits the cloth': 'ours: a check, said in words of the trade',
  'Lower the crotch by only {0}': 'trade', // {0} mm(value)
  'Lower the crotch by {0}': 'trade', // {0} mm(value)
  'Lower the crotch by {0}, or measure body rise and crotch length again.': 'trade', // {0} mm(least - ease)
  'Lower the crotch less, or draw the blocks with less ease in the rise.': 'trade',
  'Make the difference between left and right smaller.': 'plain',
  'Make the ease in the rise {0}': 'trade', // {0} mm(value)
  'Make the hem at least {0} round, or the leg shorter{1}.': 'trade', // {0} mm(wanted), {1} measure
  'Make the hem at least {0} round.': 'trade', // {0} mm(hem)
  'Make the hem {0} round': 'trade', // {0} mm(hemGirth)
  'Make the hem {0} round.': 'trade', // {0} mm(hem)
  'Make the hem {0} round{1}.': 'trade', // {0} mm(hem), {1} orMeasure(doubt, say`the knee`)
  'Make {0} {1} longer': 'plain', // {0} part.name, {1} by
  'Make {0} {1} shorter': 'plain', // {0} part.name, {1} by
  'Measure again what contradicts the rest.': 'plain',
  'Measure body rise and crotch length again: the crotch is long for its height.': 'trade',
  'Measure body rise and hip depth again, from the same tape at the waist.': 'trade',
  'Measure on the block what is estimated.': 'trade',
  'Measure rise and crotch length again, from the same tape at the waist.': 'trade',
  'Measure the hip line’s width on front and back, and on one of them the heights from waist to hip line, crotch line and hem: without these nobody knows how large the block is.':
    'trade',
  'Measure waist and hip again, or trace the blocks anew: no centre line runs out so far.': 'trade',
  'Measure {0}.': 'plain', // {0} inside(measurementName(key))
  'Measure {0}: {1}': 'plain', // {0} inside(measurementName(key)), {1} inside(where)
  'Move the back crotch point up or down until both are equal.': 'trade',
  'Narrow the leg less: the wider its hem, the more alike its inseams slant.': 'trade',
  'No number contradicts the others.': 'plain',
  'Not measured on the {0}, and drawn by the usual proportions of this block: {1}.': 'trade', // {0} part, {1} names
  'Notches meet': 'ours: a check, said in words of the trade',
  'Nothing is turned over: waist and hem are finished with pieces of their own.': 'trade',
  'On a child’s clothes each end of a cord may hang free by at most {0} with the waist at its widest, and by {1} drawn in; here it is {2} and {3}.':
    'trade', // {0} mm(CORD_ENDS.widest), {1} mm(CORD_ENDS.gathered), {2} mm(widest), {3} mm(gathered)
  'One inseam has a notch that the other lacks.': 'trade',
  'One leg is cut {0} wide; the cloth has {1} after its first wash, without the selvedges.': 'trade', // {0} mm(width), {1} mm(room)
  'One leg is cut {0} wide; the cloth has {1}, without the selvedges.': 'trade', // {0} mm(width), {1} mm(room)
  'Pieced fork tip': 'trade: the fork is the part of trousers between the legs',
  'Raise centre back by {0}': 'trade', // {0} mm(value)
  'Raise the centre back waist by {0}, as for a pair that pulls down when sitting.': 'trade', // {0} mm(missing)
  'Redraw the back’s crotch point, the lower end of its crotch curve, {0} farther from the centre': 'trade', // {0} by
  'Redraw the back’s crotch point, the lower end of its crotch curve, {0} nearer to the centre': 'trade', // {0} by
  'Redraw the lower end of the back crotch curve flatter, by {0}.': 'trade', // {0} degrees(back - STEEPEST)
  'Redraw the lower end of the back crotch curve, so that it meets its inseam at {0} and not at {1}.': 'trade', // {0} degrees(180 - front), {1} degrees(back)
  'Redraw the lower end of the back inseam {0} higher': 'trade', // {0} by
  'Redraw the lower end of the back inseam {0} lower': 'trade', // {0} by
  'Redraw the lower end of the back’s grainline {0} nearer to the inseam': 'trade', // {0} by
  'Redraw the lower end of the back’s grainline {0} nearer to the side': 'trade', // {0} by
  'Redraw the lower end of the front crotch curve flatter, by {0}.': 'trade', // {0} degrees(front - STEEPEST)
  'Redraw the lower end of the front’s grainline {0} nearer to the inseam': 'trade', // {0} by
  'Redraw the lower end of the front’s grainline {0} nearer to the side': 'trade', // {0} by
  'Redraw the side end of the back’s hip line {0} higher': 'trade', // {0} by
  'Redraw the side end of the back’s hip line {0} lower': 'trade', // {0} by
  'Redraw the side end of the front’s hip line {0} higher': 'trade', // {0} by
  'Redraw the side end of the front’s hip line {0} lower': 'trade', // {0} by
  'Redraw the upper end of the back inseam, the crotch point, {0} higher': 'trade', // {0} by
  'Redraw the upper end of the back inseam, the crotch point, {0} lower': 'trade', // {0} by
  'Right leg: {0}': 'plain', // {0} worse.reason
  'Room at calf and hem': 'ours: room, ease where nothing is fitted',
  'Set the notches at equal lengths from the crotch point.': 'trade',
  'Sewn to each other, the crotch seams of the left and the right leg meet within {0}, notch on notch.': 'trade', // {0} mm(worst.by)
  'Sewn together, the notches of the inseams meet within {0}.': 'trade', // {0} mm(worst)
  'Spread by only {0}': 'trade', // {0} mm(value)
  'Spread by only {0}; the rest is the blocks’ own.': 'trade', // {0} mm(to)
  'Spread by {0}': 'trade', // {0} mm(value)
  'Spread by {0} and straighten': 'trade', // {0} mm(value)
  'Spread by {0} instead of {1}, or use a cloth that stretches more.': 'trade', // {0} mm(spread), {1} mm(leg.spread)
  'Spread by {0}.': 'trade', // {0} mm(leg.spread + (least - ease) / 2)
  'Spread by {0}{1}.': 'trade', // {0} mm(spread), {1} orMeasure(doubt, say`the knee`)
  'Spread less, or draw the blocks with less ease.': 'trade',
  'Spread less.': 'trade',
  'Stitching line inside the cut line': 'trade',
  'Straighten a little more': 'trade',
  'Straighten as much as is needed': 'trade',
  'Straighten fully': 'trade',
  'Straighten the centre lines (automatic does as much as is needed), or spread by {0}.': 'trade', // {0} mm(leg.spread + short / 2)
  'Straighten the centre lines and spread by {0} instead of {1}, or use a cloth that stretches more.': 'trade', // {0} mm(spread), {1} mm(leg.spread)
  'Straighten the centre lines.': 'trade',
  'Straighten the centre lines: the less they lean, the squarer the waist.': 'trade',
  'Straighten the seams at the {0}, or use a narrower turning.': 'trade', // {0} TURNED_NAMES[worst.what]
  'That is for a waist at the navel; tied halfway up to the ribs it sits about {0} higher, and rise and hip depth are as much more.':
    'trade', // {0} mm(40)
  'The back crotch curve': 'trade',
  'The blocks’ inseams are {0} in front and {1} behind.': 'trade', // {0} mm(front), {1} mm(back)
  'The blocks’ numbers agree': 'trade',
  'The crotch lies {0} above the body; {1} to {2} below is wanted.': 'trade', // {0} mm(-ease), {1} mm(least), {2} mm(MOST)
  'The crotch lies {0} below the body; {1} to {2} below is wanted.': 'trade', // {0} mm(ease), {1} mm(least), {2} mm(MOST)
  'The cut line crosses itself.': 'trade',
  'The cut line runs round once without crossing itself.': 'trade',
  'The fork reaches {0} across in front and {1} behind, together {2} of the hip; for {3} {4} to {5} are wanted.':
    'trade', // {0} mm(front), {1} mm(back), {2} share((front + back) / body.hipGirth), {3} worst.name, {4} mm(worst.least), {5} mm(worst.most)
  'The fork’s tip is only {0} wide, hardly wider than its allowances: it saves no cloth worth a seam.': 'trade', // {0} mm(width)
  'The front crotch curve': 'trade',
  'The front inseam is {0} long, the back {1}.': 'trade', // {0} mm(front), {1} mm(back)
  'The grainlines are parallel; in the tracings they stood up to {0} off the upright.': 'trade', // {0} degrees(tilt)
  'The hem is {0} round, {1} {2}{3}.': 'trade', // {0} mm(hem), {1} WORDS[told.key], {2} mm(told.girth), {3} estimatedWord(body, told.key)
  'The hip line lies {0} below the waist, where the hip was measured.': 'trade', // {0} mm(level)
  'The hip line lies {0} below the waist, {1} higher than the hip was measured; the ease is counted there.': 'trade', // {0} mm(level), {1} mm(-off)
  'The hip line lies {0} below the waist, {1} lower than the hip was measured; the ease is counted there.': 'trade', // {0} mm(level), {1} mm(off)
  'The hip measures {0}, {1} less than the body’s': 'plain', // {0} mm(girth), {1} mm(-ease)
  'The hip measures {0}, {1} more than the body’s': 'plain', // {0} mm(girth), {1} mm(ease)
  'The leg is {0} round at the crotch, the thigh {1}{2}; {3} to {4} of ease is wanted.': 'trade', // {0} mm(width), {1} mm(body.thighGirth), {2} estimatedWord(body, 'thighGirth'), {3} mm(least), {4} mm(MOST)
  'The leg is {0} round at the knee, the knee {1}{2}.': 'plain', // {0} mm(knee + ease), {1} mm(knee), {2} estimatedWord(body, 'kneeGirth')
  'The narrowest channel is {0} high for a cord of {1}, which needs at least {2} to slide.': 'trade', // {0} mm(room), {1} mm(channel.width), {2} mm(needed)
  'The narrowest channel is {0} high for an elastic of {1}, which needs at least {2} to slide.': 'trade', // {0} mm(room), {1} mm(channel.width), {2} mm(needed)
  'The opening is {0} times the waist that it is gathered to.': 'trade', // {0} number(fullness, 2)
  'The opening of {0} is {1} too small to pass over the fullest part.': 'trade', // {0} mm(opening), {1} mm(short)
  'The opening of {0} passes over the fullest part, which needs {1}.': 'trade', // {0} mm(opening), {1} mm(needed)
  'The seam of the fork’s tip, {0} long, breaks the stripes or checks of this cloth between the legs.': 'trade', // {0} mm(long)
  'The stitching line crosses itself.': 'trade',
  'The stitching line leaves the cut line by {0}.': 'trade', // {0} mm(beyond)
  'The stitching line runs round once, within the cut line.': 'trade',
  'The tip of the back fork is sewn on again by a seam {0} long, along the grain, between the legs, where it is hardly seen.':
    'trade', // {0} mm(long)
  'The two corners at the crotch point add up to {0}.': 'trade', // {0} degrees(angle)
  'Through the crotch it measures {0}; {1} is wanted, the body’s {2} and ease': 'trade', // {0} mm(length), {1} mm(wanted), {2} mm(ofBody)
  'Through the crotch it measures {0}; {1} is wanted, the body’s {2} and ease and what was raised or lowered': 'trade', // {0} mm(length), {1} mm(wanted), {2} mm(ofBody)
  'Turnings lie flat': 'ours: a check, said in words of the trade',
  'Under seven years the rules are stricter.': 'plain',
  'Undo the last change of the leg’s shape, length or hem: its edges run into each other.': 'trade',
  'Use a narrower allowance there.': 'trade',
  'Use a wider cloth, or spread {0} less.': 'trade', // {0} mm(over)
  'Use narrower seam allowances.': 'trade',
  'Use wider seam allowances, or a plainer hem or waist.': 'trade',
  'Waist runs smooth': 'ours: a check, said in words of the trade',
  'Were front and back swapped? Call the lines of the front back-… and those of the back front-….': 'plain',
  'a knit wants {0} to {1} more': 'trade', // {0} mm(least), {1} mm(most)
  'a woven wants {0} to {1} more': 'trade', // {0} mm(least), {1} mm(most)
  ankle: 'trade',
  'as far as a cutter goes, the blocks are {0} too long': 'trade', // {0} mm(rest)
  'as far as a cutter goes, the blocks are {0} too short': 'trade', // {0} mm(-rest)
  back: 'trade',
  'both together': 'plain',
  calf: 'trade',
  casing: 'trade',
  'casing over the higher hip': 'trade',
  doubtful: 'plain',
  front: 'trade',
  good: 'ours: a verdict, good, doubtful or wrong',
  hem: 'trade',
  'its front part is {0} long': 'plain', // {0} mm(rest)
  'its front part is {0} short': 'plain', // {0} mm(-rest)
  'leans {0} inwards': 'plain', // {0} degrees(lean)
  'leans {0} outwards': 'plain', // {0} degrees(-lean)
  'stands upright': 'plain',
  'the ankle': 'plain',
  'the back': 'trade',
  'the calf': 'plain',
  'the foot at heel and instep': 'plain',
  'the front': 'trade',
  'the knee': 'plain',
  'the thigh': 'plain',
  wrong: 'ours: a verdict, good, doubtful or wrong',
  '{0} cut {1} long is a ring of {2}, which stretches to {3}; the fullest part is {4}.': 'trade', // {0} what, {1} mm(elasticLength), {2} mm(ring), {3} mm(reach), {4} mm(fullest)
  '{0} cut {1} long is a ring that stretches to {2}; the fullest part is {3}.': 'trade', // {0} what, {1} mm(elasticLength), {2} mm(reach), {3} mm(fullest)
  '{0} differs by {1} between the left leg and the right one, which are sewn to each other.': 'trade', // {0} worst.name, {1} mm(worst.by)
  '{0} has to be {1} long to stretch over the fullest part of {2}; longer than the waist it won’t hold by itself.':
    'trade', // {0} what, {1} mm(elasticLength), {2} mm(fullest)
  '{0} was not measured: {1} is estimated from {2}; nine in ten bodies like this one have {3} to {4}.': 'plain', // {0} measurementName(estimate.key), {1} mm(estimate.value), {2} from, {3} mm(least), {4} mm(most)
  '{0} was not measured: {1} is taken from your own blocks.': 'trade', // {0} measurementName(estimate.key), {1} mm(estimate.value)
  '{0}, or choose a shape that draws its own inseams: pyjama or straight.': 'trade', // {0} backRedrawn(front - back, hemGap(joined))
  '{0}, or measure hip, body rise and crotch length again.': 'trade', // {0} madeRight(worst, long, subject.traced)
  '{0}, or turn the tracing by as much; then read hip and knee levels again.': 'plain', // {0} grainRedrawn(blocks)
  '{0}; the blocks are joined with their hip lines level.': 'trade', // {0} hipRedrawn(hipDifference, body.hipDepth, blocks)
} as const;
