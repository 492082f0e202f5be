// Written by `npm run words`, save where each comes from.
export const workbenchTable = {
  'A figure from the front, the side and the back with the path of the tape': 'plain',
  'Casing and hem': 'trade',
  Done: 'plain',
  'Drawing at {0}. Arrow keys move it, plus and minus zoom, F fits it.': 'plain', // {0} STATION_NAMES[station]
  'From the blocks to the leg': 'trade',
  'Hem level: inseam': 'trade',
  'ISO 8559-1:2017, {0}': 'standard: ISO 8559-1, measurements of the body', // {0} own(measurement.iso)
  'ISO 8559-1:2017, {0} (from memory)': 'standard: ISO 8559-1, measurements of the body', // {0} own(measurement.iso)
  'Leg width at the hem': 'trade',
  'Not your drawing yet.': 'plain',
  'Play the join': 'ours: the join, where the two blocks meet',
  'Still to be measured: {0}.': 'plain', // {0} inRow(waiting)
  'Straighten: lean of centre back': 'trade',
  Table: 'ours: the table, where the drawing lies',
  'The cloth as it lies, with its selvedges, and every piece where it is cut': 'trade',
  'The drawing of the blocks': 'trade',
  'The drawing of the join': 'ours: the join, where the two blocks meet',
  'The drawing of the leg': 'plain',
  'The drawing of the sheets': 'plain',
  'The figure': 'plain',
  'The finished leg as it was checked': 'trade',
  'The finished leg with casing, hem and seam allowances': 'trade',
  'The front block and the back block, side by side': 'trade',
  'The join': 'ours: the join, where the two blocks meet',
  'The joined blocks under the outline of the leg': 'trade',
  'The last good drawing.': 'plain',
  'The lines of a step': 'plain',
  'The pictures of the sewing': 'trade',
  'The player of the join': 'ours: the join, where the two blocks meet',
  'The sheets of paper over the finished leg': 'plain',
  'The two blocks on their way to a leg': 'trade',
  'The yellow buttons': 'ours: a yellow button, what is dragged on the drawing',
  'Waist height': 'trade',
  Working: 'ours: the working, the derivation that is shown',
  apart: 'ours: the join, where the two blocks meet',
  'as they were brought': 'plain',
  'before the corrections': 'plain',
  'casing {0}, folded over': 'trade', // {0} mm(height)
  'casing {0}, laid flat': 'trade', // {0} mm(height)
  'dashed: the left leg': 'ours: what a line of the picture means',
  'folded crosswise, right sides together': 'trade',
  'folded over': 'trade',
  'for {0}': 'plain', // {0} all([ ...(notions.elasticLength === undefined ? [] : [elastic]), ...(notions.cordLength === undefined ? [] : [cord]), ])
  'fullest hip': 'trade',
  'gap {0} at the knee': 'trade', // {0} mm(measures.gapAtKnee)
  'gap {0} at the waist': 'trade', // {0} mm(measures.gapAtWaist)
  'go there': 'plain',
  'head to foot': 'trade',
  'hem casing, folded over': 'trade',
  'hem casing, laid flat': 'trade',
  'hem {0}, folded over': 'trade', // {0} mm(hem.depth)
  'hem {0}, laid flat': 'trade', // {0} mm(hem.depth)
  joined: 'ours: the join, where the two blocks meet',
  'laid flat': 'trade',
  'no further: it can’t be drawn': 'plain',
  'on the way to {0}': 'plain', // {0} STOPS[Math.ceil(join)]?.name ?? name
  'one layer, right side up': 'trade',
  'rise {0}': 'trade', // {0} own(formatLength(measures.crotchDepthFinished, units))
  'side, no seam here': 'trade',
  sitting: 'plain',
  spread: 'trade',
  'spread {0}': 'trade', // {0} own(formatLength(measures.spread, units))
  straightened: 'trade',
  'the foot needs {0}': 'plain', // {0} own(formatLength(body.footEntryGirth, units))
  'the leg': 'plain',
  'the opening is {0}': 'plain', // {0} own(formatLength(measures.waistOpening, units))
  'the pair grows by 2 × {0}{1} = {2}': 'plain', // {0} part(measures.spread), {1} rounding(2 * measures.spread, { mm: measures.spread, times: 2 }), {2} part(2 * measures.spread)
  'the waist lowered by {0}': 'plain', // {0} by
  'the waist raised by {0}': 'plain', // {0} by
  'the waist where the block has it': 'trade',
  '{0} after the wash': 'trade', // {0} mm(width)
  '{0} below the front’s': 'plain', // {0} mm(backCrotchDrop)
  '{0} can be cut': 'plain', // {0} mm(answer.room)
  '{0} has to be corrected.': 'plain', // {0} fieldName(path)
  '{0}, {1} wide: does not fit': 'plain', // {0} pieceName(piece), {1} mm(width)
  '{0}: touching': 'plain', // {0} GAP_NAMES[gap.name]
  '{0}; {1} wide, {2} high': 'plain', // {0} RESULTS[station](draft), {1} mm(right - left), {2} mm(bottom - top)
} as const;
