// Written by `npm run words`, save where each comes from.
export const cloth = {
  'A new one, and new ones of its own kind for the overlocker; keep them and pins away from children.': 'trade',
  'A new one; keep it and pins away from children.': 'trade',
  'A scrap will do.': 'plain',
  'About {0} m is used.': 'plain', // {0} number(Math.ceil(thread / 1000))
  'About {0} m is used. The overlocker takes its own cones.': 'plain', // {0} number(Math.ceil(thread / 1000))
  'At hand': 'plain',
  'Both ends are straightened along a thread, and the first wash takes its share of the length: buy {0}.': 'trade', // {0} amount(lay.toBuy)
  'Both ends are straightened along a thread: buy {0}.': 'trade', // {0} amount(lay.toBuy)
  'Contrasting cloth': 'trade',
  'Cord or tape, {0} wide, hems': 'trade', // {0} mm(hem.cordWidth)
  'Cord or tape, {0} wide, waist': 'trade', // {0} mm(waist.cordWidth)
  'Elastic, {0} wide, hems': 'trade', // {0} mm(hem.elasticWidth)
  'Elastic, {0} wide, waist': 'trade', // {0} mm(waist.elasticWidth)
  'For stitching that shows: a {0}, if your machine takes one.': 'trade', // {0} TWIN_NEEDLE
  'For: {0}.': 'plain', // {0} inTurn(pieces.map(pieceName), ', ')
  'Iron-on interfacing, behind the openings': 'trade',
  'Knit cloth': 'trade',
  'Knit for the band': 'trade',
  'Label for nightwear': 'trade',
  'Machine needle': 'trade',
  'Narrow tape, for a loop': 'plain',
  'Not washed first: the pieces are drawn larger instead.': 'plain',
  'Required in some countries if you sell it; the cloth’s own label and the rules where you live decide.': 'trade',
  'Rib for the cuffs': 'trade',
  'The cloth behind an opening for a cord tears unless it is held. For eyelets instead of buttonholes: {0} of them, and the squares all the same.':
    'trade', // {0} number(openings)
  'The cloth is {0} wide and is not washed first: the pieces themselves are drawn larger.': 'trade', // {0} mm(width)
  'The cloth is {0} wide; its wash takes {1} of that and leaves {2}.': 'trade', // {0} mm(width), {1} share(shrinkWidth), {2} mm(width * (1 - shrinkWidth))
  'The cloth lies {0}; nothing is cut within {1} of a selvedge, nor in the bend of the fold.': 'trade', // {0} LAYOUT_WORDS[layout], {1} mm(SELVEDGE)
  'The cloth lies {0}; nothing is cut within {1} of a selvedge.': 'trade', // {0} LAYOUT_WORDS[layout], {1} mm(SELVEDGE)
  'The fold lies on the middle of a stripe or between two, so that stripes mirror about centre front and back: a quarter of a repeat of {0} is kept free for it.':
    'trade', // {0} mm(repeatAcross)
  'The hems lie on the same place of the check, so that checks meet up both inseams and at the centres from the hem: one repeat of {0} more is bought, so that you can choose where it begins.':
    'trade', // {0} mm(repeat)
  'The left and the right leg differ, so each is cut once: the cloth lies in a single layer, right side up, and every piece printed side up. Two layers would give mirrored pairs.':
    'trade',
  'The pieces are laid on their grain, all the same way up, as close as their cut lines let them; their height or their area alone would take {0}.':
    'trade', // {0} mm(lowerBound)
  'The pieces are laid on their grain, end for end where that is shorter, as close as their cut lines let them; their height or their area alone would take {0}.':
    'trade', // {0} mm(lowerBound)
  'The side lines of both legs lie on the same place of the stripe, so that stripes mirror about centre front and back: half a repeat of {0} is kept free for it.':
    'trade', // {0} mm(repeatAcross)
  'The {0} is {1} wide, and {2} only {3} can be cut. What would fit: {4}.': 'plain', // {0} pieceName(widest.piece), {1} mm(widest.width), {2} LAYOUT_WORDS[layout], {3} mm(room), {4} inTurn(instead, '; ')
  'Thread, all-purpose polyester': 'trade',
  'Try it round the body before it is sewn: it must not dig in.': 'trade',
  'Wash and dry it before it is cut; its shrinkage is counted in.': 'plain',
  'Woven cloth': 'trade',
  'ball point (jersey) or stretch, 80/12': 'trade',
  'both arrowheads {0} from {1}': 'plain', // {0} mm(upper), {1} from
  'both legs': 'plain',
  'folded crosswise': 'trade',
  'folded lengthwise': 'trade',
  'in a single layer': 'trade',
  'its middle on the fold': 'trade',
  'length = 2 × {0}{1} = {2}': 'plain', // {0} part(table.length), {1} rounding(lengthNeeded, { mm: table.length, times: 2 }), {2} part(lengthNeeded)
  'length = {0}': 'plain', // {0} mm(lengthNeeded)
  'none fits at {0}; {1}': 'plain', // {0} mm(answer.width), {1} answer.instead[0] ?? UNSAID
  one: 'plain',
  'printed side down': 'trade',
  'printed side up': 'plain',
  'scissors, pins, a safety pin, chalk, a tape measure, thread for tacking, an iron': 'trade',
  'the left selvedge': 'trade',
  'the right selvedge': 'trade',
  'the selvedges': 'trade',
  'the upper arrowhead {0} and the lower one {1} from {2}': 'plain', // {0} mm(upper), {1} mm(lower), {2} from
  'through both layers': 'trade',
  'to buy = {0}': 'plain', // {0} reckoned
  'twin needle for jersey, 4.0/80': 'trade',
  'universal or sharp, 80/12; 90/14 for heavy flannel': 'trade',
  'upper layer only': 'trade',
  'width that can be cut = {0} − {1}{2} = {3}': 'plain', // {0} part(table.width), {1} part(table.width - table.room), {2} rounding(table.room, table.width, table.room - table.width), {3} part(table.room)
  '{0} of this cloth is left over.': 'trade', // {0} share(Math.round(waste * 1000) / 1000)
  '{0} reel of {1} m': 'trade', // {0} number(1), {1} number(REEL / 1000)
  '{0} reels of {1} m': 'trade', // {0} number(reels), {1} number(REEL / 1000)
  '{0} squares of {1}': 'plain', // {0} number(openings), {1} mm(patch)
  '{0}, a cloth at least {1} wide': 'trade', // {0} LAYOUT_WORDS[layout], {1} mm(widthWanted)
  '{0}, {1} of this width': 'plain', // {0} LAYOUT_WORDS[lay.layout], {1} amount(lay.toBuy)
  '{0}, {1} wide, {2}': 'plain', // {0} amount(answer.lay.toBuy), {1} mm(answer.lay.width), {2} LAYOUT_WORDS[answer.lay.layout]
  '{0}: cut {1}': 'trade', // {0} amount(length + CUT_LOSS), {1} mm(length)
  '{0}: cut {1} × {2}': 'trade', // {0} amount(count * (length + CUT_LOSS)), {1} number(count), {2} mm(length)
  '{0}; to buy = {1} ÷ (1 − {2}){3} = {4}': 'plain', // {0} reckoned, {1} part(lies), {2} share(cloth.shrinkLength), {3} rounding(lay.toBuy, { mm: lies, times: 1 / (1 - shownShare(cloth.shrinkLength)) }), {4} part(lay.toBuy)
} as const;
