// Written by `npm run words`, save where each comes from.
export const project = {
  'A wider cloth costs more by the length.': 'trade',
  'After wearing': 'trade: a fault that a fitting shows',
  Allowances: 'trade',
  'At the {0} of the {1} nothing is added: the cloth is cut along this line.': 'trade', // {0} inside(edge), {1} inside(piece)
  'At the {0} of the {1} the cut line runs {2} outside the stitching line.': 'trade', // {0} inside(edge), {1} inside(piece), {2} mm(allowance)
  Balance: 'trade',
  'Band height': 'trade',
  Blocks: 'trade',
  'Both legs lie on one length then.': 'plain',
  'Buy {0} instead of {1}.': 'plain', // {0} amount(toBuy), {1} amount(now.lay.toBuy)
  'Buy {0}, where nothing fits now.': 'plain', // {0} amount(toBuy)
  Check: 'plain',
  'Cord length': 'trade',
  'Cord width': 'trade',
  'Crotch allowance': 'trade',
  'Cut off the white margin of {0} on its left, lay it on the thin line of {1} so that half-diamonds of one number make a whole one, and tape.':
    'plain', // {0} label, {1} beside
  'Cut off the white margins of {0} and {1} where they meet, butt them so that half-diamonds of one number make a whole one, and tape.':
    'trade', // {0} beside, {1} label
  'Ease at the waist': 'trade',
  'Ease in the crotch length': 'trade',
  Edges: 'plain',
  'Elastic length': 'trade',
  'Elastic width': 'trade',
  'Flat seat': 'trade: a fault that a fitting shows',
  'Full seat': 'trade: a fault that a fitting shows',
  'Full thighs': 'trade: a fault that a fitting shows',
  'Height of the band': 'trade',
  'Height of the sheet': 'plain',
  'Hem allowance': 'trade',
  'Hem cord length': 'trade',
  'Hem cord width': 'trade',
  'Hem depth': 'trade',
  'Hem elastic width': 'trade',
  'Hem finish': 'trade',
  'Hem girth': 'trade',
  'Hollow back': 'trade: a fault that a fitting shows',
  'Inseam allowance': 'trade',
  'It is {0} now.': 'plain', // {0} mm(now)
  'It takes a short seam on each leg, along the grain.': 'trade',
  'It was drawn by an earlier cut: every choice in it is kept, but the outline has changed.': 'plain',
  'Join the row of {0} to the row of {1} in the same way: one sheet meets.': 'plain', // {0} own(below), {1} own(above)
  'Join the row of {0} to the row of {1} in the same way: {2} sheets meet.': 'plain', // {0} own(first), {1} own(over), {2} number(joined.length, 0)
  'Knees that touch': 'trade: a fault that a fitting shows',
  'Lay it the way that takes least cloth': 'trade',
  'Left and right': 'plain',
  'Left hip fuller': 'trade: a fault that a fitting shows',
  'Left hip higher': 'trade: a fault that a fitting shows',
  'Left leg longer': 'trade: a fault that a fitting shows',
  'Left seat fuller': 'trade: a fault that a fitting shows',
  'Left side': 'plain',
  Leg: 'trade',
  Length: 'trade',
  'Lower the crotch': 'trade',
  Machine: 'trade',
  Margin: 'plain',
  Nappy: 'plain',
  'Off the grain': 'trade',
  'Only in cloth without a nap, and with a print that has no upper end.': 'trade',
  Overlap: 'plain',
  Paper: 'plain',
  'Piece the fork’s tip, {0}': 'trade', // {0} mm(tip)
  'Pieces lie': 'trade',
  Pocket: 'trade',
  'Pocket facing': 'trade',
  'Pocket height': 'trade',
  'Pocket width': 'trade',
  Pockets: 'trade',
  'Projected cut line': 'trade',
  'Projected ground': 'plain',
  'Prominent abdomen': 'trade: a fault that a fitting shows',
  'Pull when sitting': 'trade: a fault that a fitting shows',
  'Put down sheet {0}.': 'plain', // {0} label
  'Raise the waist': 'trade',
  'Repeat across': 'trade',
  'Repeat along': 'trade',
  'Right hip fuller': 'trade: a fault that a fitting shows',
  'Right hip higher': 'trade: a fault that a fitting shows',
  'Right leg longer': 'trade: a fault that a fitting shows',
  'Right seat fuller': 'trade: a fault that a fitting shows',
  'Right side': 'plain',
  'Rows of elastic': 'trade',
  Scale: 'plain',
  Sew: 'trade',
  Shape: 'trade',
  'Shrinks in length': 'trade',
  'Shrinks in width': 'trade',
  Spread: 'trade',
  'Starting body': 'trade',
  'Straighten the centres': 'trade',
  Stretch: 'trade',
  'Stretch of the band': 'trade',
  'Stretch of the elastic': 'trade',
  'Stretch of the rib': 'trade',
  'The cloth is': 'trade',
  'The cloth lies': 'trade',
  'The cord is': 'trade',
  'The elastic is': 'trade',
  'The hem’s cord is': 'trade',
  'The leg': 'plain',
  'The long bar measures': 'ours: the long and the short bar of the test page',
  'The pocket is': 'trade',
  'The project': 'plain',
  'The raw edge is': 'trade',
  'The short bar measures': 'ours: the long and the short bar of the test page',
  'Turn of the cloth': 'trade',
  'Turn pieces end for end': 'trade',
  Turned: 'plain',
  'Turned under': 'trade',
  Units: 'plain',
  'Use a cloth {0} wide': 'trade', // {0} mm(width)
  'Waist allowance': 'trade',
  'Waist finish': 'trade',
  'Who it is for': 'plain',
  'Width of the cloth': 'trade',
  'Width of the sheet': 'plain',
  'Worn for sleeping': 'plain',
  'Worn sitting': 'plain',
  'a number between {0} and {1}': 'plain', // {0} least, {1} most
  'a number of millimetres between {0} and {1}': 'plain', // {0} least, {1} most
  'a number of years between {0} and {1}': 'plain', // {0} least, {1} most
  'a text of at most {0} characters': 'plain', // {0} number(LONGEST_TEXT, 0)
  'ends about {0} above the floor': 'plain', // {0} mm(above)
  'ends {0} above the floor': 'plain', // {0} mm(above)
  'has more curves than the {0} that an edge may have; draw it with fewer points.': 'plain', // {0} number(Number(which), 0)
  'has no place here.': 'plain',
  'has {0} MB; a project file has at most {1} MB.': 'plain', // {0} number(size / 1e6, 1), {1} number(LARGEST_FILE / 1e6, 0)
  'holds {0} more problems.': 'plain', // {0} number(more, 0)
  'is a name that can’t be used in a file.': 'plain',
  'is left out as a whole because of that; the usual choice takes its place.': 'plain',
  'is too large for a number.': 'plain',
  'isn’t a project file: it can’t be read as JSON.': 'standard: JSON, RFC 8259',
  'isn’t a project file: it holds more than {0} values.': 'plain', // {0} number(MOST_VALUES, 0)
  'isn’t a project file: it is nested more than {0} levels deep.': 'plain', // {0} number(DEEPEST, 0)
  'isn’t a project file: it must be one object in braces.': 'plain',
  'its turning crosses the lines of the leg; a longer leg or a narrower hem would do.': 'trade',
  'its turning crosses the lines of the leg; a narrower elastic, or a casing or band of its own, would do.': 'trade',
  'just reaches the floor': 'plain',
  'leaves {0} of inseam to the leg; at least {1} must stay, so a lower band or a longer leg would do.': 'trade', // {0} mm(inseam), {1} mm(SHORTEST_LEG)
  'left {0}, right {1}': 'plain', // {0} own(print(left)), {1} own(print(right))
  'lies about {0} on the floor': 'plain', // {0} mm(-above)
  'lies {0} on the floor': 'plain', // {0} mm(-above)
  'must be a list of curves.': 'plain',
  'must be a point: [x, y] in millimetres.': 'plain',
  'must be an object in braces.': 'plain',
  'must be four points: start, two handles, end.': 'plain',
  'must be true or false.': 'plain',
  'must be two points: [[x, y], [x, y]] in millimetres.': 'plain',
  'must be {0}.': 'plain', // {0} number(VERSION, 0)
  'must be “legwork-project”; this is another kind of file.': 'plain',
  'must not be left out.': 'plain',
  'no hem': 'trade',
  'no leg can be drawn from these measurements; measure rise, hip, hip depth and inside leg again, and look at the unit.':
    'trade',
  'on the left {0}, on the right {1}': 'plain', // {0} hemEnd(first, about), {1} hemEnd(second, about)
  'one of {0}': 'plain', // {0} own(field.options.join(', '))
  'one of {0}, or { "{1}": {2} }': 'plain', // {0} own(field.options.join(', ')), {1} own(field.own.key), {2} figureWanted({ unit: 'mm', ...field.own })
  'stands twice in the file; only the last one can count.': 'plain',
  'the blocks that were brought can’t be used without that; blocks drafted from the measurements take their place.':
    'trade',
  'these blocks hang {0} below the body’s crotch, and the inside leg is {1}: that leaves no leg to correct. Measure rise and inside leg again, or bring the blocks of this body.':
    'trade', // {0} mm(riseEase), {1} mm(body.insideLeg)
  'together these choices make lines that cross or turn back; set one of them back.': 'plain',
  'true or false': 'plain',
  'was written by a newer Legwork; this one reads up to version {0}.': 'ours: the name', // {0} number(VERSION, 0)
  'with this the lines of the leg cross or turn back': 'plain',
  'with this the lines of the {0} leg cross or turn back; less would do.': 'plain', // {0} SIDE_NAMES[side]
  '{0}; leave it out.': 'plain', // {0} crossing
  '{0}; measure it again, or leave it empty.': 'plain', // {0} crossing
  '{0}; {1} would do.': 'plain', // {0} crossing, {1} limit
  '{0}; “{1}” would do.': 'plain', // {0} crossing, {1} own(neutral)
  '“auto” or {0}': 'plain', // {0} figureWanted(field)
} as const;
