// Written by `npm run words`, save where each comes from.
export const sewingSteps = {
  'A hand goes in, and the upper edge runs level, square to the side line.': 'plain',
  'A machine without zigzag? Bind them with thin bias tape instead.': 'trade',
  'A piece may lie upside down only on cloth without nap or direction. Stroke yours along the selvedge, and look at it from both ends: if it feels or looks otherwise from one of them, choose one-way cloth, and the lay is made anew; how much that takes stands beside this one.':
    'trade',
  'A seam ripper slips: the pins stop it, and your other hand stays behind it.': 'trade',
  'Above the inseam the edges don’t meet yet, and needn’t. Trim nothing there: each centre edge meets its own twin on the other leg.':
    'trade',
  'All three layers are caught all round. The band lies flat, without a tuck.': 'trade',
  'All three layers are caught all round. The foot goes through without a thread breaking.': 'trade',
  'An iron does it well on flat cloth, and badly in a narrow tube.': 'trade',
  'At the hem fold {0} to the wrong side on the hem line, and press.': 'trade', // {0} mm(turnedDepth(g))
  'At the hem pin fold on fold: the seam goes through the hem, all layers of it.': 'trade',
  'At the hem press {0} to the wrong side, then fold again on the hem line, {1} deep, and press.': 'trade', // {0} mm(hemTucked(g)), {1} mm(turnedDepth(g))
  'At the top {0}': 'plain', // {0} cornerTold(g)
  'At the waist press {0} to the wrong side first.': 'trade', // {0} mm(tuckedUnder(heights.catch))
  'Both ends are equally long. Tied, no loop hangs below the foot.': 'plain',
  'Both hems are equally deep, and front and back inseam are still equally long.': 'trade',
  'Both legs are equally long, the hems equally deep all round, without a twist.': 'trade',
  'Both legs are equally long, the stitching equally high all round, without a twist.': 'trade',
  'Both sides of a knit look alike, and so do front and back until one has been sewn the wrong way round.': 'trade',
  'Both sides of many cloths look alike, and so do front and back until one has been sewn the wrong way round.':
    'trade',
  'Chalk BACK on the wrong side of each facing, too, at its back end: the left one where the paper’s words are read upright, seen from the printed side.':
    'trade',
  'Chalk BACK on the wrong side of the back half of each leg.': 'trade',
  'Chalk LEFT BACK or RIGHT BACK on the wrong side of the back half of each leg: left and right as they are worn.':
    'trade',
  'Choose the side of the cloth that will be seen: that is the right side, the other one the wrong side. The print is clearer on it, or the nap softer. Where both sides look alike, take either, and chalk a cross on the wrong side of every piece as you cut it.':
    'trade',
  'Choose the side of the cloth that will be seen: that is the right side, the other one the wrong side. The right side shows small V’s. Pull an edge that was cut across the cloth: it curls to the right side. Where both sides look alike, take either, and chalk a cross on the wrong side of every piece as you cut it.':
    'trade',
  'Clip the {0} notches of each leg and its tip, no deeper than {1}: {2}.': 'trade', // {0} clipped, {1} mm(3), {2} places
  'Clip the {0} notches of each leg, no deeper than {1}: {2}.': 'trade', // {0} clipped, {1} mm(3), {2} places
  'Cords at hems catch in bicycles and doors; on children’s clothes leave them out, or wholly inside.': 'trade',
  'Count the pins that you take out.': 'trade',
  'Cut away from your hands. Close a rotary cutter every time you put it down.': 'plain',
  'Cut each elastic {0} long, {1} wide. Draw it through with a safety pin, let it reach {2} beyond both inseam stitching lines, and sew across both its ends inside the allowance.':
    'trade', // {0} mm(g.notions.hemElasticLength ?? 0), {1} mm(g.hem.elasticWidth), {2} mm(LAP / 2)
  'Cut the pieces': 'trade',
  'Cut two cords {0} long, {1} wide, and keep their ends from fraying.': 'trade', // {0} mm(length), {1} mm(g.hem.cordWidth)
  'Cut two elastics {0} long, {1} wide. Try one round the leg where the hem will sit, closed with a pin.': 'trade', // {0} mm(length), {1} mm(g.hem.elasticWidth)
  'Don’t crease it along the side line: lay the inseams together, and the fold finds itself.': 'trade',
  'Don’t wash the cloth: the pieces are cut larger by what it will shrink, {0} in length and {1} in width.': 'trade', // {0} share(cloth.shrinkLength), {1} share(cloth.shrinkWidth)
  'Draw each in at the opening at the side with a safety pin, once round, and out at the same opening.': 'trade',
  'Draw one over the foot and up to where it will sit: it holds there and doesn’t pinch.': 'plain',
  'Draw the hem cords in': 'trade',
  'Each leg has one front notch, two back notches, and its quarter mark at the waist.': 'trade',
  'Each ring is as long round as the hem of its leg.': 'trade',
  'Elastic that is too tight hurts.': 'trade',
  'Finish the pocket’s opening': 'trade',
  'Fold each facing right sides together and sew its inseam, {0}.': 'trade', // {0} fromEdge(allowances.inseam)
  'Fold each leg right sides together, so that its front inseam lies on its back inseam. There is no side seam: at the crotch the leg folds {0} behind the side line, because the back is wider there.':
    'trade', // {0} mm(behindSide)
  'Fold each leg right sides together, so that its front inseam lies on its back inseam. There is no side seam: at the crotch the leg folds {0} in front of the side line, because the front is wider there.':
    'trade', // {0} mm(-behindSide)
  'Fold each leg right sides together, so that its front inseam lies on its back inseam. There is no side seam: the leg folds at the side line.':
    'trade',
  'Fold each leg right sides together, so that its front inseam lies on its back inseam. There is no side seam: the leg folds near the side line.':
    'trade',
  'Fold each {0} right sides together, end on end, and sew the ends, {1}.': 'trade', // {0} name, {1} fromEdge(allowances.inseam)
  'Fold it lengthwise, selvedge on selvedge. If it twists or the ends don’t meet, pull it diagonally, by the two corners that fall short, until they do.':
    'trade',
  'Fold it lengthwise, selvedge on selvedge. If it twists, shift one selvedge along the other until the fold hangs straight: in a knit the columns of stitches show the grain better than the edges.':
    'trade',
  'Fold the casing to the wrong side on the fold line, which is {0} below the raw edge, and press.': 'trade', // {0} mm(heights.fold + heights.catch)
  'Fold the facing, {0} deep, to the right side on the fold line. Stitch both its ends, {1}, and cut the corners off slantwise, close to the stitching.':
    'trade', // {0} mm(pocket.facing), {1} fromEdge(g.allowances.inseam)
  'Fold the ring lengthwise, wrong sides together, and press the fold.': 'trade',
  'Fold the strip lengthwise, right sides together, and sew along the open long edge, {0} from it.': 'trade', // {0} mm(allowance('upper'))
  'Folded, each ring is {0} high and {1} round.': 'trade', // {0} mm(hem.bandHeight), {1} mm(lengthOf(piece, ['upper']))
  'From the right side no facing shows at the lower edge.': 'trade',
  'Hem the legs flat': 'trade',
  'Hold the paper down with weights or pins and cut on the cut lines: {0}.': 'trade', // {0} inTurn(pieces.map(cutWords), '; ')
  'If cloth shrinks after sewing, the trousers become too tight and too short.': 'trade',
  'In one seam the curve runs smoothly under the body; sewn in two halves it would form a corner at the inseams.':
    'trade',
  'Inseam and crotch edge run on across the seam without a step, and the two legs are mirror images.': 'trade',
  'Iron a patch of interfacing, {0} by {1}, to the wrong side behind the mark.': 'trade', // {0} mm(openingPatch(width)), {1} mm(openingPatch(width))
  'It goes through the outer layer alone, so it is made before the casing is folded.': 'trade',
  'It is sewn on first, because a leg lies flat only before its inseam is sewn.': 'trade',
  'Join the cuffs': 'trade',
  'Join the hem bands': 'trade',
  'Join the hem facings': 'trade',
  'Keep your fingers beside the foot, never in front of the needle.': 'trade',
  'Laid right sides together, the two legs meet along the whole crotch seam, front and back; elsewhere they differ, as they should.':
    'trade',
  'Lay each leg wrong side up: the folds that you marked are seen there.': 'trade',
  'Lay the cloth and the paper as the lay shows, which stands before these steps. Each grainline runs along the cloth: measure from both its arrowheads to the selvedge, and turn the paper until both distances are what the lay says.':
    'trade',
  'Lay the pocket on the right side of the {0} of each leg, its corners on the marks, and pin it.': 'trade', // {0} part
  'Lay the pocket on the right side of the {0} of the right leg, as it is worn, its corners on the marks, and pin it.':
    'trade', // {0} part
  'Lay the tip on the back of its leg, right sides together, its long straight edge on that of the leg. The wider end is the crotch’s.':
    'trade',
  'Lay the tip on the back of its leg, right sides together, its long straight edge on that of the leg: the notches meet, and so do both ends of the raw edges. The wider end is the crotch’s.':
    'trade',
  'Lay the two halves right sides together, sew one end of each to the other, {0}, and press the seam open.': 'trade', // {0} fromEdge(allowance('leftEnd'))
  'Lay two scraps right sides together, and sew them as you will sew the inseams.': 'trade',
  'Leave the paper on each piece until it is marked. A piece that is cut twice from a single layer is cut and marked once, then once more with the paper turned over.':
    'plain',
  'Let them slip back, stretch the hem flat, and stitch the openings shut.': 'trade',
  'Look at your chalk marks: seen from behind, the left leg lies on the left, as it is worn.': 'plain',
  'Make the openings for the cord': 'trade',
  'Make the openings for the hem cords': 'trade',
  'Mark its quarters: the seam comes to the inseam.': 'trade',
  'Mark on the wrong side, with chalk or a washable pen: the folds (on the paper they bear small triangles), the stitching lines, the side, and the quarters of the waist.':
    'trade',
  'Mark on the wrong side, with chalk or a washable pen: the folds (on the paper they bear small triangles), the stitching lines, the side, and the quarters of waist and hem.':
    'trade',
  'Mark the opening for the cord on the right side, with a washable pen.': 'trade',
  'Mark the openings for the cords on the right side, with a washable pen.': 'trade',
  'Mark the pieces': 'trade',
  'Mark the pocket’s corners with a stitch of thread each, so that both sides show them.': 'trade',
  'No allowance is drawn at the {0}: cut that much outside the line as you mean to sew inside it.': 'trade', // {0} seam
  'No overlocker? Sew each seam with a narrow zigzag on the stitching line, sew a second zigzag beside it in the allowance, and trim what is left outside.':
    'trade',
  'Not on that lay, but on a cloth of their own: {0}. Lay them on it side by side, their grainlines along its selvedge.':
    'trade', // {0} inTurn(ofOtherCloth(g).map(pieceName), '; ')
  'On each leg one opening is marked at the side, just above the hem fold, in the part that will lie outside.': 'trade',
  'On each leg one opening is marked {0} from the centre-front stitching line, in the part of the casing that will lie outside.':
    'trade', // {0} mm(20)
  'Open it out and press both allowances towards the tip.': 'trade',
  'Open the folds again. Their creases stay and guide you later.': 'trade',
  'Open the pressed folds out flat: the seam runs through to the raw edges.': 'trade',
  'Overlock along the stitching line, {0}, in one go from the waist in front through the crotch to the waist behind; the knife trims off the rest. Take pins out before they reach it.':
    'trade', // {0} fromEdge(crotch)
  'Overlock the raw edges': 'trade',
  'Overlock the sides and the bottom.': 'trade',
  'Overlock the upper edge of the pocket.': 'trade',
  'Overlock {0}. Let the knife just skim the edge, or switch it off.': 'trade', // {0} names
  'Pin at the crotch and at the hem, then between.': 'trade',
  'Pin at the crotch, at the hem, and at both notches, then between.': 'trade',
  'Pin at the crotch, at the hem, and at the notch, then between.': 'trade',
  'Pin inseam on inseam first, the allowances to opposite sides; then the single front notches, the double back notches, and the upper edges.':
    'trade',
  'Pin it at both ends and at the notch.': 'trade',
  'Pin it at both ends.': 'trade',
  'Press each seam flat as it was sewn. Then slip a towel, rolled tight, into the leg, and press the allowances of one leg to its front, those of the other to its back.':
    'trade',
  'Press it flat, along the grain, with the heat that its label allows.': 'trade',
  'Press it flat, along the grain, without steam: steam shrinks it.': 'trade',
  'Press it.': 'trade',
  'Press on the wrong side, and hold the narrow point with a pin, not with your fingers.': 'trade',
  'Press the allowances towards the facing and stitch them to it, close beside the seam.': 'trade',
  'Press the casings from the wrong side.': 'trade',
  'Press the cloth': 'trade',
  'Press the folds in': 'trade',
  'Press the hems from the wrong side.': 'trade',
  'Press the pocket’s sides under': 'trade',
  'Press the scrap.': 'plain',
  'Press the seam over a ham, or over a towel rolled tight: above the notches to one side. Leave the curve below them standing up: that is how it is worn.':
    'trade',
  'Press them.': 'trade',
  'Press {0} to the wrong side, the bottom first, then the sides, which go on in line with the turned facing. Fold the lower corners so that no raw edge shows.':
    'trade', // {0} mm(g.allowances.inseam)
  'Pressed to different sides they don’t pile up where the four meet in the crotch.': 'trade',
  'Pull the inner leg out.': 'trade',
  'Pull the seam apart. If the thread shows between the halves, rethread the machine first, then tighten the upper thread; if the seam puckers, loosen it or change the needle.':
    'trade',
  'Pull the seam lengthwise as far as the cloth gives. If a thread breaks, rethread the overlocker first, then loosen its needle threads; if the seam waves, raise the differential feed; if it puckers, lower it.':
    'trade',
  'Pull the seam lengthwise as far as the cloth gives. If the thread breaks, rethread the machine first, then widen the zigzag or loosen the upper thread; if the seam waves, lighten the foot’s pressure.':
    'trade',
  'Sew all round, {0}.': 'trade', // {0} fromEdge(allowances.hem)
  'Sew an upright buttonhole, {0} long, on the mark, or press in an eyelet of {1}; make one on a scrap with its patch first. Cut the buttonhole open from both ends to the middle, a pin across each end.':
    'trade', // {0} mm(width + 3), {1} mm(Math.max(4, 0.8 * width))
  'Sew inside the ring and stretch the cuff, not the leg, from pin to pin.': 'trade',
  'Sew inside the ring: the foot stands in the tube, the leg lies round it.': 'trade',
  'Sew the crotch seam, leg in leg': 'trade',
  'Sew the cuffs on': 'trade',
  'Sew the curve between the notches a second time, in the allowance, {0} nearer the raw edge than the first row: here the seam bears the most pull.':
    'trade', // {0} mm(SECOND_ROW)
  'Sew the curve between the notches a second time, on the plain machine, just outside the needle threads: here the seam bears the most pull.':
    'trade',
  'Sew the facings to the hems': 'trade',
  'Sew the fork’s tip on': 'trade',
  'Sew the hem bands on': 'trade',
  'Sew the hem casings flat': 'trade',
  'Sew the hem cords': 'trade',
  'Sew the hems': 'trade',
  'Sew the inseams': 'trade',
  'Sew the left leg’s inseam first, then the right one’s: each leg’s two inseams belong to each other, and to no other leg’s.':
    'trade',
  'Sew the pocket on': 'trade',
  'Sew the pockets on': 'trade',
  'Sew the waist cord': 'trade',
  'Sew {0} with a narrow zigzag, which gives with the cloth, in one go from the waist in front through the crotch to the waist behind. Don’t pull: let the machine feed.':
    'trade', // {0} fromEdge(crotch)
  'Sew {0}, in one go from the waist in front through the crotch to the waist behind; backstitch at both ends.':
    'trade', // {0} fromEdge(crotch)
  'Sewn on first, it lies flat; its allowances, pressed that way, are held by the inseam and the crotch seam later. From here on the leg is one piece.':
    'trade',
  'Slip each facing over the hem, right sides together, inseam on inseam; pin.': 'trade',
  'Slip each ring over the hem, on the right side: raw edges together, seam at the inseam, quarters on quarters; pin.':
    'trade',
  'Spread the gathers evenly, by quarters: the lap at the inseam, the elastic’s quarters at the quarter marks.':
    'trade',
  'Steam burns fingers: hold the fold with a ruler, not with your hand.': 'trade',
  'Stitch across cord and hem at the inseam, so that it can’t be pulled out.': 'trade',
  'Stitch all round, {0} above the hem.': 'trade', // {0} mm(hemStitchingAt(g))
  'Stitch all round, {0} from the fold; begin and end {1} to each side of the inseam and backstitch: {2} stay open.':
    'trade', // {0} mm(hemStitchingAt(g)), {1} mm(HEM_GAP / 2), {2} mm(HEM_GAP)
  'Stitch all round, {0} from the fold; begin at the inseam.': 'trade', // {0} mm(hemStitchingAt(g))
  'Stitch close to the edge: down one side, along the bottom, up the other side. Sew a small triangle at both upper corners, where a hand pulls.':
    'trade',
  'Stitch from one inseam to the other, {0} from the fold.': 'trade', // {0} mm(hemStitchingAt(g))
  'Stitch it down {0} below the fold.': 'trade', // {0} mm(pocket.facing - 5)
  'Stitch the hem casings': 'trade',
  'Stitch the hem facings down': 'trade',
  'Straighten both ends: cut along one crosswise thread; pull one out and its gap shows the way.': 'trade',
  'Straighten both ends: cut along one row of stitches.': 'trade',
  'Stretched and let go, the seam lies flat again and no thread has broken.': 'trade',
  'Take the two cords that you sewed.': 'trade',
  'The cloth repeats every {0} across: lay the side lines of both legs on the same stripe, so that one leg mirrors the other.':
    'trade', // {0} mm(repeatAcross)
  'The cloth repeats every {0} along its length: lay the hem fold of both legs on the same line of it, so that it meets at the inseams and the centres.':
    'trade', // {0} mm(repeat)
  'The cord is equally wide from end to end, and no raw edge shows.': 'trade',
  'The cord, with a pin in its end, goes through.': 'trade',
  'The creases run straight from edge to edge, and the turned parts lie flat on the leg.': 'plain',
  'The edges are as long as before: not stretched, not drawn together.': 'plain',
  'The foot goes through, and the elastic leaves no mark on the leg.': 'trade',
  'The inseams meet at the crotch; one notch meets one notch in front, two meet two at the back. Nowhere is the seam wider than drawn: that would take from the opening that goes over the hips.':
    'trade',
  'The iron stays hot when you look away: stand it up, and switch it off when you leave.': 'plain',
  'The left and the right leg differ. The cloth lies in a single layer, right side up, and every paper printed side up: a leg that was turned over would be one for the other side.':
    'trade',
  'The opening is {0} wide between the stitching lines of its sides, and straight.': 'trade', // {0} mm(pocket.width)
  'The pocket measures {0} by {1}.': 'trade', // {0} mm(pocket.width), {1} mm(pocket.height)
  'The quarter mark is halfway along the waist edge, here at the side line.': 'trade',
  'The quarter mark is halfway along the waist edge, which is not where the side line is.': 'trade',
  'The seam lies flat, and the stitch looks the same from both sides.': 'trade',
  'The selvedges lie on each other without a pull, and the ends are square to them.': 'trade',
  'The two inseams are equally long and meet at both notches; nothing was stretched or eased to make it so.': 'trade',
  'The two inseams are equally long and meet at the notch; nothing was stretched or eased to make it so.': 'trade',
  'The two inseams are equally long; nothing was stretched or eased to make it so.': 'trade',
  'The two legs are mirror images: laid right sides together, their edges meet all round.': 'trade',
  'Then lay it as the lay shows: unfolded, right side up, or folded, right sides together.': 'trade',
  'These edges are turned inside and held by one row of stitching; nothing else keeps them from fraying.': 'trade',
  'These edges are turned inside, once, and held by one row of stitching. Knit doesn’t fray, but without this it curls.':
    'trade',
  'This cloth has a nap or a one-way print: lay the waists of all pieces towards the same end, the upper one of a print; of a nap, that from which it is smooth to stroke down the leg.':
    'trade',
  'This hem is {0} round; a machine’s free arm is about that, so the leg could not be drawn over it. Flat it is easy, and the inseam holds the ends.':
    'trade', // {0} mm(hemRound)
  'Thread each with a safety pin, pull both ends well out of the opening, and lap them {0}, not twisted.': 'trade', // {0} mm(LAP)
  'Thread the hem elastics': 'trade',
  'Trim the allowances between the notches to {0}, and let them widen gently above: a wide allowance can’t spread round the curve, and pulls.':
    'trade', // {0} mm(TRIMMED)
  'Try the iron’s heat on a scrap; the steam comes out at your fingers.': 'plain',
  'Try the stitches on a scrap': 'trade',
  'Try the trousers on and see whether the creases hang level and long enough.': 'plain',
  'Turn each facing to the wrong side and press the lower edge.': 'trade',
  'Turn it with a safety pin, turn its free ends in by {0}, stitch them shut, and press.': 'trade', // {0} mm(allowance('rightEnd'))
  'Turn one leg right side out. Slip it into the other, which stays wrong side out: right sides together, front on front, back on back.':
    'trade',
  'Turn the facing to the wrong side, push its corners out, and press.': 'trade',
  'Turn the facing, {0} deep, to the wrong side on the fold line, and press.': 'trade', // {0} mm(pocket.facing)
  'Turn the {0} down and press the allowances up to the leg.': 'trade', // {0} name
  'Turn {0} of its upper edge under.': 'plain', // {0} mm(hem.turnUnder)
  'Turned so, the facing’s ends are clean at the corners, where the pocket wears first.': 'trade',
  'Wash and dry the cloth as the trousers will be washed and dried. It is expected to lose {0} in length and {1} in width.':
    'trade', // {0} share(cloth.shrinkLength), {1} share(cloth.shrinkWidth)
  'Wash and dry the other cloth with it, so that it shrinks now, too.': 'trade',
  'Wash and press the cloth': 'trade',
  'Where the lay shows a piece’s middle on the fold, fold the paper in half, lay its crease on the fold of the cloth, and do not cut the fold.':
    'trade',
  'Zigzag the cut ends, which would fray, and wash and dry the cloth as the trousers will be washed and dried. It is expected to lose {0} in length and {1} in width.':
    'trade', // {0} share(cloth.shrinkLength), {1} share(cloth.shrinkWidth)
  'Zigzag the raw edges': 'trade',
  'Zigzag the sides and the bottom.': 'trade',
  'Zigzag the sides and the bottom: no allowance is drawn there, so the pocket is sewn on over its edges.': 'trade',
  'Zigzag the upper edge of the pocket.': 'trade',
  'Zigzag {0} so that the needle lands once in the cloth and once just off its edge.': 'trade', // {0} names
  'and as high': 'plain',
  'and {0} higher': 'plain', // {0} mm(higher)
  'and {0} lower': 'plain', // {0} mm(-higher)
  inseams: 'trade',
  'one on the front centre seam': 'trade',
  'single ones on the inseams': 'trade',
  'single ones where the tip is sewn on': 'trade',
  'the back’s corner lies as far from the fold as the front’s': 'trade',
  'the back’s corner lies inside the front, {0} nearer the fold than the front’s corner': 'trade', // {0} mm(nearer)
  'the back’s corner lies outside the front, {0} farther from the fold than the front’s corner': 'trade', // {0} mm(-nearer)
  'the lower edge of both legs': 'plain',
  'the lower edge of both waist facings': 'trade',
  'the upper edge of both hem facings': 'trade',
  'the upper edge of both legs': 'plain',
  'two on the back one': 'plain',
  '{0}, {1} and {2} mirrored': 'trade', // {0} pieceName(piece), {1} number(piece.cut / 2), {2} number(piece.cut / 2)
} as const;
