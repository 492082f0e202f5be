// Written by `npm run words`, save where each comes from.
export const sewingPictures = {
  '1 notch': 'trade',
  '2 notches': 'trade',
  'A leg folded right sides together: the front lies wrong side up on the wider back, front inseam on back inseam; the inseam is lit.':
    'trade',
  'All pieces as they are cut, right side up: {0}.': 'trade', // {0} inTurn( pieces.map((piece) => say`${pieceName(piece)}, ${number(piece.cut, 0)}`), '; ', )
  'In the pictures a plain tinted face is the right side, a hatched one the wrong side; crossed strokes are elastic; dots are paper that lies printed side down. What the step sews is a thick dashed line, what it folds a thick line of dashes and dots, what it overlocks or zigzags a zigzag. Seams that are there already are thin and dashed; thin dashes and dots are a fold, long dashes the side line, dots what lies underneath. A short thick stroke is a notch or mark, a stroke with a head a pin, upright strokes are gathers, a thick band is cord, and an arrow with two heads is the grainline.':
    'trade',
  'One end of the {0}: folded lengthwise, right sides together, its seam lit; below, turned right side out, the end tucked in and stitched.':
    'trade', // {0} name
  'The back of a leg, right side up; the fork’s tip lies on it, wrong side up, its straight edge on the leg’s; the seam is lit, and dotted lines show the tip opened out.':
    'trade',
  'The cloth, {0} wide, before and after washing, with a leg on it, its grainline along the selvedge.': 'trade', // {0} mm(width)
  'The cloth, {0} wide, with a leg on it, its grainline along the selvedge.': 'trade', // {0} mm(width)
  'The facing, wrong side up, on the right side of the leg, the seam at the lower edge lit.': 'trade',
  'The facing, wrong side up, on the right side of the leg, the seam at the upper edge lit.': 'trade',
  'The finished trousers from the front, right side out, laid flat with the waist at its widest; behind it the inside of the back, which stands highest at its centre.':
    'trade',
  'The finished trousers from the front, right side out, the waist drawn in as it hangs when nobody wears them; behind it the inside of the back, which stands highest at its centre.':
    'trade',
  'The hem facing folded right sides together, its inseam, {0} high, lit.': 'trade', // {0} mm(hemStitchingAt(g))
  'The lay, {0}: {1}. To buy: {2}.': 'trade', // {0} LAYOUT_WORDS[lay.layout], {1} inTurn( lay.placements.map((one) => pieceName(one.piece)), ', ', ), {2} amount(lay.toBuy)
  'The left leg and the right one differ.': 'plain',
  'The leg, wrong side up, with the casing and the hem pressed over in the fold.': 'trade',
  'The leg, wrong side up, with the casing pressed over in the fold.': 'trade',
  'The leg, wrong side up, with the hem pressed over in the fold.': 'trade',
  'The lower end of the flat leg, wrong side up, its hem turned up and its stitching lit.': 'trade',
  'The lower end of the leg from the side, right side out, the cord’s ends coming out at the opening.': 'trade',
  'The lower end of the leg, right side out, a folded ring slipped over it, raw edges together, the seam lit.': 'trade',
  'The lower end of the leg, right side out, two rows of long stitches lit, their threads hanging out.': 'trade',
  'The lower end of the leg, wrong side out, elastic going into the hem casing at the inseam.': 'trade',
  'The lower end of the leg, wrong side out, its hem turned up and its stitching lit all round.': 'trade',
  'The lower end of the leg, wrong side out, the facing turned in and its stitching lit.': 'trade',
  'The opening for the cord on the right side of the leg, with a patch behind it, between fold and stitching line.':
    'trade',
  'The pocket on the right side of the back, stitched round three sides, with a triangle at both upper corners.':
    'trade',
  'The pocket on the right side of the front, stitched round three sides, with a triangle at both upper corners.':
    'trade',
  'The pocket, wrong side up, its facing stitched, its sides and bottom pressed under.': 'trade',
  'The pocket, wrong side up, with the facing turned over and stitched.': 'trade',
  'The raw edges overlocked: {0}.': 'trade', // {0} inTurn(works.map(rawEdgeName), '; ')
  'The right leg, turned right side out, is slipped into the left one, which is wrong side out: front on front, back on back; the crotch seam, a U from waist to waist, is lit.':
    'trade',
  'The right leg, wrong side up, its front at the left, with its notches, folds, stitching lines, side and quarter marks.':
    'trade',
  'The second leg is the mirror image of the first.': 'plain',
  'The two waist facings, right sides together, with both centre seams lit.': 'trade',
  'The upper end of the pocket: the facing folded to the right side with both its ends stitched; below, turned to the wrong side and stitched down.':
    'trade',
  'The waist from behind, the opening shut, the casing stitched upright at centre back and at both quarter marks.':
    'trade',
  'The waist from behind, wrong side out, elastic going in at the opening with a safety pin.': 'trade',
  'The waist from behind, wrong side out, elastic sewn to its raw edge by a zigzag.': 'trade',
  'The waist from behind, wrong side out, the casing turned over it, its stitching lit.': 'trade',
  'The waist from behind, wrong side out, the facing turned in, its stitching lit.': 'trade',
  'The waist from the front, right side out, the band standing up, the seam held down below it.': 'trade',
  'The waist from the front, right side out, the cord’s ends coming out at both openings.': 'trade',
  'The waist from the front, right side out, the folded ring lying on it, raw edges together, the seam lit.': 'trade',
  'The waist from the front, right side out, two rows of long stitches lit, their threads hanging out.': 'trade',
  'The waist laid out flat, both legs side by side, with the band above it: its quarters go to the centre seams and the quarter marks, which lie apart from the sides.':
    'trade',
  'The waist laid out flat, both legs side by side, with the elastic above it: its quarters go to the centre seams and the quarter marks, which lie apart from the sides.':
    'trade',
  'The {0} folded right sides together with its end seam lit; below, the ring folded lengthwise.': 'trade', // {0} name
  'Two layers, right sides together, sewn {0} from the edge, the edge overlocked.': 'trade', // {0} mm(inseam)
  'a fold': 'trade',
  'a notch or mark': 'trade',
  'a pin': 'trade',
  'a seam that is there already': 'trade',
  'back, underneath': 'trade',
  'band in quarters, shown cut open at centre back': 'trade',
  'both selvedges': 'trade',
  cord: 'trade',
  'dots: lies printed side down': 'plain',
  'dotted: before washing': 'ours: what a line of the picture means',
  'dotted: elastic, held at both ends': 'ours: what a line of the picture means',
  'draw in': 'plain',
  elastic: 'trade',
  'elastic in quarters, shown cut open at centre back': 'trade',
  'elastic, safety pin': 'trade',
  'end tucked in, stitched shut': 'trade',
  facing: 'trade',
  'first fold, {0} turned under': 'trade', // {0} mm(hemTucked(g))
  'fold of the {0}': 'trade', // {0} name
  'fold, no seam': 'trade',
  'fold: cut it open and turn the upper layer round': 'trade',
  'folded lengthwise, right sides together': 'trade',
  'gap sewn shut': 'trade',
  gathers: 'trade',
  grainline: 'trade',
  'hem, wrong side up': 'trade',
  'in a single layer, right side up': 'trade',
  'left open': 'plain',
  'leg, flat, wrong side up': 'trade',
  'leg, right side out, inseam up': 'trade',
  'leg, right side out, seen from the side': 'trade',
  'leg, right side up': 'trade',
  'leg, right side up; dotted: the tip opened out': 'trade',
  'leg, right side up; facing, wrong side up': 'trade',
  'leg, wrong side out, inseam up': 'trade',
  nap: 'trade',
  notch: 'trade',
  'notch on notch': 'trade',
  opening: 'plain',
  'opening at the side': 'plain',
  'opening shut': 'plain',
  'paper, printed side down': 'plain',
  'paper, printed side up': 'plain',
  'patch behind it': 'plain',
  'pin inseam on inseam first': 'trade',
  'pocket, both legs': 'trade',
  'pocket, this leg only': 'trade',
  'raw edges together': 'trade',
  'right side of the cloth': 'trade',
  'right side out': 'trade',
  'right side out, seen from the front': 'trade',
  'right side up': 'trade',
  'right side up, hem below': 'trade',
  'right sides together, wrong side up': 'trade',
  seam: 'trade',
  'seam, with a gap': 'trade',
  selvedge: 'trade',
  sew: 'trade',
  'sew the inseam': 'trade',
  side: 'trade',
  'slip in': 'plain',
  'stitch it down': 'trade',
  'stitch the ends': 'trade',
  'stitch, stretched': 'trade',
  'stitching line': 'trade',
  stretch: 'trade',
  'the grainline': 'trade',
  'the side line': 'plain',
  'then the ring, folded lengthwise, right side out': 'trade',
  'then this fold': 'trade',
  'threads to draw up': 'trade',
  'tip, wrong side up': 'trade',
  'turned right side out': 'trade',
  'turned, wrong side up': 'trade',
  'two facings, right sides together': 'trade',
  'waist, wrong side up': 'trade',
  'what lies underneath': 'plain',
  'what this step folds': 'trade',
  'what this step overlocks or zigzags': 'plain',
  'what this step sews': 'trade',
  'wrong side of the cloth': 'trade',
  'wrong side out': 'trade',
  'wrong side out, seen from behind': 'trade',
  'wrong side up': 'trade',
  '{0} as it lies, cloth {1} wide': 'trade', // {0} mm(length), {1} mm(lay.clothWidth)
  '{0} open': 'plain', // {0} mm(LEFT_OPEN)
  '{0} under': 'plain', // {0} mm(side)
  '{0}, one end': 'plain', // {0} name
  '{0}, right sides together': 'trade', // {0} LAYOUT_WORDS[lay.layout]
  '{0}, right sides together, folded at the left': 'trade', // {0} name
  '{0}, stretched': 'trade', // {0} name
} as const;
