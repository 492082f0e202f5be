// Written by `npm run words`, save where each comes from.
export const workbenchStations = {
  '(chosen)': 'plain',
  'A PDF at true scale, and before it a first page with two squares to measure and the map of the sheets.':
    'standard: PDF, ISO 32000',
  'A knit stretches over the hip: it needs less ease, or none.': 'trade',
  'A nap, a print with an upper end, or uneven stripes: no piece is turned end for end.': 'trade',
  'A nappy gets more room in the rise.': 'trade',
  'A patch on the leg: there is no side seam to set one in, and no fly.': 'trade',
  'A pattern for each learner from one table of bodies, with fit sheets, handouts and a summary.': 'trade',
  'A plain machine with zigzag sews everything; an overlocker finishes edges, and seams of knit, in one go.': 'trade',
  'A pool above the seat: the centre back waist comes down; 1 cm or ⅜ in is usual.': 'trade',
  'A strip of its own, folded, sewn and turned.': 'trade',
  'A woven gives nothing: the opening itself has to pass over the hip.': 'trade',
  'Across its open end at the waist edge.': 'trade',
  'Add a dart': 'trade',
  'All of them can be kept; there is nothing to print again. If one is missing, print it from the file of all sheets.':
    'plain',
  'All {0} steps': 'plain', // {0} number(steps.length, 0)
  'Allowances on the paper': 'trade',
  'Along the blocks, the crotch length is {0} and the inseam {1}; on the body the first is shorter by its ease, and the second longer, for it goes down to the floor.':
    'trade', // {0} mm(crotchLength), {1} mm(inseam)
  'Along the edges': 'plain',
  'Along the waist edge, from the side to the dart’s middle.': 'trade',
  'Another way': 'plain',
  'As it was brought': 'plain',
  'As it was brought again.': 'plain',
  'As it was brought: {0}': 'plain', // {0} inside(TRUING_NAMES[difference.truing])
  'As large as your projector can show.': 'plain',
  'Ask for 100 %, nothing fitted to the page, and measure the square on it before you cut.': 'plain',
  'At a print shop': 'plain',
  'At the centre': 'plain',
  'At the hem': 'trade',
  'At the sewing machine': 'trade',
  'At the waist': 'trade',
  'Both inseams get this much longer.': 'trade',
  Buy: 'plain',
  'Buy {0} ({1})': 'plain', // {0} own(here), {1} own(there)
  'By a cutting machine': 'plain',
  'By numbers': 'plain',
  'Centre back {0}, centre front {1}.': 'trade', // {0} centreStands('back', leg.back), {1} centreStands('front', leg.front)
  'Changes only the safety notes, not the drawing.': 'plain',
  'Cut it to length, knot its ends.': 'plain',
  'Cut it {0} long for each hem.': 'trade', // {0} mm(hemElasticLength ?? 0)
  'Cut it {0} long, with two ends to tie.': 'plain', // {0} mm(cordLength ?? 0)
  'Cut it {0} long, {1} times.': 'plain', // {0} mm(elasticLength ?? 0), {1} number(rows, 0)
  'Cut it {0} long.': 'plain', // {0} mm(elasticLength ?? 0)
  Darts: 'trade',
  'Does not fit this width.': 'plain',
  'Don’t take {0} from the blocks': 'trade', // {0} inside(name)
  'Drafted from the body': 'plain',
  'Drags at the inner knee: both inseams are let out there; 8 mm or ⅜ in is usual.': 'trade',
  'Drags from the seat to the crotch: the back extension and the back rise get longer; 1 cm or ⅜ in is usual.': 'trade',
  'Drawing of the blocks': 'trade',
  'Drawn through the finished casing.': 'trade',
  'Each in a channel of its own.': 'plain',
  'Estimate {0}': 'plain', // {0} all(keys.map((key) => say`${inside(measurementName(key))}`))
  'Estimate {0}: about {1}': 'plain', // {0} inside(name), {1} mm(estimate.value)
  'Estimated from {0}, and follows when that changes: {1}.': 'plain', // {0} basisTold(estimate), {1} rangeTold(estimate)
  'Even within {0}: {1}.': 'plain', // {0} mm(1), {1} all(even.map(({ truing }) => say`${inside(TRUING_NAMES[truing])}`))
  'Everything, ZIP': 'standard: the ZIP format',
  'Fill the fields': 'plain',
  'Finished inseam {0}; the hem {1}.': 'trade', // {0} mm(inseamFront), {1} hemEnds(draft)
  'Finished, across the opening.': 'plain',
  'Finished, from the opening down.': 'plain',
  'Fix the marked fields first; then files can be made.': 'plain',
  'Folded, right sides together, both legs come out of one cut.': 'trade',
  'Folds under the seat: 1 cm or ⅜ in is usual; it comes off the back extension and the back rise.': 'trade',
  'For a class': 'plain',
  'For both centre seams and the curve between.': 'trade',
  'For the estimates': 'ours: as the body asks, an estimate from what was measured',
  'For the fit of the seat': 'trade',
  'For the knee line and cross-checks': 'plain',
  'From a drawing': 'plain',
  'From a photograph': 'plain',
  'From the block’s lean to upright': 'trade',
  'From the crotch seam to the finished hem, along the inseam.': 'trade',
  'From the waist edge to its point.': 'trade',
  'Front and back as a pair': 'plain',
  'Full width lets a sample be sewn like the real thing.': 'trade',
  Heights: 'plain',
  'Hem {0} round; the foot needs {1}.': 'trade', // {0} mm(hemGirthFinished), {1} mm(foot)
  'Hip about': 'trade',
  'How deep it lies inside the leg.': 'plain',
  'How far a piece may lean off the grain; best not at all.': 'trade',
  'How far one sheet lies under the next for gluing; 0 to butt and tape.': 'trade',
  'How far the crotch line lies below the seat; now {0}.': 'trade', // {0} mm(riseEase)
  'How much longer {0} of it, across the grain, can be pulled without force.': 'trade', // {0} mm(100)
  'How much to buy in the widths in which cloth is sold': 'trade',
  'How much wider each back is than the middle, and each front narrower.': 'plain',
  'How much wider the blocks are than their wearer, all round; where you don’t know it, what is usual.': 'trade',
  'How old': 'plain',
  'How the grainline lies': 'trade',
  'How the sheets lie under the pieces.': 'plain',
  'I wore them: correct what I see': 'plain',
  'It comes out at centre front, through the outer layer.': 'trade',
  'It comes out at the side.': 'plain',
  'It is bought longer by that.': 'plain',
  'It was printed': 'plain',
  'Its raw edge, {0} tucked in.': 'trade', // {0} mm(turnUnder)
  'Just upright enough to pull on.': 'plain',
  Laid: 'trade',
  'Last saved for printing on {0}, {1} sheets in all.': 'plain', // {0} dayOf(lastPrint), {1} count
  'Lay the block flat, its grainline upright, and measure to 1 mm. What you leave empty is estimated by the proportions of your block, and told.':
    'trade',
  'Laying it in other ways …': 'plain',
  'Left and right are alike': 'plain',
  'Left and right differ': 'plain',
  'Left over': 'plain',
  'Left, as worn': 'plain',
  'Light lines show the cloth between them.': 'trade',
  'Lines towards the crotch: both extensions get longer; 1 cm or ⅜ in is usual.': 'trade',
  'Measured flat.': 'plain',
  'Measured: how much longer the band’s knit gets.': 'trade',
  'Measured: how much longer the elastic gets when it is pulled out.': 'trade',
  'Measured: how much longer the rib gets.': 'plain',
  'More at the hem': 'trade',
  'More at the waist': 'plain',
  'More measurements': 'trade',
  'More of the leg': 'plain',
  'More room to sit, and a looser look.': 'plain',
  'Nine in ten bodies like this one have {0} to {1}.': 'plain', // {0} mm(least), {1} mm(most)
  'Nobody measured it on children; by adults’ proportions {0}.': 'plain', // {0} rangeTold(estimate)
  'Nothing counts as printed any more, so the sheets are laid out afresh.': 'plain',
  'Nothing is corrected yet: the drawing shows what was worn.': 'plain',
  'Nothing is tucked in: its edge is overlocked or zigzagged.': 'trade',
  'Nothing would save as much as {0}.': 'plain', // {0} mm(WORTH_SAVING)
  'Number at the edges': 'plain',
  'Of a check, along the selvedge; {0} for none. The hems then lie on the same line of it.': 'trade', // {0} mm(0)
  'Of its length, in the first wash: measure a washed piece. {0}': 'plain', // {0} what
  'Of its width, in the same wash.': 'plain',
  'Of stripes or a check, across. They mirror about centre front and back.': 'trade',
  'On the test page, the lowest number whose line is printed whole; of the four edges, the highest.': 'plain',
  'Once waist and hip are in, {0} can be estimated.': 'plain', // {0} inside(name)
  'One of the two is enough: {0}.': 'plain', // {0} either(LEG_KEYS.map(named))
  'One side of the sheet.': 'plain',
  'Only changed sheets: none': 'plain',
  'Only changed sheets: {0}': 'plain', // {0} number(again.anew.length, 0)
  'Opens the join: each leg gets wider, the pair by 2 × {0}{1} = {2}. Woven cloth needs it.':
    'ours: the join, where the two blocks meet', // {0} part(spread), {1} rounding(2 * spread, { mm: spread, times: 2 }), {2} part(2 * spread)
  'Other widths': 'plain',
  'Outside the stitching line of the inner leg.': 'trade',
  'Pieces may be turned end for end.': 'plain',
  'Print again {0} of {1} sheets, coloured on the drawing: {2}. Keep the others: no line on them has moved by more than {3}. If one is missing, print it from the file of all sheets.':
    'plain', // {0} few, {1} whole, {2} labels, {3} mm(moved)
  'Print again {0} of {1} sheets, coloured on the drawing: {2}. Keep the others: no line on them has moved. If one is missing, print it from the file of all sheets.':
    'plain', // {0} few, {1} whole, {2} labels
  'Print it at 100 % (“actual size”), measure both bars, and type what they measure here.': 'plain',
  'Print its first page alone, at 100 % (“actual size”), and measure both squares on it. If they are right, print the rest the same way.':
    'plain',
  'Print its first page alone, at 100 % (“actual size”), and measure both squares on it. It says which old sheets to throw away.':
    'plain',
  'Print the first page of the sheets alone, at 100 % (“actual size”), and measure both squares on it.': 'plain',
  'Print the pattern: 1 sheet': 'plain',
  'Print the pattern: {0} sheets': 'plain', // {0} number(count, 0)
  'Print the sample: 1 sheet': 'plain',
  'Print the sample: {0} sheets': 'plain', // {0} number(count, 0)
  'Print the test page at 100 %, measure its two bars, and type what they measure.': 'plain',
  'Printed before': 'plain',
  'Project files to lay on this one': 'plain',
  'Project it at 100 % and measure a few squares of its grid on the table: they must be as large as is written there.':
    'plain',
  'Project it at 100 % onto the table, measure A to B, A to D and both diagonals, and type what they measure here.':
    'plain',
  'Pulls down when sitting: the back rise gets longer; 1.5 cm or ⅝ in is usual.': 'trade',
  'Puts the waist edge higher on the body; a minus value lowers it.': 'trade',
  'Reckoned from the trouser inseam, and follows when that changes.': 'trade',
  'Replaces the current measurements; undo brings them back.': 'plain',
  'Right, as worn': 'plain',
  'Room round the fullest part, before the leg is spread.': 'trade',
  'Room round the waist of the block; darts take up the rest.': 'trade',
  'Round the finished hem.': 'trade',
  'Round the leg': 'trade',
  'SVG or DXF: by the names of its lines, or by their shapes': 'standard: SVG, W3C',
  'Save these blocks': 'trade',
  'Seam allowances': 'trade',
  'Set the projector square to the table and project the test. Then type what its lines measure there; a line left empty corrects nothing.':
    'plain',
  'Several bodies on one drawing': 'plain',
  'Sewn to the raw edge, then folded over with it.': 'trade',
  'Shrinking and matching': 'trade',
  'Signs in the pictures': 'plain',
  'Size of the pattern': 'plain',
  'Size of the pocket': 'trade',
  'Smaller than true size is a sample for class; every sheet says so.': 'plain',
  'Start from a body like mine': 'plain',
  'Step of the sewing': 'trade',
  'Step {0} of {1}': 'plain', // {0} number(place, 0), {1} number(steps.length, 0)
  'Take the corrections back': 'plain',
  'Take this dart away': 'trade',
  'Take {0} from the blocks': 'trade', // {0} inside(name)
  'Taken from your own blocks, and follows when they change; a tape says it better.': 'trade',
  'That was never printed': 'plain',
  'The back fork’s tip, cut off this far inside the crotch point and sewn on again: {0} is usual, {1} leaves the leg whole.':
    'trade', // {0} mm(50), {1} mm(0)
  'The border your printer can’t print; its test page shows how wide that is.': 'plain',
  'The checks stand here once the measurements are in.': 'plain',
  'The class …': 'plain',
  'The dotted line is what was brought; it is kept, and truing can be taken back at any time.': 'plain',
  'The dotted line is what was worn. Against it:': 'plain',
  'The fields hold the middle values of {0} people: now correct what you can measure.': 'plain', // {0} number(start.people, 0)
  'The hem {0}.': 'trade', // {0} hemEnds(draft)
  'The leg ends {0} round.': 'plain', // {0} mm(hemGirthFinished)
  'The leg gets this much wider behind.': 'plain',
  'The leg gets this much wider, half in front and half behind.': 'plain',
  'The leg is drawn larger by what the cloth will lose, and says so; how much that is stands at Cloth.': 'trade',
  'The numbers of your blocks go in here.': 'trade',
  'The other side.': 'plain',
  'The pieces are drawn larger by that.': 'plain',
  'The project and all files of this page in one.': 'plain',
  'The sheets of {0} count as the last print again.': 'plain', // {0} dayOf(before)
  'The waist dips over the belly: the centre front waist goes up; 1.5 cm or ⅝ in is usual.': 'trade',
  'The waist edge lies this much higher over the side, and not at the centres.': 'trade',
  'The {0} is {1} wide; {2} {3} can be cut. What would fit:': 'plain', // {0} pieceName(widest.piece), {1} mm(widest.width), {2} LAYOUT_WORDS[layout], {3} mm(room)
  'These blocks were brought along. Nothing is done to them but what is chosen here, and that can be taken back.':
    'trade',
  'They are drawn on the block and told apart from the waist; nothing is sewn of them in a pant that pulls on.':
    'trade',
  'Thicker where the room is bright.': 'plain',
  'This pattern and up to eleven more, from their project files, one upon the other.': 'plain',
  'To exchange, with a first page that says what to throw away and what to keep.': 'plain',
  'To keep and to pass on': 'plain',
  'To take along': 'plain',
  'Too few of them can be kept with what is chosen now, so the sheets are laid out afresh. Print them all.': 'plain',
  'True if it measures {0}.': 'plain', // {0} mm(across)
  'Turned inside at the opening.': 'plain',
  'Wash and dry it as you will the trousers, before it is cut.': 'plain',
  'What the fold itself takes up; more in a thick flannel.': 'trade',
  'What these blocks say of their wearer': 'trade',
  'What you say here is taken off. Leave it empty where the paper ends at the stitching line.': 'trade',
  'When it is folded.': 'trade',
  'When it is folded; the leg ends that much higher.': 'trade',
  'Where the blocks come from': 'trade',
  'Where the hem is sewn to its own piece.': 'trade',
  'Where the waist is sewn to its own piece.': 'trade',
  'Which block is measured': 'trade',
  Whose: 'ours: whose, the body that a project is for',
  'Why: {0}': 'plain', // {0} step.why
  Width: 'plain',
  Widths: 'plain',
  'With a projector': 'plain',
  'With the waist at the navel {0}; nothing is drawn from that.': 'plain', // {0} rangeTold(estimate)
  'Worn sitting, all day or in a wheelchair: centre front goes down and centre back up, and the leg gets longer; 4 cm or 1½ in is usual.':
    'trade',
  'Your printer': 'plain',
  'a single layer': 'trade',
  'a size of your own': 'plain',
  'an inseam': 'trade',
  'as a drawing at true size, to print, correct and bring back': 'plain',
  'as needed': 'ours: as the body asks, an estimate from what was measured',
  'as on the block': 'trade',
  'both directions': 'plain',
  bought: 'plain',
  'by its measurements': 'plain',
  child: 'plain',
  crosswise: 'trade',
  'dark on light': 'plain',
  'does not fit; {0} at least': 'plain', // {0} mm(answer.widthWanted)
  'fewest sheets': 'plain',
  'full width': 'plain',
  'how it’s drawn': 'plain',
  landscape: 'plain',
  'least cloth': 'trade',
  lengthwise: 'trade',
  'light on dark': 'plain',
  man: 'plain',
  'margin {0}': 'plain', // {0} mm(read)
  'nine in ten bodies like this one have {0} to {1}': 'plain', // {0} mm(least), {1} mm(most)
  no: 'plain',
  'not read': 'plain',
  'not washed': 'trade',
  'of blocks on paper: flattened, marked and drawn at true size': 'trade',
  'one patch, behind': 'trade',
  'one row': 'trade',
  'overlocked or zigzagged': 'trade',
  'overlocker too': 'plain',
  'plain machine': 'trade',
  portrait: 'plain',
  'pyjama, tapered': 'trade',
  'scaled too': 'plain',
  'sewn of the cloth': 'trade',
  'sewn on': 'trade',
  single: 'trade',
  threaded: 'trade',
  'to a hem girth': 'trade',
  'turned under': 'trade',
  'two patches, behind': 'trade',
  'two patches, in front': 'trade',
  upright: 'plain',
  'what a tape measures on the paper of your block': 'trade',
  'where no tape is at hand': 'plain',
  'with a nappy': 'plain',
  without: 'plain',
  woman: 'plain',
  yes: 'plain',
  '{0} for the casing, both layers together.': 'trade', // {0} mm(casingHeight)
  '{0} isn’t taken from the blocks any more.': 'trade', // {0} name
  '{0} more lie beyond the stitching, to be caught by it.': 'trade', // {0} mm(caught)
  '{0} round: it holds, and it stretches over the fullest part.': 'trade', // {0} mm(bandLength ?? 0)
  '{0} sheets in {1} columns and {2} rows; never fewer than {3}.': 'plain', // {0} number(plan.sheets.length), {1} number(plan.columns), {2} number(plan.rows), {3} number(plan.lowerBound)
  '{0} taken; others are estimated or left out': 'plain', // {0} number(taken, 0)
  '{0} to {1} cm': 'standard: SI, and the inch', // {0} own(exactText(lowest, units)), {1} own(exactText(highest, units))
  '{0} to {1} in': 'standard: SI, and the inch', // {0} own(exactText(lowest, units)), {1} own(exactText(highest, units))
  '{0}, {1} wide, laid {2}: the pieces need {3} of it, and {4} % is left over.': 'plain', // {0} buy, {1} mm(width), {2} LAYOUT_WORDS[layout], {3} mm(lengthNeeded), {4} number(waste * 100, 0)
  '{0}: how it’s drawn': 'plain', // {0} name
  '{0}: how?': 'plain', // {0} name
  '{0}: margin {1}': 'plain', // {0} number(line.number, 0), {1} mm(line.margin)
  '{0}: {1} by the blocks, {2} by the tape.': 'trade', // {0} name, {1} mm(value), {2} mm(measured)
  '{0}: {1} by the blocks; not measured.': 'trade', // {0} name, {1} mm(value)
  '{0}: {1}, taken from the blocks.': 'trade', // {0} name, {1} mm(value)
} as const;
