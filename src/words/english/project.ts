// Written by `npm run words`, save where each comes from.
export const project = {
  '1 is true size; below that it is a sample.': 'plain',
  'A margin of {0} instead of {1} would save 1 sheet.': 'plain', // {0} mm(to), {1} mm(from)
  'A margin of {0} instead of {1} would save {2} sheets.': 'plain', // {0} mm(to), {1} mm(from), {2} number(saved, 0)
  'A size by its name, or “own”.': 'plain',
  'A wider cloth costs more by the length.': 'trade',
  'Across a sheet of your own size.': 'plain',
  'After wearing': 'trade: a fault that a fitting shows',
  Allowances: 'trade',
  'Along a sheet of your own size.': 'plain',
  'An overlap of {0} instead of {1} would save 1 sheet.': 'plain', // {0} mm(to), {1} mm(from)
  'An overlap of {0} instead of {1} would save {2} sheets.': 'plain', // {0} mm(to), {1} mm(from), {2} number(saved, 0)
  'At the {0} of the {1} nothing is added: the cloth is cut along this line.': 'trade', // {0} inside(edge), {1} inside(piece)
  'At the {0} of the {1} the cut line runs {2} outside the stitching line.': 'trade', // {0} inside(edge), {1} inside(piece), {2} mm(allowance)
  'Back, dart {0}': 'trade', // {0} number(nth, 0)
  'Back, {0}': 'plain', // {0} inside(name)
  Balance: 'trade',
  'Band height': 'trade',
  'Between the stitching and the cut line along the crotch seam and the centre seams.': 'trade',
  'Between the stitching and the cut line along the inseams.': 'trade',
  'Between the stitching and the cut line where something is sewn to the hem.': 'trade',
  'Between the stitching and the cut line where something is sewn to the waist.': 'trade',
  Blocks: 'trade',
  'Both legs lie on one length then.': 'plain',
  'Butt the sheets, without an overlap': 'trade',
  'Butting the sheets edge to edge would save 1 sheet.': 'plain',
  'Butting the sheets edge to edge would save {0} sheets.': 'plain', // {0} number(saved, 0)
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
  'Cut out the small piece {0} that is printed on {1}.': 'plain', // {0} label, {1} own(bearer)
  'Degrees by which a piece may lie off the grain.': 'trade',
  'Diagonal A to C': 'plain',
  'Diagonal B to D': 'plain',
  'Ease at the waist': 'trade',
  'Ease in the crotch length': 'trade',
  Edges: 'plain',
  'Elastic length': 'trade',
  'Elastic width': 'trade',
  'Flat seat': 'trade: a fault that a fitting shows',
  'For a pool of cloth above the seat: lowers centre back at the waist.': 'trade',
  'For a waist that dips over the belly: raises centre front.': 'trade',
  'For a waist that is pulled down behind when sitting: raises centre back.': 'trade',
  'For drag lines that point at the crotch: lengthens both forks.': 'trade',
  'For drags at the inner knee: moves the inseams outwards at the knee; inwards where it is negative.': 'trade',
  'For drags from the seat to the crotch: lengthens the back rise and the back’s fork.': 'trade',
  'For folds below the seat: shortens the back rise and the back’s fork.': 'trade',
  'For trousers that are worn sitting: lowers centre front and raises centre back by half of it, and lengthens the leg by as much.':
    'trade',
  'For which machine the steps are written.': 'plain',
  'From selvedge to selvedge, as it is bought.': 'trade',
  'Front, dart {0}': 'trade', // {0} number(nth, 0)
  'Front, {0}': 'plain', // {0} inside(name)
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
  'How deep a turned or a faced hem lies inside the leg.': 'trade',
  'How far inside the back crotch point the fork’s tip is cut off along the grain and sewn on again, so that the legs lie closer; 0 leaves the leg whole.':
    'trade',
  'How far neighbouring sheets lie on each other; 0 where they are trimmed and butted.': 'plain',
  'How far the crotch line hangs below the body.': 'trade',
  'How lengths are shown and typed; the file itself holds millimetres.': 'plain',
  'How long to cut the cord of each hem, both ends to tie included.': 'trade',
  'How long to cut the cord, both ends to tie included.': 'trade',
  'How long to cut the elastic, its lap included.': 'trade',
  'How many elastics lie above each other, each in a channel of its own.': 'trade',
  'How much longer a strip of the knit gets when it is pulled, as a share of its length.': 'trade',
  'How much longer the band’s knit gets when it is pulled, as a share of its length.': 'trade',
  'How much longer the cuff’s rib gets when it is pulled, as a share of its length.': 'trade',
  'How much longer the elastic gets when it is pulled out, as a share of its length.': 'trade',
  'How much longer the seam between the legs is than the body’s crotch length.': 'trade',
  'How much wider the back is than the front at the hip, as half of the difference.': 'plain',
  'How near to the edges of the paper the printer prints, as its test page showed; “auto” where nobody looked.':
    'plain',
  'How the casing’s raw edge is kept from fraying.': 'trade',
  'How the cloth lies on the table when the pieces are cut.': 'trade',
  'How the hem is finished.': 'trade',
  'How the leg runs down to the hem: by a name, or to a finished hem.': 'trade',
  'How the waist is finished.': 'plain',
  'How upright the centre seams stand above the hip: 0 as the blocks lean, 1 upright.': 'trade',
  'How wide the cut line of the projector’s file is drawn.': 'trade',
  'Inseam allowance': 'trade',
  'It is {0} now.': 'plain', // {0} mm(now)
  'It takes a short seam on each leg, along the grain.': 'trade',
  'It was drawn by an earlier cut: every choice in it is kept, but the outline has changed.': 'plain',
  'Join the row of {0} to the row of {1} in the same way: one sheet meets.': 'plain', // {0} own(below), {1} own(above)
  'Join the row of {0} to the row of {1} in the same way: {2} sheets meet.': 'plain', // {0} own(first), {1} own(over), {2} number(joined.length, 0)
  'Knees that touch': 'trade: a fault that a fitting shows',
  'Last print': 'plain',
  'Lay it the way that takes least cloth': 'trade',
  'Left and right': 'plain',
  'Left hip fuller': 'trade: a fault that a fitting shows',
  'Left hip higher': 'trade: a fault that a fitting shows',
  'Left leg longer': 'trade: a fault that a fitting shows',
  'Left seat fuller': 'trade: a fault that a fitting shows',
  'Left side': 'plain',
  Leg: 'trade',
  Length: 'trade',
  'Lengthens both inseams of this leg alone.': 'trade',
  'Line A to B': 'plain',
  'Line A to D': 'plain',
  'Lines to measure': 'plain',
  'Lower the crotch': 'trade',
  Machine: 'trade',
  'Makes up for a printer that prints too short or too long along the short side of its paper: the test bar’s length divided by what it measures.':
    'plain',
  Margin: 'plain',
  'Moves the crotch line down.': 'trade',
  'Moves the waist edge up, or down where it is negative.': 'trade',
  'Names the files, and stands on the pattern and its pages.': 'plain',
  Nappy: 'plain',
  'Of a band or a cuff when it is finished; the leg ends that much higher.': 'trade',
  'Of a check or a print, along the grain; 0 where nothing is matched.': 'trade',
  'Of a knit band when it is folded.': 'trade',
  'Of stripes or a check, from selvedge to selvedge; 0 where nothing is matched.': 'trade',
  'Of the cord in a hem.': 'trade',
  'Of the cord; its channel is built to it.': 'trade',
  'Of the elastic in a hem, lying flat.': 'trade',
  'Of the elastic, lying flat; the casing is built to it.': 'trade',
  'Of the finished pocket, across its opening.': 'trade',
  'Of the finished pocket, from the opening down.': 'trade',
  'Of two that meet, both are trimmed then.': 'plain',
  'Off the grain': 'trade',
  'One pocket, or one on each leg.': 'trade',
  'Only in cloth without a nap, and with a print that has no upper end.': 'trade',
  'Opens the join between the blocks: the leg grows by it from the hip down, and the pair twice as much.':
    'ours: the join, where the two blocks meet',
  Overlap: 'plain',
  Paper: 'plain',
  'Piece the fork’s tip, {0}': 'trade', // {0} mm(tip)
  'Pieces lie': 'trade',
  Pocket: 'trade',
  'Pocket facing': 'trade',
  'Pocket height': 'trade',
  'Pocket width': 'trade',
  Pockets: 'trade',
  'Printer’s margin': 'plain',
  'Projected cut line': 'trade',
  'Projected ground': 'plain',
  'Prominent abdomen': 'trade: a fault that a fitting shows',
  'Pull when sitting': 'trade: a fault that a fitting shows',
  'Put down sheet {0}.': 'plain', // {0} label
  'Raise the waist': 'trade',
  'Raises the waist edge of this leg alone over the side, and not at the centres.': 'trade',
  'Repeat across': 'trade',
  'Repeat along': 'trade',
  'Right hip fuller': 'trade: a fault that a fitting shows',
  'Right hip higher': 'trade: a fault that a fitting shows',
  'Right leg longer': 'trade: a fault that a fitting shows',
  'Right seat fuller': 'trade: a fault that a fitting shows',
  'Right side': 'plain',
  'Room round the hip, beyond the body.': 'plain',
  'Room round the waist of the blocks, beyond the body.': 'trade',
  'Rows of elastic': 'trade',
  Scale: 'plain',
  'Set the margin to {0}': 'plain', // {0} mm(to)
  'Set the overlap to {0}': 'plain', // {0} mm(to)
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
  'The cautions about nightwear and fire are there unless it is false.': 'plain',
  'The cloth is': 'trade',
  'The cloth lies': 'trade',
  'The cord is': 'trade',
  'The elastic is': 'trade',
  'The hem’s cord is': 'trade',
  'The leg': 'plain',
  'The long bar measures': 'ours: the long and the short bar of the test page',
  'The pocket is': 'trade',
  'The printer’s test page shows whether yours prints so near to the edges.': 'plain',
  'The project': 'plain',
  'The raw edge is': 'trade',
  'The same along the long side.': 'plain',
  'The same for the diagonal A to C, which tells whether the picture is slanted.': 'plain',
  'The same for the diagonal B to D; with it the four lengths prove each other.': 'plain',
  'The same for the line A to D; without both of these nothing is corrected.': 'plain',
  'The short bar measures': 'ours: the long and the short bar of the test page',
  'The strip round each sheet that is left white, because the printer can’t reach it.': 'plain',
  'The true length of the projected line A to B over what it measures on the table; “auto” where nobody measured it.':
    'plain',
  Trued: 'plain',
  'Turn of the cloth': 'trade',
  'Turn pieces end for end': 'trade',
  Turned: 'plain',
  'Turned under': 'trade',
  Units: 'plain',
  'Use a cloth {0} wide': 'trade', // {0} mm(width)
  'Waist allowance': 'trade',
  'Waist finish': 'trade',
  'What is tucked in of a hem’s raw edge; 0 where that is overlocked or zigzagged.': 'trade',
  'What is turned inside at the opening.': 'plain',
  'What the first wash takes of its length, as a share.': 'plain',
  'What the first wash takes of its width, as a share.': 'plain',
  'What the fold of the casing itself takes up; more in a thick cloth.': 'trade',
  'Where the leg ends: by a name, or by its finished inseam.': 'trade',
  'Whether a sample’s seam allowances shrink with it or stay as wide as they are sewn.': 'trade',
  'Whether all pieces must lie the same way up: for nap, and prints that have an upper end.': 'trade',
  'Whether light lines are thrown on a dark ground, or dark ones on light.': 'plain',
  'Whether the cloth is washed before it is cut; if not, the pieces are drawn larger by what it will shrink.': 'trade',
  'Whether the cloth is woven or knit: a knit gives way where a woven needs room.': 'trade',
  'Whether the cord is bought or sewn from the cloth.': 'trade',
  'Whether the elastic is drawn through the finished casing or sewn to its raw edge.': 'trade',
  'Whether the hem’s cords are bought or sewn from the cloth.': 'trade',
  'Whether the pocket is sewn on in front or behind.': 'trade',
  'Whether the projector’s test is 80 by 60 cm (32 by 24 in), or half of that for a small picture.': 'plain',
  'Whether the sheets are printed portrait or landscape, or whichever takes fewer.': 'plain',
  'Whether the two blocks are drafted from the measurements or were brought along.': 'trade',
  'Who it is for': 'plain',
  'Widens the back of this leg alone.': 'plain',
  'Widens this leg alone from the waist to the crotch: half in front, half behind.': 'trade',
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
  'is left out as a whole because of that; which sheets were printed is not known any more.': 'plain',
  'is not what a print leaves behind.': 'plain',
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
  'must be a list of at most {0} darts.': 'trade', // {0} number(MOST_DARTS, 0)
  'must be a list of curves.': 'plain',
  'must be a list of {0}, each at most once.': 'plain', // {0} own(names.join(', '))
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
  '{0}: changed': 'plain', // {0} name
  '{0}: from the side': 'plain', // {0} of
  '{0}: length': 'plain', // {0} of
  '{0}: takes in': 'plain', // {0} of
  '{0}: {1}, now {2}': 'plain', // {0} name, {1} before, {2} now
  '{0}; leave it out.': 'plain', // {0} crossing
  '{0}; measure it again, or leave it empty.': 'plain', // {0} crossing
  '{0}; {1} would do.': 'plain', // {0} crossing, {1} limit
  '{0}; “{1}” would do.': 'plain', // {0} crossing, {1} own(neutral)
  '“auto” or {0}': 'plain', // {0} figureWanted(field)
  '“estimated” or {0}': 'plain', // {0} figureWanted(one)
} as const;
