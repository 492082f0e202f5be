// Written by `npm run words`, save where each comes from.
export const trace = {
  'Along centre and crotch curve': 'trade',
  'Along the hem, from the side to the grainline, carried on where it ends above.': 'trade',
  'Along the hip line, from the side to the centre line; where the crotch curve has already begun there, to the centre line carried on straight.':
    'trade',
  'Along the hip line, from the side to the grainline, carried on where it ends below.': 'trade',
  'Along the inseam': 'trade',
  'Along the knee line, from the side to the grainline.': 'trade',
  'Along the side': 'plain',
  'Along the waist edge': 'trade',
  'Back, {0}: {1}, but the other numbers make it {2}, {3} less; it is drawn with {4}.': 'plain', // {0} name, {1} mm(given), {2} mm(others), {3} by, {4} mm(drawn)
  'Back, {0}: {1}, but the other numbers make it {2}, {3} more; it is drawn with {4}.': 'plain', // {0} name, {1} mm(given), {2} mm(others), {3} by, {4} mm(drawn)
  'Below the hip line at the side, the hem lies {0} down in front and {1} behind.': 'trade', // {0} mm(front), {1} mm(back)
  'Below the waist at the side, the hip line lies {0} down in front and {1} behind.': 'trade', // {0} mm(front), {1} mm(back)
  'Carry the centre line on straight down to the crotch line; from there straight across to the crotch point.': 'trade',
  'Centre above the side': 'plain',
  'Crotch line to hem': 'trade',
  'Crotch line to knee line': 'trade',
  'Crotch run': 'trade',
  'Follow the line from the crotch point down to the hem.': 'trade',
  'Follow the line from the waist down to the hem.': 'trade',
  Fork: 'trade',
  'From the crotch line straight up to where the centre line stops being straight.': 'trade',
  'From the hip line straight down to the level of the crotch point, where the inseam begins.': 'trade',
  'From the hip line up to the waist, the side is {0} long in front and {1} behind.': 'trade', // {0} mm(front), {1} mm(back)
  'From the level of the crotch point straight down to the hem.': 'trade',
  'From the level of the crotch point straight down to the knee line. Leave it out where the block has no knee.':
    'trade',
  'From the waist’s end at the side, straight down along the grain, to the level of the hip line.': 'trade',
  'Front and back, their corners and edges were found by their shapes.': 'plain',
  'Front, {0}: {1}, but the other numbers make it {2}, {3} less; it is drawn with {4}.': 'plain', // {0} name, {1} mm(given), {2} mm(others), {3} by, {4} mm(drawn)
  'Front, {0}: {1}, but the other numbers make it {2}, {3} more; it is drawn with {4}.': 'plain', // {0} name, {1} mm(given), {2} mm(others), {3} by, {4} mm(drawn)
  'Gaps of up to {0} between the lines were closed.': 'plain', // {0} mm(gap)
  Hems: 'trade',
  'Hip line to crotch line': 'trade',
  'Hip lines': 'trade',
  'How much higher the waist lies at the centre than at the side; less than {0} where it lies lower.': 'plain', // {0} mm(0)
  Inseams: 'trade',
  'Lean of the centre line': 'trade',
  'Level the hems: {0} on each block': 'trade', // {0} half
  'Level the hip lines: {0} on each block': 'trade', // {0} half
  'On the paper, at centre and crotch': 'trade',
  'On the paper, at the hem': 'trade',
  'On the paper, at the inseam': 'trade',
  'On the paper, at the side': 'plain',
  'On the paper, at the waist': 'plain',
  'One line was passed over, because it can’t be told where it lies.': 'plain',
  'Set a ruler upright on the hip line’s end at the centre: how far inside of it the waist’s end lies; less than {0} where it lies outside.':
    'trade', // {0} mm(0)
  'Side to grainline at the hem': 'trade',
  'Side to grainline at the hip line': 'trade',
  'Side to grainline at the knee line': 'trade',
  'Stand the tape on its edge and follow the line from the waist down the centre and round the curve to the crotch point.':
    'trade',
  'Stand the tape on its edge and follow the waist from the side to the centre, over the darts as they lie open.':
    'trade',
  'Start of the crotch curve': 'trade',
  'Straight across from the crotch point to the side.': 'trade',
  'Straight across from the inseam to the side.': 'trade',
  'Straight across, square to the grain: from the waist’s end at the side to the level of its end at the centre, over the darts as they lie open.':
    'trade',
  'That is more than a pencil line: either the blocks were cut so, or a line lies in the wrong place.': 'trade',
  'The back crotch point was lowered by {0}; the inseams are equal.': 'trade', // {0} mm(off)
  'The back crotch point was raised by {0}; the inseams are equal.': 'trade', // {0} mm(off)
  'The back has no plain hip line; it is taken to lie {0} below the waist at the side.': 'trade', // {0} mm(depth)
  'The crotch run was trued by {0}.': 'trade', // {0} degrees(off)
  'The front has no plain hip line; it is taken to lie {0} below the waist at the side.': 'trade', // {0} mm(depth)
  'The hems were levelled: {0} on each block.': 'trade', // {0} half
  'The hip lines were levelled: {0} on each block.': 'trade', // {0} half
  'The inseams are {0} long in front and {1} behind.': 'trade', // {0} mm(front), {1} mm(back)
  'The waist was trued at the side: {0} on each block.': 'trade', // {0} half
  'True the crotch run by {0}': 'trade', // {0} degrees(off)
  'True the inseams: lower the back crotch point by {0}': 'trade', // {0} mm(off)
  'True the inseams: raise the back crotch point by {0}': 'trade', // {0} mm(off)
  'True the waist at the side: {0} on each block': 'trade', // {0} half
  'Waist at the side': 'trade',
  'Waist to hip line': 'trade',
  'Width at the crotch line': 'trade',
  'Width at the hem': 'trade',
  'Width at the hip line': 'trade',
  'Width at the knee line': 'plain',
  'Width at the waist': 'plain',
  'With the inseams sewn together, the two corners at the crotch point add up to {0}; the seam runs on smoothly at {1}.':
    'trade', // {0} degrees(180 + by), {1} degrees(180)
  'can’t be {0}, for the other numbers make it {1}: measure it again, and what it hangs together with.': 'plain', // {0} mm(given), {1} mm(others)
  'doesn’t show which outline is the front: write “front” in the one and “back” in the other.': 'plain',
  'doesn’t tell in which unit it is drawn: save it with its unit, or as SVG with a width in mm, cm or in.':
    'standard: SVG, W3C',
  'don’t show one flat floor: are the marks on their places?': 'plain',
  'drafted from the body': 'plain',
  'has corners that can be taken for those of a block in more than one way, or in none: call its lines {0} and so on.':
    'trade', // {0} own(`${part}-waist, ${part}-centre`)
  'has more than one line that may be its grainline: give it arrowheads, or call it “grainline”.': 'trade',
  'has no grainline: draw it as a straight line within the block.': 'trade',
  'has {0} closed outlines, where a front and a back are wanted: leave these two alone in it, or call their lines front-waist, front-centre and so on.':
    'plain', // {0} number(outlines.length, 0)
  'has {0} curves or straight parts, of {1} that a line may have: draw it with fewer points.': 'plain', // {0} number(count, 0), {1} number(MOST_EDGE_CURVES, 0)
  'is more than can be taken off the back.': 'plain',
  'is more than can be taken off the front.': 'plain',
  'is too short to be an edge.': 'plain',
  'must be drawn, as a line of that name.': 'plain',
  'must be less than the {0} from the crotch line to the waist.': 'trade', // {0} mm(depth)
  'must be less than the {0} to the hem; leave it out where the block ends above the knee.': 'trade', // {0} mm(hem)
  'must be marked.': 'plain',
  'must be one line; its {0} pieces don’t meet within {1}.': 'plain', // {0} number(pieces.length, 0), {1} mm(SAME_END)
  'must have its places one after another: waist, centre, crotch, inseam, hem and side, all the way round.': 'trade',
  'must lie between the waist, {0}, and the hem, {1}.': 'trade', // {0} mm(waist.y), {1} mm(hem.y)
  'must start where {0} ends; they are {1} apart.': 'plain', // {0} own(before), {1} mm(gap)
  'must take in less than the {0} of the whole waist edge.': 'trade', // {0} mm(waistEdge)
  'needs at least one curve.': 'plain',
  'reaches farther than {0} from where the waist begins at the side; no block is that large.': 'trade', // {0} mm(FARTHEST)
  'shows too few marks that lie on a sheet or on another photograph, or marks that cross over; four that go round do.':
    'plain',
  'would have blocks of {0}: is its unit the one that it is drawn in?': 'trade', // {0} mm(reach)
  'your own blocks, less the ease that they have or are taken to have': 'trade',
  'your own, by its numbers': 'plain',
  'your own, from a drawing': 'plain',
  'your own, from a photograph': 'plain',
  '{0} lines were passed over, because it can’t be told where they lie.': 'plain', // {0} number(unread, 0)
} as const;
