// Written by `npm run words`, save where each comes from.
export const sewingWaist = {
  'A facing cut as the leg is lies flat at any slant; a turning of the leg itself would not.': 'trade',
  'All three layers are caught all round, and the {0} stands equally high everywhere.': 'plain', // {0} name
  'Check that it is not twisted. Pull both ends {0} out of the opening, lap them {1} and pin; try the trousers on.':
    'trade', // {0} mm(PULLED_OUT), {1} mm(LAP)
  'Close the casing and spread the gathers': 'trade',
  'Cords catch on doors and toys. On a child’s clothes elastic is the better choice; leave no long ends, no knots and no toggles there.':
    'trade',
  'Cut the cord {0} long, {1} wide, and keep its ends from fraying: stitch across them, or touch them with fabric glue.':
    'trade', // {0} mm(notions.cordLength ?? 0), {1} mm(waist.cordWidth)
  'Draw the cord in': 'trade',
  'Draw the ring over the hips and up to the waist. It holds by its own stretch: where it is too wide, take the seam in now, before it is sewn on.':
    'trade',
  'Elastic that is too tight hurts; on a child, allow for growing.': 'trade',
  'Elastics differ, so fit it on the body.': 'trade',
  'Fold the {0} right sides together, end on end.': 'trade', // {0} name
  'Folded, the ring is {0} high and {1} round.': 'trade', // {0} mm(finished.heights.height / 2), {1} mm(lengthOf(piece, ['upper']))
  'From the right side no facing shows at the upper edge.': 'trade',
  'Hold the band’s seam down': 'trade',
  'Hold the work in front of and behind the foot; let the machine feed it. A pulled needle bends and breaks.': 'trade',
  'Join and quarter the elastic': 'trade',
  'Join the casing': 'trade',
  'Join the waist band': 'trade',
  'Join the waist facings': 'trade',
  'Lap its ends {0} and pin them.': 'trade', // {0} mm(LAP)
  'Lap the ends of the lowest one {0} and pin them; the others are threaded later.': 'trade', // {0} mm(LAP)
  'Lay the edge of the elastic along the raw edge of the cloth, on its wrong side.': 'trade',
  'Lay the two facings right sides together and sew both centre seams, {0}. The ends that are chalked BACK meet at centre back.':
    'trade', // {0} fromEdge(allowances.crotch)
  'Let the elastic slip back into the casing.': 'trade',
  'Mark its quarters: the lap, the middle, and halfway between.': 'trade',
  'Mark its quarters: the seam is centre back.': 'trade',
  'Mark {0} from both ends, where they will be lapped, then the middle, and halfway between the middle and each end mark.':
    'trade', // {0} mm(LAP / 2)
  'Overlock them together along the raw edge, and stretch the elastic from pin to pin until the cloth lies flat. Keep the knife off the elastic.':
    'trade',
  'Pin it to the wrong side of the waist’s raw edge: the lap at centre back, the middle at centre front, the quarters at the quarter marks.':
    'trade',
  'Pinned quarter by quarter, the fullness spreads evenly all round.': 'trade',
  'Press the allowances down to the legs.': 'trade',
  'Press the allowances towards the facing and stitch them to it, close beside the seam: the edge rolls inside by itself then.':
    'trade',
  'Put a safety pin into one end and pin the other end down beside the opening, so that it can’t slip in. Push the pin through the channel.':
    'trade',
  'Put a safety pin into one end and pin the other end down beside the opening, so that it can’t slip in. Push the pin through the lower channel.':
    'trade',
  'Put a safety pin into one end and pin the other end down beside the opening, so that it can’t slip in. Push the pin through the lowest channel, then the next ones.':
    'trade',
  'Put a safety pin into one end. Draw it in at one opening in front, all round, and out at the other.': 'trade',
  'Released, the waist draws in evenly, and no raw edge shows.': 'trade',
  'Sew the band to the waist': 'trade',
  'Sew the casing to the waist': 'trade',
  'Sew the elastic to the edge': 'trade',
  'Sew the ends together, {0}, but in the half that will lie inside leave {1} open: the elastic goes in there.':
    'trade', // {0} fromEdge(allowances.crotch), {1} mm(Math.max(waist.elasticWidth + 5, finished.heights.height / 2 - 10))
  'Sew the ends together, {0}.': 'trade', // {0} fromEdge(allowances.crotch)
  'Sew the facing to the waist': 'trade',
  'Sew the gap in the end seam shut by hand.': 'trade',
  'Sewn down behind, the cord can’t be pulled out in the wash, nor by a child.': 'trade',
  'Slip the facing over the waist, right sides together, upper edges and seams meeting; pin.': 'trade',
  'Slip the folded ring over the waist, on the right side: raw edges together, seam at centre back, middle at centre front, quarter marks on quarter marks.':
    'trade',
  'Spread the gathers evenly, by quarters: the middle of the elastic at centre front, its lap at centre back, its quarters at the quarter marks. These lie {0}.':
    'trade', // {0} quarterPlace(g)
  'Stitch all round on the stitching line, from {0} on one side of centre back to {1} on the other, and backstitch at both ends: {2} stay open. The {3} edge lies {4} beyond the stitching.':
    'trade', // {0} mm(LEFT_OPEN / 2), {1} mm(LEFT_OPEN / 2), {2} mm(LEFT_OPEN), {3} edge, {4} mm(beyond)
  'Stitch all round on the stitching line, {0} below the upper edge, from {1} on one side of centre back to {2} on the other, and backstitch at both ends: {3} stay open.':
    'trade', // {0} mm(finished.heights.fold), {1} mm(LEFT_OPEN / 2), {2} mm(LEFT_OPEN / 2), {3} mm(LEFT_OPEN)
  'Stitch all round on the stitching line; the {0} edge lies {1} beyond it.': 'trade', // {0} edge, {1} mm(beyond)
  'Stitch straight down across the casing in both centre seams and at both quarter marks, so that the elastic can’t roll.':
    'trade',
  'Stitch straight down across the elastic’s channel, not the cord’s, in both centre seams and at both quarter marks, so that the elastic can’t roll.':
    'trade',
  'Stitch the allowances down, {0} below the seam, with the waist stretched.': 'trade', // {0} mm(3)
  'Stitch the facing down': 'trade',
  'Stretch it flat and stitch from the wrong side, through the elastic, {0} above its lower edge, the overlocked one.':
    'trade', // {0} mm(3)
  'Stretch it flat and stitch from the wrong side, through the elastic, {0} above its lower edge, the zigzagged one.':
    'trade', // {0} mm(3)
  'Stretch the casing flat at centre back and stitch all its openings shut.': 'trade',
  'Stretch the casing flat at centre back and stitch the opening shut.': 'trade',
  'Stretched, no thread breaks, and the waist goes over the fullest part.': 'trade',
  'Take the cord that you sewed; its seam goes to centre back.': 'trade',
  'The band is shorter than the waist: pin the quarters, and stretch the band, not the leg, to it while you sew.':
    'trade',
  'The channel is {0} wide all round, and the facing has no tuck anywhere.': 'trade', // {0} mm(finished.heights.channels[0]?.to ?? finished.heights.fold)
  'The channel is {0} wide all round, and the turned part has no tuck anywhere.': 'trade', // {0} mm(elastic ?? cord ?? sewingFacts(g).casingDepth)
  'The elastic’s channel is {0} wide all round, the cord’s above it {1}, and the turned part has no tuck anywhere.':
    'trade', // {0} mm(elastic), {1} mm(cord)
  'The gathers are even, every quarter equally full, and the opening is shut.': 'trade',
  'The half with the gap lies on top, away from the leg: when the casing is turned up, it comes to lie inside.':
    'trade',
  'The quarter marks lie {0}.': 'trade', // {0} quarterPlace(g)
  'The quarter marks lie {0}. Pinned to the side marks, the gathers would not be even.': 'trade', // {0} quarterPlace(g)
  'The ring is as long as the waist of the legs, and its seams meet theirs.': 'trade',
  'Thread the elastic': 'trade',
  'Thread the other elastic with a safety pin, lap the ends {0} and sew them as before, then stitch the opening shut.':
    'trade', // {0} mm(LAP)
  'Thread the other elastics with a safety pin, lap the ends {0} and sew them as before, then stitch the openings shut.':
    'trade', // {0} mm(LAP)
  'Try the trousers on. Then lay the waist flat at its widest, even out the ends, and stitch across cord and casing at centre back.':
    'trade',
  'Turn the casing over and stitch it': 'trade',
  'Turn the casing to the wrong side in its crease, {0} deep to the stitching line. Lay centre seam on centre seam and mark on mark, and pin.':
    'trade', // {0} mm(casingDepth)
  'Turn the facing to the wrong side and press the upper edge.': 'trade',
  'Turn the waist to the wrong side round the elastic, in its crease. The elastic lies snug in the fold of the lowest row.':
    'trade',
  'Turn the waist to the wrong side round the elastic, in its crease. The elastic lies snug in the fold.': 'trade',
  'Turn {0} of its lower edge under.': 'plain', // {0} mm(tuckedUnder(finished.heights.catch))
  'Turn {0} of the raw edge under, in its crease.': 'trade', // {0} mm(tuckedUnder(heights.catch))
  'Two fingers go under the band, and it goes over the fullest part without a thread breaking.': 'trade',
  'Two fingers go under the elastic, and it feels the same when sitting. Pulled out, it goes over the fullest part.':
    'trade',
  'Two fingers go under the elastic. Between any two pins the cloth is equally full.': 'trade',
  'With the waist at its widest both ends are equally long, and the trousers go over the fullest part.': 'trade',
  'Zigzag them together along the raw edge, and stretch the elastic from pin to pin until the cloth lies flat. Let the needle swing over the raw edge.':
    'trade',
  'at the side marks here, because front and back are equally wide': 'plain',
  'behind the side marks, because at the waist the back is wider than the front': 'plain',
  'centre seams': 'trade',
  'centre seams of legs and facing': 'trade',
  'end seam': 'trade',
  'in front of the side marks, because at the waist the front is wider than the back': 'plain',
} as const;
