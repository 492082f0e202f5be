// Written by `npm run words`, save where each comes from.
export const workbenchPhoto = {
  'A cross on the paper, a corner of a tile: lay the same number on the same place of both. Four or more join a photograph without marks of its own; the farther apart, the truer.':
    'plain',
  'A point of: {0}': 'plain', // {0} EDGE_NAMES[id.edge]
  'A rectangle by hand': 'plain',
  'A tile, a table, or places that you measured from corner to corner: both diagonals must be alike.': 'plain',
  'Add a place': 'plain',
  'Add a point with the keyboard': 'plain',
  'After ± stands how far off an edge may lie where it is least sure. A circle in the picture is {0} times as large as its place may be off.':
    'plain', // {0} number(ENLARGED, 0)
  'Also on': 'plain',
  'Another point of the grainline, as far down as it goes.': 'trade',
  'Any point of the grainline; the farther from the other, the truer.': 'trade',
  'Back and front, net': 'trade',
  'Blocks from a photograph': 'trade',
  'Centre line': 'trade',
  'Check by a fifth length': 'ours: the fifth length, which checks four marks',
  'Choose a photograph': 'plain',
  'Choose photograph {0}': 'plain', // {0} number(index + 1, 0)
  'Choose “{0}” again to go on where you left it.': 'plain', // {0} own(name)
  'Corner {0}': 'plain', // {0} own('ABCD'.charAt(id.index))
  'Corner {0} of found mark {1}': 'plain', // {0} number(index + 1, 0), {1} number(mark, 0)
  'Corner {0}, {1}': 'plain', // {0} own(letter), {1} where(at)
  Corners: 'plain',
  'Crotch curve': 'trade',
  'Crotch point': 'trade',
  Down: 'plain',
  'Drag a mark, or take it up with Tab and move it by arrow keys; with Shift it moves ten times as far.': 'plain',
  'E to F: anything on the floor that you measured': 'plain',
  'End {0}': 'plain', // {0} own('EF'.charAt(id.index))
  'End {0} of the fifth length, {1}': 'ours: the fifth length, which checks four marks', // {0} own(letter), {1} where(at)
  'Fifth length, E to F': 'ours: the fifth length, which checks four marks',
  Fit: 'plain',
  'Found mark {0}': 'plain', // {0} number(mark, 0)
  'Four marks say nothing of the lens: keep the block away from the picture’s edges.': 'trade',
  'Front and back may lie on one photograph, or each on up to six that overlap. Without the sheets, a tile floor or any other rectangle whose sides you know does as well; a scan, whole or in pieces, needs neither.':
    'plain',
  Good: 'ours: a verdict, good, doubtful or wrong',
  'Hem at the inseam': 'trade',
  'Hem at the side': 'trade',
  'Hip at the centre': 'trade',
  'Hip at the side': 'trade',
  'How finely it was scanned': 'plain',
  'In dots an inch, as the scanner or the file says. A scanner sees straight down: nothing has to be marked. A block in pieces is joined by places that two scans show.':
    'trade',
  'It gets better with marks farther apart, round the block, and with a sharper picture.': 'trade',
  'It gets truer with a sheet at each corner of the block. Press on a mark to set its corners or to take it away.':
    'trade',
  'It must be {0}.': 'plain', // {0} quantity.range(lowest, highest, units)
  'Its sides are those of the rectangle on photograph {0}: both are taken to be one. If they lie apart, choose none here and mark four places that both photographs show.':
    'plain', // {0} number(takenFor + 1, 0)
  'Knee at the inseam': 'trade',
  'Lay A, B, C and D on the corners of a rectangle whose sides you know, going round.': 'plain',
  'Lay E and F on its ends. The grainline of the block does well.': 'trade',
  'Lay the paper block flat on the floor, and a sheet at each of its corners, any way round. Nothing between them has to be measured.':
    'trade',
  Left: 'plain',
  'Left out, because they don’t lie where the others say: {0}. Does that sheet curl, or was it moved?': 'plain', // {0} own(wrong.join(', '))
  'Length, A to D': 'plain',
  'Lengths: measure one on the paper': 'plain',
  'Look and use': 'plain',
  'Lower end of the grainline': 'trade',
  'Mark the back': 'plain',
  'Mark the front': 'plain',
  'Marks are kept.': 'plain',
  'Marks found: {0}, sheets: {1}.': 'plain', // {0} number(found.length, 0), {1} number(sheets, 0)
  'Nothing holds this photograph yet: mark four places that another one shows, too, far apart and not in a line.':
    'plain',
  'Nothing needs to be marked here. Press on a mark to set its corners or to take it away.': 'plain',
  'One press moves it by half a millimetre; arrow keys do the same, with Shift ten times as far. Delete takes it away, and Enter goes on to the next place.':
    'plain',
  'One press moves it by one pixel; arrow keys do the same, with Shift ten times as far.': 'plain',
  'Opening the photograph and looking for marks …': 'plain',
  'Over most of the picture ± {0}, with marks set to a pixel and paper flat to {1}.': 'plain', // {0} by, {1} mm(FLAT)
  'PDF, numbered marks and how to lay them, A4 or Letter': 'standard: PDF, ISO 32000',
  Photograph: 'plain',
  'Photograph it from as straight above as you can, with all the marks on the picture.': 'plain',
  'Photograph of the blocks': 'trade',
  'Photograph {0}': 'plain', // {0} number(i + 1, 0)
  Photographs: 'plain',
  'Place it with the keyboard': 'plain',
  'Place {0} on two photographs': 'plain', // {0} number(id.index, 0)
  'Place {0} on two photographs, {1}': 'plain', // {0} own(key), {1} where(at)
  'Places on two photographs': 'plain',
  'Print the mark sheets at 100 %: four do for one photograph.': 'plain',
  Right: 'plain',
  'Save the mark sheets': 'plain',
  Side: 'trade',
  'The blocks of the photograph are on the table.': 'trade',
  'The blocks on the floor, a mark sheet at each corner': 'trade',
  'The edges, as they are drawn on the paper': 'plain',
  'The fifth length comes out as {0}.': 'ours: the fifth length, which checks four marks', // {0} mm(check.found)
  'The fifth length does not agree: are the sides measured, the corners square, the paper flat?':
    'ours: the fifth length, which checks four marks',
  'The flattened picture; press on it to mark the back.': 'plain',
  'The flattened picture; press on it to mark the front.': 'plain',
  'The four corners cross over, or three lie on a line: A, B, C and D go round.': 'plain',
  'The lower corner on the inner leg.': 'plain',
  'The lower corner on the outer leg.': 'plain',
  'The marks are found by themselves; you mark eleven places of each block, and its edges follow the drawn lines.':
    'trade',
  'The marks are where you left them.': 'plain',
  'The marks don’t agree with each other: is one of them beside its place?': 'plain',
  'The marks that were found don’t hold this photograph: are they on their places? Take away one that is not.': 'plain',
  'The outer corners of the marks on one sheet: A to B {0}, A to D {1}, E to F {2}. A block much larger than the sheet is drawn less truly.':
    'trade', // {0} mm(MARK_SHEET.width), {1} mm(MARK_SHEET.height), {2} mm(CHECK_SQUARE)
  'The photograph stays on this computer. The marks are kept here as you set them; the picture is not.': 'plain',
  'The photograph.': 'plain',
  'The screen for a photograph': 'plain',
  'The tip, where the crotch curve meets the inseam.': 'trade',
  'This block has a knee line after all': 'trade',
  'This block has no knee line': 'trade',
  'This picture can’t be flattened that far out: lay the marks farther apart, and photograph from more nearly above.':
    'plain',
  Up: 'plain',
  'Upper end of the grainline': 'trade',
  Use: 'plain',
  'Waist at the centre': 'trade',
  'What of the paper is allowance is taken off afterwards, at Blocks, where the pair is trued, too.': 'trade',
  'Where an edge leaves its line, choose it and press on the line: it then passes there. Where no line shows, three points or more make a strong curve, and what is straight needs none. Where an edge has a corner, tick it for that point.':
    'plain',
  'Where the centre line stops being straight.': 'trade',
  'Where the knee line meets the inseam.': 'trade',
  'Where the line of the fullest hip meets the centre line or the crotch curve.': 'trade',
  'Where the line of the fullest hip meets the side seam.': 'trade',
  'Where the waist line meets centre front or centre back.': 'trade',
  'Where the waist line meets the side seam.': 'trade',
  'Where you marked it ± {0}, with marks set to a pixel and paper flat to {1}.': 'plain', // {0} by, {1} mm(FLAT)
  'Width, A to B': 'plain',
  Wrong: 'ours: a verdict, good, doubtful or wrong',
  'Zoom in': 'plain',
  'Zoom out': 'plain',
  'a corner of the edge': 'plain',
  'as drawn': 'plain',
  'as drawn, through {0}': 'plain', // {0} number(count, 0)
  'don’t show four places in common: mark them on both.': 'plain',
  dpi: 'plain',
  'forget all marks and begin again': 'plain',
  'in the middle; arrow keys move it': 'plain',
  'my own': 'plain',
  'no line shows': 'plain',
  none: 'plain',
  'none, it is a scan': 'plain',
  'on the flattened picture': 'plain',
  'on this photograph and on photograph {0}': 'plain', // {0} number(other + 1, 0)
  'one mark sheet': 'plain',
  'or drop it here; it goes nowhere else': 'plain',
  'photograph {0}': 'plain', // {0} number(i + 1, 0)
  'take another photograph to it': 'plain',
  'take it away': 'plain',
  'take the fifth length away': 'ours: the fifth length, which checks four marks',
  'the edges can still be changed later': 'plain',
  'this edge follows the drawn line': 'plain',
  'what was marked on photographs': 'plain',
  'when every place is marked': 'plain',
  'where it likely lies; arrow keys move it': 'plain',
  '{0} Arrow keys move it, plus and minus zoom, F fits it.': 'plain', // {0} own(about)
  '{0} Press on it.': 'plain', // {0} LANDMARK_WORDS[next].where
  '{0} across, {1} down': 'plain', // {0} number(x, 0), {1} number(y, 0)
  '{0} of {1}': 'plain', // {0} number(set + 1, 0), {1} number(places.length, 0)
  '{0} to {1} dots an inch': 'plain', // {0} number(lowest, 0), {1} number(highest, 0)
  '{0}, its place ± {1}': 'plain', // {0} told, {1} mm(off)
  '{0}, point {1}': 'plain', // {0} EDGE_NAMES[name], {1} number(index + 1, 0)
  '{0}: {1} places are still to be marked.': 'plain', // {0} name, {1} number(its.length, 0)
  '“{0}” can’t be read as a picture here; a JPEG or PNG file can.':
    'standard: JPEG, ISO/IEC 10918, and PNG, ISO/IEC 15948', // {0} own(file.name)
  '“{0}” has {1} megapixels, too many to open here: save it smaller, half as wide is enough.': 'plain', // {0} own(file.name), {1} many
  '“{0}” is no number of dots; write it like 300.': 'plain', // {0} own(shortened(text))
} as const;
