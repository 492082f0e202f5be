// Written by `npm run words`, save where each comes from.
export const filesPdf = {
  '1 Cut': 'plain',
  '1 body, a quarter of true size, {0}': 'plain', // {0} sheets
  '1 square = {0}': 'plain', // {0} own(GRID[units].name)
  '1. Hang or set the projector square to the table, with its own keystone setting off or as its maker says. Show this page at 100 % and zoom until A to B is near {0}.':
    'plain', // {0} mm(test.across)
  '1. Print them at 100 %, without fit to page, on plain white paper. Four sheets do for one photograph, pages 2 to 5. No sheet may lie there twice, which is why each has its number.':
    'plain',
  '1. Print this page as you will print the pattern: on the same printer and paper, at 100 %, without fit to page.':
    'plain',
  '100 mm with the correction × {0}, × {1}': 'plain', // {0} number(correctX, 4), {1} number(correctY, 4)
  '2 Lay': 'plain',
  '2. Measure both bars with a steel rule, from the middle of one end stroke to the middle of the other. A tape may be longer or shorter than it says.':
    'plain',
  '2. Measure the square on one of them: {0} each way. If it is off, print the test page and type what its bars measure, and the sheets are corrected, too.':
    'plain', // {0} both(CHECK_SQUARE)
  '2. Measure with a steel rule or a good tape, flat on the table, from the middle of a corner’s lines to the middle of the other’s.':
    'plain',
  '3 Tape': 'plain',
  '3. At Paper, type what the two bars measure. In a project file, correctX is the short bar’s length divided by what it measures, correctY the long bar’s.':
    'plain',
  '3. D to C must be as long as A to B, and B to C as long as A to D. If they are not, the picture is wider at one end (a keystone), which four lengths can’t put right: set the projector square first.':
    'plain',
  '3. Lay the block flat on an even floor, and a sheet close to each of its corners, outside it and any way round; on a long block two more halfway down. Nothing between the sheets has to be measured. They lie flat, without a curl.':
    'trade',
  '4. At Paper, type what A to B, A to D, A to C and B to D measure. In a project file each is its true length divided by what it measures.':
    'plain',
  '4. At each edge of the paper find the lowest number whose short line is printed whole. Choose the highest of the four at Paper: it becomes the margin.':
    'plain',
  '4. Measure one length on the block itself, its grainline perhaps, and write it down to check by.': 'trade',
  '5. If a bar is off by more than {0} %, look for a setting that fits the page to the paper first.': 'plain', // {0} { number: 3, decimals: 0 }
  '5. Photograph it from as straight above as you can, with everything on the picture, sharp, in even light. Front and back may lie on one photograph.':
    'plain',
  '6. Or take up to six photographs that overlap, with every sheet left where it lies. A sheet that shows on two photographs joins them, and two join them better.':
    'plain',
  '7. At Blocks choose the photograph. The marks are found on it by their numbers, and you mark the places of the block.':
    'trade',
  '8. Where no mark is found, mark by hand the outer corners A, B, C and D of one sheet, or of any rectangle whose sides you measured.':
    'plain',
  'A to B': 'plain',
  'A to C': 'plain',
  'A to D': 'plain',
  'B to C': 'plain',
  'B to D': 'plain',
  'Body: {0}': 'plain', // {0} own(project.body.label)
  'Butt the cut edges, so that half-diamonds of one number make a whole one.': 'trade',
  'Changed since: {0}.': 'plain', // {0} all(changes)
  'Choose true size, 100 %, and one side of the paper only; switch off everything like fit to page or shrink.': 'plain',
  'Cut as many as the list says; mirrored means that one half of them is cut with the printed side down.': 'plain',
  'Cut off the white margin along the thin line where a sheet has a neighbour on its left or above it.': 'plain',
  'Cut off the white margins along the thin lines where a sheet has a neighbour.': 'plain',
  'Cut one small piece out along its frame and join it like a sheet: {0}.': 'plain', // {0} first
  'Cut out the small piece {0} before you trim this sheet.': 'plain', // {0} own(label)
  'Cut the paper along the thick line, and mark the notches.': 'trade',
  'Cut the small pieces out along their frames and join them like sheets: {0}.': 'plain', // {0} all(tips)
  'Cut {0}': 'trade', // {0} own(listed(cutRows(draft), '; '))
  'D to C': 'plain',
  'Dashed: a small piece, where it is printed and where it belongs.': 'plain',
  'Doubtful – printer: {0}': 'plain', // {0} remark
  'First tape each row into a strip, from the left; then the strips to each other, from the top.': 'plain',
  'Four lines to measure on the cutting table': 'plain',
  'Grey: in this file.': 'plain',
  'If one of these is missing, print that sheet from the file of all sheets; saved now, it is laid out the same way.':
    'plain',
  'If the correction is right every line measures what is written beside it.': 'plain',
  'In this file: {0}.': 'plain', // {0} labels(printed)
  'Is anything printed on the back of this page? Then switch off two-sided printing before you print the sheets: one that is on the back of another can’t be laid beside it.':
    'plain',
  'Keep {0}: no line on them has moved by more than {1}.': 'plain', // {0} labels(keep), {1} mm(moved)
  'Keep {0}: no line on them has moved.': 'plain', // {0} labels(keep)
  'Labels that find no room here are in the list, row by row.': 'plain',
  'Lay it flat beside the block, any way round.': 'trade',
  'Lay it on the cloth so that the arrow of its grainline runs along the selvedge. The sewing guide shows how all pieces lie.':
    'trade',
  'Lay the cut edge on the thin line of that neighbour, so that half-diamonds of one number make a whole one.': 'plain',
  'Legwork · lounge pant, each leg one piece · {0} · {1}': 'ours: the name', // {0} own(dated(date)), {1} own(fileName)
  'Look at this before cutting: {0}': 'plain', // {0} phrase
  'Lounge pant for {0}, one large sheet': 'plain', // {0} own(project.body.label)
  'Lounge pant for {0}, to be projected at true size': 'plain', // {0} own(project.body.label)
  'Lounge pant for {0}, {1} sheets {2}': 'plain', // {0} own(project.body.label), {1} number(sheets.length), {2} paperName(plan.paper.name)
  'Mark sheet {0} of {1}': 'plain', // {0} number(sheet, 0), {1} number(MOST_SHEETS, 0)
  'Mark sheets': 'plain',
  'Measure both squares along all sides. If one is wrong, set the printer right before you print the rest.': 'plain',
  'Measure from the middle of one line to the middle of the other, along all four sides.': 'plain',
  'Measure, to check the joins: {0}.': 'plain', // {0} own(controls.join(', '))
  'Measure, to check the print: {0}.': 'plain', // {0} own(controls.join(', '))
  'Number {0} of {1} in the order of taping': 'plain', // {0} number(place, 0), {1} number(parts.length, 0)
  'Numbered marks to photograph beside a paper block': 'trade',
  'One sheet {0}.': 'plain', // {0} paper
  'Only changed sheets': 'plain',
  'Order of taping': 'plain',
  'Print at 100 %': 'plain',
  'Print this page first, alone, and on the paper of the sheets.': 'plain',
  'Print this page first, alone, on {0}; the pattern itself is printed on paper of its own size.': 'plain', // {0} paperName(name)
  'Printer test': 'plain',
  'Projector test': 'plain',
  'Projector test, corrected': 'plain',
  'Strip {0}': 'plain', // {0} own(letter)
  'The bars are printed without the correction that is set; the square is printed with it, and measures 100 mm both ways if it is right.':
    'plain',
  'The drawing keeps {0} from the edges of the paper. If your printer cuts some of it off, choose a wider margin: the printer’s test page shows how wide.':
    'plain', // {0} mm(margin)
  'The other sheets were printed on {0} or earlier.': 'plain', // {0} own(dated(printDay(lastPrint)))
  'The sheet': 'plain',
  'The short bar is {0}, the long bar {1}.': 'ours: the long and the short bar of the test page', // {0} mm(across), {1} mm(along)
  'Then the strips': 'plain',
  'They are photographed beside a block on paper, so that Legwork can flatten the picture and draw the block at its true size.':
    'ours: the name',
  'This square measures {0} each way, or it was not printed at 100 %.': 'plain', // {0} both(CHECK_SQUARE)
  'Throw away the old {0}.': 'plain', // {0} labels(away)
  'To cut and to buy': 'plain',
  'To mark by hand: the outer corners of the marks. A to B is {0}, A to D {1}.': 'plain', // {0} both(MARK_SHEET.width), {1} both(MARK_SHEET.height)
  'Two bars to measure, {0}': 'ours: the long and the short bar of the test page', // {0} paperName(settings.sheet)
  'What the lines mean': 'plain',
  'When the sheet is printed': 'plain',
  'When the sheets are one': 'plain',
  'Where a comma stands, the two do not touch: the strips above and below hold them in place.': 'plain',
  'Where each sheet goes': 'plain',
  'a piece is {0} long even at a quarter, longer than any paper.': 'plain', // {0} mm(widest)
  'cut along this line, then lay it on {0} ↑': 'plain', // {0} label
  'cut along this line, {0} meets it ↑': 'plain', // {0} label
  'cut along this line, {0} meets it ↓': 'plain', // {0} label
  'every sheet that was printed can be kept; there is nothing to print.': 'plain',
  'grainline, along the selvedge': 'trade',
  'hip {0}, inseam {1}': 'trade', // {0} mm(measures.hipGirthFinished), {1} mm(leg.measures.inseamFront)
  'hip, crotch or knee line': 'trade',
  'lay on {0} ↑': 'plain', // {0} label
  'long bar: {0}': 'ours: the long and the short bar of the test page', // {0} mm(along)
  'notch, meets its partner': 'trade',
  'nothing is known of an earlier print: it is noted in the project that is open where the sheets are saved, and in the one that is packed with them. Print all sheets.':
    'plain',
  'page {0}': 'plain', // {0} number(i + 1)
  'short bar: {0}': 'ours: the long and the short bar of the test page', // {0} mm(across)
  'side of the leg: no seam': 'trade',
  'small piece: cut out along the dashes': 'plain',
  'stitch here': 'trade',
  'the piece': 'plain',
  'too few of the sheets that were printed can be kept. Print all sheets.': 'plain',
  'waist edge, or where a part goes': 'trade',
  '{0} at 100 %': 'plain', // {0} mm(length)
  '{0} bodies, a quarter of true size, {1}': 'plain', // {0} number(drafts.length), {1} sheets
  '{0} goes here ↓': 'plain', // {0} label
  '{0} goes here ↓ its cut edge on this line': 'plain', // {0} label
  '{0} of cloth': 'trade', // {0} mm(BAR)
  '{0} out of {1}': 'plain', // {0} own(tip.label), {1} own(label)
  '{0} pages {1}': 'plain', // {0} number(pages.length), {1} paperName(page.name)
  '{0} sheets {1}. Further on the map is larger and has their labels.': 'plain', // {0} number(count), {1} paperName(plan.paper.name)
  '{0} sheets {1}; the order of taping is in the list.': 'plain', // {0} number(count), {1} paper
  '{0} sheets {1}; the small figures are the order of taping.': 'plain', // {0} number(count), {1} paper
  '{0} when joined': 'plain', // {0} mm(length)
  '{0} would be {1} long; a PDF page can be {2} at most: take the joined sheets instead': 'standard: PDF, ISO 32000', // {0} what, {1} mm(longest), {2} mm(LARGEST_PAGE)
  '{0} · first page, continued': 'plain', // {0} own(words.under)
  '{0} · page {1} of {2}': 'plain', // {0} whose, {1} number(i + 1), {2} number(pages.length)
  '{0}, cut {1}': 'trade', // {0} pieceName(piece), {1} number(piece.cut)
  '{0}, to look at and not for cutting out · {1} of {2}': 'plain', // {0} own(title), {1} number(one + 1), {2} number(pages.length)
  '{0}: samples at a quarter': 'trade: small patterns, to show in class', // {0} own(project.name)
  '{0}: {1} when joined': 'plain', // {0} name, {1} mm(length)
  '{0}: {1} when printed at 100 %': 'plain', // {0} name, {1} mm(length)
} as const;
