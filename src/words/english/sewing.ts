// Written by `npm run words`, save where each comes from.
export const sewing = {
  '4 threads, stitch 2.5 mm long, seam 6 mm wide, differential feed 1.3 to 1.5': 'trade',
  'A forgotten pin ends up in somebody’s skin: count them.': 'trade',
  'A knit doesn’t fray, and turned twice it makes a ridge. If the scrap shows one, cut the {0} off, overlock or zigzag the edge, and turn it once.':
    'trade', // {0} mm(under)
  'Check it over and press it': 'plain',
  'Children’s loungewear': 'trade',
  'Children’s sleepwear': 'trade',
  'Close the elastic with a pin and try it on before it is sewn: two fingers pass under it, and sitting for a while leaves no mark.':
    'trade',
  'Cord outside its channel': 'trade',
  'Cut away from your hands and close a rotary cutter after each cut; count pins and needles; never leave a hot iron alone.':
    'trade',
  'Cut the elastic {0} long, {1} wide. Close it with a pin round the waist, {2} lapped, and shorten it until it holds without digging in.':
    'trade', // {0} length, {1} mm(waist.elasticWidth), {2} mm(LAP)
  'Cut {0} elastics {1} long, {2} wide. Close one with a pin round the waist, {3} lapped, and shorten it until it holds without digging in; cut the others to match.':
    'trade', // {0} number(waist.rows, 0), {1} length, {2} mm(waist.elasticWidth), {3} mm(LAP)
  Fire: 'plain',
  'Fold {0} of tape in half and pin it to the wrong side of the waist at centre back, its ends on the raw edge: caught in this seam, the loop tells back from front.':
    'trade', // {0} mm(LOOP)
  'Fold {0} of tape in half. Inside, at centre back, slip {1} of both its ends under the {2} and pin them: the next stitching catches them, and the loop tells back from front.':
    'trade', // {0} mm(LOOP), {1} mm(CAUGHT), {2} edge
  'For {0}, a rule for children’s outerwear in the United States allows {1} of cord outside the channel, without toggles and sewn down; here it is {2}. It is a sensible measure for trousers too.':
    'trade', // {0} words, {1} mm(US_END), {2} mm(ends)
  'For {0}: at an ankle-length hem the cord has to lie wholly inside when it is drawn up. Elastic does the same without ends to step on.':
    'trade', // {0} words
  'For {0}: each end may hang free by {1} with the waist at its widest, and by {2} gathered; here it is {3} and {4}, too long: shorten the cord, or choose elastic.':
    'trade', // {0} words, {1} mm(CORD_ENDS.widest), {2} mm(CORD_ENDS.gathered), {3} mm(ends), {4} mm(gathered)
  'For {0}: each end may hang free by {1} with the waist at its widest, and by {2} gathered; here it is {3} and {4}, within that.':
    'trade', // {0} words, {1} mm(CORD_ENDS.widest), {2} mm(CORD_ENDS.gathered), {3} mm(ends), {4} mm(gathered)
  'For {0}: in the United Kingdom pyjamas on sale for children under 13 carry “KEEP AWAY FROM FIRE”, or the wording for cloth of low flammability to BS 5722.':
    'standard: BS 5722, flammability of nightwear', // {0} words
  'For {0}: in the United States children’s loungewear is regarded as sleepwear, whose cloth has to resist flame unless it fits tightly. This pant is not tight-fitting.':
    'trade', // {0} words
  'For {0}: in the United States sleepwear of sizes to 14 has to resist flame or fit tightly. This pant hangs loose and is not tight-fitting, so its cloth would have to pass.':
    'trade', // {0} words
  'Garments of nine months and smaller are exempt from the sleepwear rules while no piece of a two-piece is longer than {0}; this one measures {1} at its longest and goes beyond that.':
    'plain', // {0} mm(INFANT_LONGEST), {1} mm(largestExtent)
  'Garments of nine months and smaller are exempt from the sleepwear rules while no piece of a two-piece is longer than {0}; this one measures {1} at its longest and stays within that.':
    'plain', // {0} mm(INFANT_LONGEST), {1} mm(largestExtent)
  'Gather the hems': 'trade',
  'Gather the waist': 'trade',
  'Infant garment': 'trade',
  'Inside, at centre back, slip {0} of the nightwear label under the {1}, words up, and pin it: the next stitching catches it, and it tells back from front, too.':
    'trade', // {0} mm(CAUGHT), {1} edge
  Lap: 'trade',
  'Local rules and the cloth’s own label come before anything said here; Legwork certifies nothing.': 'ours: the name',
  'Loose cotton, and napped flannel most of all, catches fire easily and burns fast, on adults too: keep away from open flames, stoves and heaters.':
    'trade',
  'Mark {0} in quarters.': 'plain', // {0} edge
  Needle: 'trade',
  Needles: 'trade',
  'Nightwear label': 'trade',
  'No knots or toggles, no cord at the back; sew it down midway.': 'trade',
  'Nobody was timed, and the wash comes on top.': 'plain',
  'Over elastic let the iron hover and steam only: heat and weight harm it.': 'trade',
  'Overlock along the stitching line, {0}; the knife trims off the rest. Take pins out before they reach it.': 'trade', // {0} fromEdge(allowance)
  'Overlock both edges together beside the stitching, and trim off what is left outside it.': 'trade',
  'Overlock both edges together.': 'trade',
  Overlocker: 'plain',
  'Pin the nightwear label to the wrong side of the waist at centre back, words up, its upper edge on the raw edge: caught in this seam, it tells back from front, too.':
    'trade',
  'Press both legs, the inseams first, then waist and hems.': 'trade',
  'Press both seams open.': 'trade',
  'Press both seams to one side each.': 'trade',
  'Press the seam open.': 'trade',
  'Press the seam to one side.': 'trade',
  'Pull both bobbin threads together until {0} is {1} round, knot them, and share the gathers out from quarter to quarter.':
    'trade', // {0} edge, {1} mm(to)
  'Pull every seam once, gently: none opens. Both legs are equally long, and the centre seams stand upright.': 'trade',
  'Pull every seam once, gently: none opens. The left leg is on the wearer’s left, and the centre seams stand upright.':
    'trade',
  'Pull out whatever is still seen of the gathering threads.': 'trade',
  'Second row': 'plain',
  'Sew each lap with three rows of zigzag across it.': 'trade',
  'Sew each lap: a square round its edge, and a cross in it from corner to corner.': 'trade',
  'Sew the lap with three rows of zigzag across it.': 'trade',
  'Sew the lap: a square round its edge, and a cross in it from corner to corner.': 'trade',
  'Sew two rows of long stitches on the plain machine, all round inside the allowance, one close to the stitching line. Leave long threads at both ends.':
    'trade',
  'Sew {0} with a narrow zigzag, which gives with the cloth. Don’t pull: let the machine feed.': 'trade', // {0} fromEdge(allowance)
  'Sew {0}; backstitch at both ends.': 'trade', // {0} fromEdge(allowance)
  Stitch: 'trade',
  'Stitch a knit’s hem from the right side, where a twin needle makes its two rows, the upper one at the measure given; your fingers feel the edge beneath. No twin needle? A zigzag stretches too.':
    'trade',
  'Stitch from the right side, where a twin needle makes its two rows, the one nearer the fold on the stitching line: chalk that there first, or let the fold run along the seam guide. No twin needle? A zigzag stretches too.':
    'trade',
  'Stitch the line between the two channels, {0} above the first stitching, and leave {1} of it open behind, too, where elastic comes above it.':
    'trade', // {0} mm(above), {1} mm(LEFT_OPEN)
  'Stitch the line between the two channels, {0} above the first stitching.': 'trade', // {0} mm(above)
  'Stitch the {0} lines between the channels, {1} apart, and leave {2} of each open behind, too.': 'trade', // {0} number(lines, 0), {1} mm(apart), {2} mm(LEFT_OPEN)
  'Stitch the {0} lines between the channels, {1} apart.': 'trade', // {0} number(lines, 0), {1} mm(apart)
  Tension: 'trade',
  'The edge is {0} round, and the {1} reaches {2} when it is stretched as far as a seam should be.': 'trade', // {0} mm(length), {1} ring, {2} mm(to)
  'The folded edge lies {0} beyond the stitching line.': 'trade', // {0} mm(BEYOND_STITCHING)
  'The gathers are even, and {0} is as long as the stretched {1}.': 'trade', // {0} edge, {1} ring
  'The time is summed over the steps from practice: so many minutes for each metre that is cut, sewn and pressed, and some that don’t depend on length.':
    'trade',
  'The {0} edge lies {1} beyond the stitching line.': 'trade', // {0} edgeNamed(g, false), {1} mm(finished.hemPlan.beyond)
  'Time: {0}, if you have sewn trousers before; for a first pair {1}.': 'trade', // {0} spanned(usual), {1} spanned(first)
  Tools: 'plain',
  'Trim all thread ends, turn the trousers right side out, and count the pins.': 'trade',
  'Trim the allowances to half and clip them where the edge curves.': 'trade',
  'Turn the {0} edge up to the wrong side in its crease, {1} deep, and pin.': 'trade', // {0} edgeNamed(g, false), {1} mm(turnedDepth(g))
  'Turn {0} under, then {1} up, to the wrong side, in the creases, and pin.': 'trade', // {0} mm(hemTucked(g)), {1} mm(turnedDepth(g))
  'Under seven years the rule is stricter: elastic is the better choice.': 'trade',
  'Where the {0} will lie inside the casing, press their allowances to one side and stitch them down, from the raw edge to below the stitching line, so that the safety pin does not catch on them.':
    'trade', // {0} seams
  'Where the {0} will lie inside the casing, stitch the allowances down as they are pressed, from the raw edge to below the stitching line, so that the safety pin does not catch on them.':
    'trade', // {0} seams
  'Write the date and the measurements on the paper pattern, and what you would change.': 'plain',
  'Zigzag both edges together beside the stitching, and trim off what is left outside it.': 'trade',
  'Zigzag both edges together.': 'trade',
  'a child of 1 year': 'plain',
  'a child of this size': 'plain',
  'a child of {0} months': 'plain', // {0} number(Math.round(age * 12))
  'a child of {0} years': 'plain', // {0} number(years)
  'a day, about {0} to {1} hours': 'plain', // {0} a, {1} b
  'a little below normal, so that no thread breaks': 'trade',
  'a weekend, about {0} to {1} hours': 'plain', // {0} a, {1} b
  'an afternoon, about {0} to {1} hours': 'plain', // {0} a, {1} b
  'as far from the edge as you cut outside the line': 'plain',
  'balanced, the loopers meeting on the edge': 'trade',
  band: 'trade',
  'buttonhole, 0.4 mm long; or an eyelet pressed in': 'trade',
  'casing’s edge': 'trade',
  'each hem': 'trade',
  'facing’s edge': 'trade',
  folded: 'trade',
  'narrow zigzag, 2.5 mm long, 0.5 to 1 mm wide': 'trade',
  'normal, the threads locked inside the cloth': 'trade',
  overlocked: 'trade',
  'overlocker, 3 threads, stitch 2.5 mm long, differential feed 1': 'trade',
  'overlocker, 4 threads as in the seams, stitch 2.5 mm long, differential feed 1.3 to 1.5': 'trade',
  'straight, 2.5 mm long': 'trade',
  'straight, 3 mm long': 'trade',
  'straight, 4 to 5 mm long, upper tension loosened': 'trade',
  'the waist': 'trade',
  'zigzag in three steps, or plain zigzag, 3 mm long, 2 mm wide; or straight, 4 mm long, the waist stretched as far as it goes':
    'trade',
  'zigzag in three steps, or plain zigzag, 3 mm long, 4 mm wide': 'trade',
  'zigzag, 1.5 mm long, 3 mm wide': 'trade',
  'zigzag, 2 mm long, 5 mm wide, its right swing just off the edge': 'trade',
  'zigzag, 2.5 mm long, 2 mm wide': 'trade',
  zigzagged: 'plain',
  '{0} from the edge': 'plain', // {0} mm(allowance)
  '{0}, 3 mm long; or a zigzag, 2.5 mm long, 2 mm wide': 'trade', // {0} TWIN_NEEDLE
  '{0}, both': 'plain', // {0} NEEDLES.knit
  '{0}, from memory': 'source', // {0} named
  '{0}, quoted': 'source', // {0} named
} as const;
