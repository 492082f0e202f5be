// Written by `npm run words`, save where each comes from.
export const workbenchTable = {
  'A figure from the front, the side and the back with the path of the tape': 'plain',
  'Casing and hem': 'plain',
  Done: 'plain',
  'Drawing at {0}. Arrow keys move it, plus and minus zoom, F fits it.': 'plain', // {0} STATION_NAMES[station]
  'From the blocks to the leg': 'plain',
  'Hem level: inseam': 'plain',
  'ISO 8559-1:2017, {0}': 'plain', // {0} own(measurement.iso)
  'ISO 8559-1:2017, {0} (from memory)': 'plain', // {0} own(measurement.iso)
  'Leg width at the hem': 'plain',
  'Not your drawing yet.': 'plain',
  Pause: 'plain',
  Play: 'plain',
  'Play the join': 'plain',
  'Still to be measured: {0}.': 'plain', // {0} inRow(waiting)
  'Straighten: lean of centre back': 'plain',
  Table: 'plain',
  'The chalk lines': 'plain',
  'The cloth as it lies, with its selvedges, and every piece where it is cut': 'plain',
  'The drawing of the blocks': 'plain',
  'The drawing of the join': 'plain',
  'The drawing of the leg': 'plain',
  'The drawing of the sheets': 'plain',
  'The figure': 'plain',
  'The finished leg as it was checked': 'plain',
  'The finished leg with casing, hem and seam allowances': 'plain',
  'The front block and the back block, side by side': 'plain',
  'The join': 'plain',
  'The joined blocks under the outline of the leg': 'plain',
  'The last good drawing.': 'plain',
  'The lines of a step': 'plain',
  'The pictures of the sewing': 'plain',
  'The player of the join': 'plain',
  'The sheets of paper over the finished leg': 'plain',
  'The two blocks on their way to a leg': 'plain',
  'The yellow buttons': 'plain',
  'Waist height': 'plain',
  Working: 'plain',
  apart: 'plain',
  'before the corrections': 'plain',
  'casing {0}, folded over': 'plain', // {0} mm(height)
  'casing {0}, laid flat': 'plain', // {0} mm(height)
  'dashed: the left leg': 'plain',
  'folded crosswise, right sides together': 'plain',
  'folded lengthwise, right sides together': 'plain',
  'folded over': 'plain',
  'for {0}': 'plain', // {0} all([ ...(notions.elasticLength === undefined ? [] : [elastic]), ...(notions.cordLength === undefined ? [] : [cord]), ])
  'fullest hip': 'plain',
  'gap {0} at the knee': 'plain', // {0} mm(measures.gapAtKnee)
  'gap {0} at the waist': 'plain', // {0} mm(measures.gapAtWaist)
  'go there': 'plain',
  'head to foot': 'plain',
  'hem casing, folded over': 'plain',
  'hem casing, laid flat': 'plain',
  'hem {0}, folded over': 'plain', // {0} mm(hem.depth)
  'hem {0}, laid flat': 'plain', // {0} mm(hem.depth)
  joined: 'plain',
  'laid flat': 'plain',
  'no further: it can’t be drawn': 'plain',
  'on the way to {0}': 'plain', // {0} STOPS[Math.ceil(join)]?.name ?? name
  'one layer, right side up': 'plain',
  'printed side down': 'plain',
  'rise {0}': 'plain', // {0} own(handleLength(measures.crotchDepthFinished, units))
  'side, no seam here': 'plain',
  sitting: 'plain',
  spread: 'plain',
  'spread {0}': 'plain', // {0} own(handleLength(measures.spread, units))
  straightened: 'plain',
  'the foot needs {0}': 'plain', // {0} own(handleLength(body.footEntryGirth, units))
  'the leg': 'plain',
  'the opening is {0}': 'plain', // {0} own(handleLength(measures.waistOpening, units))
  'the pair grows by {0}': 'plain', // {0} own(handleLength(2 * measures.spread, units))
  'the waist lowered by {0}': 'plain', // {0} by
  'the waist raised by {0}': 'plain', // {0} by
  'the waist where the block has it': 'plain',
  '{0} after the wash': 'plain', // {0} mm(width)
  '{0} below the front’s': 'plain', // {0} mm(backCrotchDrop)
  '{0} can be cut': 'plain', // {0} mm(answer.room)
  '{0} has to be put right.': 'plain', // {0} fieldName(path)
  '{0}, {1} wide: does not fit': 'plain', // {0} pieceName(piece), {1} mm(width)
  '{0}: touching': 'plain', // {0} GAP_NAMES[gap.name]
  '{0}; {1} wide, {2} high': 'plain', // {0} RESULTS[station](draft), {1} mm(right - left), {2} mm(bottom - top)
} as const;
