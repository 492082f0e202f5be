// Written by `npm run words`, save where each comes from.
export const edges = {
  ', its edge overlocked or zigzagged': 'trade',
  ', with {0} turned under': 'trade', // {0} mm(hem.turnUnder)
  '2 × (cord {0} + {1} of room)': 'trade', // {0} part(waist.cordWidth), {1} part(CORD_ROOM)
  '2 × {0} rows × {1} + {2} for the turn + {3} × {4} between the rows': 'plain', // {0} number(waist.rows), {1} part(waist.elasticWidth), {2} part(waist.turnOfCloth), {3} number(waist.rows - 1), {4} part(BETWEEN_ROWS)
  'A band of knit, {0} high when folded, is sewn to the waist edge, stretched to it.': 'trade', // {0} mm(waist.bandHeight)
  'A cuff of rib, {0} high, is sewn to the leg, which ends that much higher; it stretches enough to be pulled on.':
    'trade', // {0} mm(hem.bandHeight)
  'A doubled band, {0} high, is sewn to the leg, which ends that much higher.': 'trade', // {0} mm(hem.bandHeight)
  'A facing of the leg’s own shape, {0} deep, is sewn to the hem and turned inside{1}.': 'trade', // {0} mm(hem.depth), {1} under
  'Beyond its fold a turning mirrors the leg on this side of it: turned over, it lies flat.': 'trade',
  'Cut the elastic {0} long: it holds, and it never is longer than the opening.': 'trade', // {0} mm(notions.elasticLength)
  'It folds halfway: 2 × {0}{1} = {2}.': 'trade', // {0} part(heights.fold), {1} rounding(height, { mm: heights.fold, times: 2 }), {2} part(height)
  'One notch in front and two behind where the crotch curve begins; single notches on the inseams at equal lengths from the crotch, so that they meet. The quarter of the waist lies halfway between the centre seams, apart from the side.':
    'trade',
  'The casing is a straight piece of its own, {0} high before it is folded, and about {1} long: the waist edge all round.':
    'trade', // {0} mm(heights.height), {1} mm(edge)
  'The casing is built {0} above the waist edge': 'trade', // {0} mm(heights.height)
  'The cord comes out {0} to each side of centre front, through the outer layer, reinforced; it is {1} long.': 'trade', // {0} mm(CORD_FROM_CENTRE), {1} mm(notions.cordLength)
  'The cut line runs parallel to the stitching line: {0} at the inseams, {1} at the crotch seam. At the crotch point both go on straight until they meet; at folds they mirror; raw edges have none.':
    'trade', // {0} mm(allowances.inseam), {1} mm(allowances.crotch)
  'The hem is a casing {0} deep with its opening at the side; its cord is {1} long.': 'trade', // {0} mm(hemPlan.depth), {1} mm(notions.hemCordLength ?? 0)
  'The hem is a casing {0} deep; cut its elastic {1} long.': 'trade', // {0} mm(hemPlan.depth), {1} mm(notions.hemElasticLength ?? 0)
  'The hem is turned up {0}{1}.': 'trade', // {0} mm(hem.depth), {1} under
  'The leg ends {0} above the waist edge; a facing of the leg’s own shape is sewn on there and turned inside, so that the casing lies flat at any lean.':
    'trade', // {0} mm(heights.fold)
  'The tip of the back fork is cut off along the grain, {0} inside the crotch point, and sewn on again before anything else: the legs lie closer on the cloth by that much. Both sides of the seam bear {1}; at its ends the tip’s allowance mirrors inseam and crotch edge, so that raw edges meet.':
    'trade', // {0} mm(choices.piecedTip), {1} mm(allowances.inseam)
  'as chosen': 'plain',
  'as chosen; never more than the opening': 'plain',
  'back crotch curve': 'trade',
  'back inseam': 'trade',
  bottom: 'plain',
  'casing, drawstring': 'trade',
  'casing, elastic': 'trade',
  'centre back': 'trade',
  'centre front': 'trade',
  'contrast band': 'trade',
  'cord {0} + {1} of room; its length: as chosen': 'trade', // {0} mm(hem.cordWidth), {1} mm(CORD_ROOM)
  'cord {0} + {1} of room; its length: the hem once round and two ends of {2} to tie': 'trade', // {0} mm(hem.cordWidth), {1} mm(CORD_ROOM), {2} mm(HEM_TIE)
  'crotch line': 'trade',
  cuff: 'trade',
  'cuff, of rib': 'trade',
  'cut {0} longer and {1} wider: not washed first': 'plain', // {0} own(percent(lengthwise)), {1} own(percent(crosswise))
  'elastic and drawstring': 'trade',
  'elastic {0} and room; the leg where it ends, {1} of room and {2} lap': 'trade', // {0} mm(hem.elasticWidth), {1} mm(LIMB_ROOM), {2} mm(ELASTIC_LAP)
  'ends meet at centre back': 'trade',
  'ends meet at the inseam': 'trade',
  faced: 'trade',
  'faced casing': 'trade',
  'fold-over casing, drawstring': 'trade',
  'fold-over casing, elastic': 'trade',
  'fork tip': 'trade: the fork is the part of trousers between the legs',
  'front crotch curve': 'trade',
  'front inseam': 'trade',
  'half of {0}': 'plain', // {0} elasticSum
  'hem band': 'trade',
  'hem cord': 'trade',
  'hem facing': 'trade',
  'here at most {0} would do.': 'plain', // {0} mm(most)
  hip: 'trade',
  'it must be {0} for none, or at least {1}.': 'plain', // {0} number(0), {1} mm(NARROWEST)
  'its turning of {0} is longer than this leg’s inseam; a longer leg or a narrower hem would do.': 'trade', // {0} mm(depth + beyond)
  'joined at centre back': 'trade',
  knee: 'trade',
  'knit band': 'trade',
  'left end': 'plain',
  'left leg': 'trade',
  'left side': 'plain',
  leg: 'trade',
  'lower edge': 'plain',
  'lower end of the tip’s seam': 'trade',
  'one for each hem': 'trade',
  'opening of the pocket': 'trade',
  outline: 'plain',
  pocket: 'trade',
  'rib cuff': 'trade',
  'right end': 'plain',
  'right leg': 'trade',
  'right side': 'plain',
  'seam of the fork’s tip': 'trade',
  'separate casing': 'trade',
  'side – no seam here': 'trade',
  'the larger of the leg where it ends + {0} and the fullest of foot and calf below ÷ (1 + {1} × {2})': 'plain', // {0} mm(LIMB_ROOM), {1} number(USABLE_STRETCH), {2} number(hem.ribStretch)
  'the larger of {0} × waist and fullest part ÷ (1 + {1} × {2})': 'trade', // {0} number(BAND_SHARE), {1} number(USABLE_STRETCH), {2} number(waist.bandStretch)
  'the larger of {0} × waist {1} and waist − {2}, + {3} lap; never more than the opening': 'trade', // {0} number(ELASTIC_SHARE), {1} mm(waistGirth), {2} mm(MOST_DRAWN_IN), {3} mm(ELASTIC_LAP)
  'the opening and two ends of {0} to tie': 'plain', // {0} mm(TIE)
  'the tip is cut off by a line along the grain that must run from the back crotch curve to the inseam, above the hem; {0}':
    'trade', // {0} advice
  'this half to the left leg': 'plain',
  'this leg has no room for one: set it to {0}.': 'plain', // {0} number(0)
  'this side up': 'plain',
  turned: 'trade',
  'turning at centre back': 'trade',
  'turning at centre front': 'trade',
  'turning at the back inseam': 'trade',
  'turning at the front inseam': 'trade',
  'upper edge': 'plain',
  'upper end of the tip’s seam': 'trade',
  waist: 'trade',
  'waist band': 'trade',
  'waist band, of knit': 'trade',
  'waist cord': 'trade',
  'waist facing': 'trade',
  '{0} left': 'plain', // {0} name
  '{0} more lie beyond the stitching, so that the edge turned under is caught.': 'trade', // {0} mm(heights.catch)
  '{0} more lie beyond the stitching, so that the overlocked or zigzagged edge is caught.': 'trade', // {0} mm(heights.catch)
  '{0} right': 'plain', // {0} name
  '{0} · cut {1}': 'trade', // {0} name, {1} number(cut)
  '{0} · cut {1}, mirrored': 'trade', // {0} name, {1} number(cut)
  '{0}, so that the cord runs with room. {1}': 'trade', // {0} built, {1} halfway
  '{0}: the elastic below, the cord in a channel of its own above it. {1}': 'trade', // {0} built, {1} halfway
  '{0}: twice the elastic and the turn of the cloth. {1}': 'trade', // {0} built, {1} halfway
} as const;
