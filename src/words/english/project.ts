// Written by `npm run words`, save where each comes from.
export const project = {
  'A wider cloth costs more by the length.': 'plain',
  'After wearing': 'plain',
  Allowances: 'plain',
  Balance: 'plain',
  'Band height': 'plain',
  'Both legs lie on one length then.': 'plain',
  'Buy {0} instead of {1}.': 'plain', // {0} amount(toBuy), {1} amount(now.lay.toBuy)
  'Buy {0}, where nothing fits now.': 'plain', // {0} amount(toBuy)
  'Cord length': 'plain',
  'Cord width': 'plain',
  'Crotch allowance': 'plain',
  'Ease at the waist': 'plain',
  'Ease in the crotch length': 'plain',
  'Elastic length': 'plain',
  'Elastic width': 'plain',
  'Flat seat': 'plain',
  'Full seat': 'plain',
  'Full thighs': 'plain',
  'Height of the band': 'plain',
  'Height of the sheet': 'plain',
  'Hem allowance': 'plain',
  'Hem cord length': 'plain',
  'Hem cord width': 'plain',
  'Hem depth': 'plain',
  'Hem elastic width': 'plain',
  'Hem finish': 'plain',
  'Hem girth': 'plain',
  'Hollow back': 'plain',
  'Inseam allowance': 'plain',
  'It is {0} now.': 'plain', // {0} mm(now)
  'It takes a short seam on each leg, along the grain.': 'plain',
  'It was drawn by an earlier cut: every choice in it is kept, but the outline has changed.': 'plain',
  'Knees that touch': 'plain',
  'Lay it as takes least': 'plain',
  'Left and right': 'plain',
  'Left hip fuller': 'plain',
  'Left hip higher': 'plain',
  'Left leg longer': 'plain',
  'Left seat fuller': 'plain',
  'Left side': 'plain',
  Length: 'plain',
  'Lower the crotch': 'plain',
  Machine: 'plain',
  Margin: 'plain',
  Nappy: 'plain',
  'Off the grain': 'plain',
  'Only in cloth without a nap, and with a print that has no upper end.': 'plain',
  Overlap: 'plain',
  'Piece the fork’s tip, {0}': 'plain', // {0} mm(tip)
  'Pieces lie': 'plain',
  Pocket: 'plain',
  'Pocket facing': 'plain',
  'Pocket height': 'plain',
  'Pocket width': 'plain',
  Pockets: 'plain',
  'Projected cut line': 'plain',
  'Projected ground': 'plain',
  'Prominent abdomen': 'plain',
  'Pull when sitting': 'plain',
  'Raise the waist': 'plain',
  'Repeat across': 'plain',
  'Repeat along': 'plain',
  'Right hip fuller': 'plain',
  'Right hip higher': 'plain',
  'Right leg longer': 'plain',
  'Right seat fuller': 'plain',
  'Right side': 'plain',
  'Rows of elastic': 'plain',
  Scale: 'plain',
  Shape: 'plain',
  'Shrinks in length': 'plain',
  'Shrinks in width': 'plain',
  'Slept in': 'plain',
  Spread: 'plain',
  'Starting body': 'plain',
  'Straighten the centres': 'plain',
  Stretch: 'plain',
  'Stretch of the band': 'plain',
  'Stretch of the elastic': 'plain',
  'Stretch of the rib': 'plain',
  'Take a cloth {0} wide': 'plain', // {0} mm(width)
  'The cloth is': 'plain',
  'The cloth lies': 'plain',
  'The cord is': 'plain',
  'The elastic is': 'plain',
  'The hem’s cord is': 'plain',
  'The leg': 'plain',
  'The long bar measures': 'plain',
  'The pocket is': 'plain',
  'The project': 'plain',
  'The raw edge is': 'plain',
  'The short bar measures': 'plain',
  'Turn of the cloth': 'plain',
  'Turn pieces end for end': 'trade',
  Turned: 'plain',
  'Turned under': 'plain',
  Units: 'plain',
  'Waist allowance': 'plain',
  'Waist finish': 'plain',
  'Width of the cloth': 'plain',
  'Width of the sheet': 'plain',
  'Worn sitting': 'plain',
  'a number between {0} and {1}': 'plain', // {0} least, {1} most
  'a number of millimetres between {0} and {1}': 'plain', // {0} least, {1} most
  'a number of years between {0} and {1}': 'plain', // {0} least, {1} most
  'a text of at most {0} characters': 'plain', // {0} number(LONGEST_TEXT, 0)
  'has more curves than the {0} that an edge may have; draw it with fewer points.': 'plain', // {0} number(Number(which), 0)
  'has no place here.': 'plain',
  'has {0} MB; a project file has at most {1} MB.': 'plain', // {0} number(size / 1e6, 1), {1} number(LARGEST_FILE / 1e6, 0)
  'holds {0} more problems.': 'plain', // {0} number(more, 0)
  "is a name that can't be used in a file.": 'plain',
  'is left out as a whole because of that; the usual choice takes its place.': 'plain',
  "is no project file: it can't be read as JSON.": 'plain',
  'is no project file: it holds more than {0} values.': 'plain', // {0} number(MOST_VALUES, 0)
  'is no project file: it is nested more than {0} levels deep.': 'plain', // {0} number(DEEPEST, 0)
  'is no project file: it must be one object in braces.': 'plain',
  'is too large for a number.': 'plain',
  'its turning crosses the lines of the leg; a longer leg or a narrower hem would do.': 'plain',
  'its turning crosses the lines of the leg; a narrower elastic, or a casing or band of its own, would do.': 'plain',
  'leaves {0} of inseam to the leg; at least {1} must stay, so a lower band or a longer leg would do.': 'plain', // {0} mm(inseam), {1} mm(SHORTEST_LEG)
  'must be a list of curves.': 'plain',
  'must be a point: [x, y] in millimetres.': 'plain',
  'must be an object in braces.': 'plain',
  'must be four points: start, two handles, end.': 'plain',
  'must be true or false.': 'plain',
  'must be two points: [[x, y], [x, y]] in millimetres.': 'plain',
  'must be {0}.': 'plain', // {0} number(VERSION, 0)
  'must be “legwork-project”; this is another kind of file.': 'plain',
  'must not be left out.': 'plain',
  'no leg can be drawn from these measurements; measure rise, hip, hip depth and inside leg again, and look at the unit.':
    'plain',
  'one of {0}': 'plain', // {0} own(field.options.join(', '))
  'one of {0}, or { "{1}": {2} }': 'plain', // {0} own(field.options.join(', ')), {1} own(field.own.key), {2} figureWanted({ unit: 'mm', ...field.own })
  'stands twice in the file; only the last one can count.': 'plain',
  "the blocks that were brought can't be used without that; blocks drafted from the measurements take their place.":
    'plain',
  'together these choices make lines that cross or turn back; set one of them back.': 'plain',
  'true or false': 'plain',
  'was written by a newer Legwork; this one reads up to version {0}.': 'plain', // {0} number(VERSION, 0)
  'with this the lines of the leg cross or turn back': 'plain',
  'with this the lines of the {0} leg cross or turn back; less would do.': 'plain', // {0} SIDE_NAMES[side]
  '{0}; leave it out.': 'plain', // {0} crossing
  '{0}; measure it again, or leave it empty.': 'plain', // {0} crossing
  '{0}; {1} would do.': 'plain', // {0} crossing, {1} limit
  '{0}; “{1}” would do.': 'plain', // {0} crossing, {1} own(neutral)
  '“auto” or {0}': 'plain', // {0} figureWanted(field)
} as const;
