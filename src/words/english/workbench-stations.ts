// Written by `npm run words`, save where each comes from.
export const workbenchStations = {
  ', {0} times': 'plain', // {0} number(rows, 0)
  'A knit stretches over the hip: it needs less ease, or none.': 'plain',
  'A nap, a print with an upper end, or uneven stripes: no piece is turned end for end.': 'plain',
  'A nappy gets more room in the rise.': 'plain',
  'A patch on the leg: there is no side seam to set one in, and no fly.': 'plain',
  'A plain machine with zigzag sews everything; a serger finishes edges, and seams of knit, in one go.': 'plain',
  'A pool above the seat: the centre back waist comes down; 1 cm or ⅜ in is usual.': 'plain',
  'A strip of its own, folded, sewn and turned.': 'plain',
  'A woven gives nothing: the opening itself has to pass over the hip.': 'plain',
  'Both inseams are so much longer.': 'plain',
  'Centre back {0}, centre front {1}.': 'plain', // {0} centreStands('back', leg.back), {1} centreStands('front', leg.front)
  'Cut it to length, knot its ends.': 'plain',
  'Cut it {0} long for each hem.': 'plain', // {0} mm(hemElasticLength ?? 0)
  'Cut it {0} long, with two ends to tie.': 'plain', // {0} mm(cordLength ?? 0)
  'Cut it {0} long{1}.': 'plain', // {0} mm(elasticLength ?? 0), {1} rows > 1 ? say`, ${number(rows, 0)} times` : UNSAID
  'Drags at the inner knee: both inseams are let out there; 8 mm or ⅜ in is usual.': 'plain',
  'Drags from the seat to the crotch: the back extension and the back rise get longer; 1 cm or ⅜ in is usual.': 'plain',
  'Drawn through the finished casing.': 'plain',
  'Each in a channel of its own.': 'plain',
  'Finished inseam {0}.': 'plain', // {0} mm(inseamFront)
  'Finished, across the opening.': 'plain',
  'Finished, from the opening down.': 'plain',
  'Folded, right sides together, both legs come out of one cut.': 'plain',
  'Folds under the seat: 1 cm or ⅜ in is usual; it comes off the back extension and the back rise.': 'plain',
  'For both centre seams and the curve between.': 'plain',
  'From selvedge to selvedge, as it is bought.': 'plain',
  'From the crotch to the hem fold, along the seam.': 'plain',
  'Full width lets a sample be sewn like the real thing.': 'plain',
  'Hem {0} round; the foot needs {1}.': 'plain', // {0} mm(hemGirthFinished), {1} mm(foot)
  'How deep it lies inside the leg.': 'plain',
  'How far a piece may lean off the grain; best not at all.': 'plain',
  'How far one sheet lies under the next for gluing; 0 to butt and tape.': 'plain',
  'How far the crotch line lies below the seat; now {0}.': 'plain', // {0} mm(riseEase)
  'How much longer {0} of it, across the grain, can be pulled without force.': 'plain', // {0} mm(100)
  'How much wider each back is than the middle, and each front narrower.': 'plain',
  'How the sheets lie under the pieces.': 'plain',
  'It changes nothing in the drawing, but what is to be minded.': 'plain',
  'It comes out at centre front, through the outer layer.': 'plain',
  'It comes out at the side.': 'plain',
  'It is bought longer by that.': 'plain',
  'Its raw edge, {0} tucked in.': 'plain', // {0} mm(turnUnder)
  'Light lines show the cloth between them.': 'plain',
  'Lines towards the crotch: both extensions get longer; 1 cm or ⅜ in is usual.': 'plain',
  'Measured flat.': 'plain',
  'Measured: how much longer the band’s knit gets.': 'plain',
  'Measured: how much longer the elastic gets when it is pulled out.': 'plain',
  'Measured: how much longer the rib gets.': 'plain',
  'More room to sit, and a looser look.': 'plain',
  'Nothing is tucked in: its edge is overlocked.': 'plain',
  'Of a check, along the selvedge; {0} for none. The hems then lie on the same line of it.': 'plain', // {0} mm(0)
  'Of its length, in the first wash: measure a washed piece. {0}': 'plain', // {0} what
  'Of its width, in the same wash.': 'plain',
  'Of stripes or a check, across. They mirror about centre front and back.': 'plain',
  'One side of the sheet.': 'plain',
  'Opens the join: each leg is {0} wider, the pair {1}. A woven wants it.': 'plain', // {0} mm(spread), {1} mm(2 * spread)
  'Outside the stitching line of the inner leg.': 'plain',
  'Pieces may be turned end for end.': 'plain',
  'Pulls down when sitting: the back rise gets longer; 1.5 cm or ⅝ in is usual.': 'plain',
  'Puts the waist edge higher on the body; with a minus, lower.': 'plain',
  'Room round the fullest part, before the leg is spread.': 'plain',
  'Room round the waist of the block; darts take up the rest.': 'plain',
  'Round the finished hem.': 'plain',
  'Sewn to the raw edge, then folded over with it.': 'plain',
  'Smaller than true is a sample for class; every sheet says so.': 'plain',
  'The back fork’s tip, cut off so far inside the crotch point and sewn on again: {0} is usual, {1} leaves the leg whole.':
    'plain', // {0} mm(50), {1} mm(0)
  'The leg ends {0} round.': 'plain', // {0} mm(hemGirthFinished)
  'The leg is drawn larger by what the cloth will lose, and says so; how much that is stands at Cloth.': 'plain',
  'The leg is so much wider behind.': 'plain',
  'The leg is so much wider, half in front and half behind.': 'plain',
  'The other side.': 'plain',
  'The pieces are drawn larger by that.': 'plain',
  'The waist dips over the belly: the centre front waist goes up; 1.5 cm or ⅝ in is usual.': 'plain',
  'The waist edge lies so much higher over the side, and not at the centres.': 'plain',
  'Thicker where the room is bright.': 'plain',
  'True if it measures {0}.': 'plain', // {0} formatLength(across, units)
  'Turned inside at the opening.': 'plain',
  'Wash and dry it as you will the trousers, before it is cut.': 'plain',
  'What the fold itself takes up; more in a thick flannel.': 'plain',
  'What the printer can not reach, all round.': 'plain',
  'When it is folded.': 'plain',
  'When it is folded; the leg ends that much higher.': 'plain',
  'Where the hem is sewn to its own piece.': 'plain',
  'Where the waist is sewn to its own piece.': 'plain',
  'Worn sitting, all day or in a wheelchair: centre front goes down and centre back up, and the leg gets longer; 4 cm or 1½ in is usual.':
    'plain',
  '{0} Nobody measured it on children: by adults’ proportions two in three lie within {1} of the estimate.': 'plain', // {0} definition, {1} mm(inferred.spread)
  '{0} With the waist at the navel two bodies in three like this one lie within {1} of {2}; nothing is drawn from that.':
    'plain', // {0} definition, {1} mm(expected.spread), {2} mm(expected.value)
  '{0} for the casing, both layers together.': 'plain', // {0} mm(casingHeight)
  '{0} more lie beyond the stitching, to be caught by it.': 'plain', // {0} mm(caught)
  '{0} round: it holds, and it stretches over the fullest part.': 'plain', // {0} mm(bandLength ?? 0)
  '{0} sheets in {1} columns and {2} rows; never fewer than {3}.': 'plain', // {0} number(plan.sheets.length), {1} number(plan.columns), {2} number(plan.rows), {3} number(plan.lowerBound)
} as const;
