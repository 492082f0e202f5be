// Written by `npm run words`, save where each comes from.
export const filesContent = {
  'All {0} checks are good.': 'ours: a verdict, good, doubtful or wrong', // {0} number(checks.length)
  'Casing, finished depth': 'trade',
  'Cloth to buy': 'trade',
  'Cloth: {0}, {1} wide, {2}.': 'trade', // {0} named, {1} mm(cloth.width), {2} wash
  'Cloth: {0}, {1} wide, {2}; for sleeping.': 'trade', // {0} named, {1} mm(cloth.width), {2} wash
  'Corrected for one printer: × {0} along the short side, × {1} along the long side.': 'plain', // {0} number(correctX, 4), {1} number(correctY, 4)
  'Cut line': 'trade',
  'Doubtful – {0}: {1}': 'plain', // {0} name, {1} told
  'Drawn at {0} of true size, allowances at full width: a sample, not for cutting out.': 'trade', // {0} size
  'Drawn at {0} of true size, allowances too: a sample, not for cutting out.': 'trade', // {0} size
  'Finished rise': 'trade',
  Folds: 'trade',
  Grainline: 'trade',
  Grid: 'plain',
  Hem: 'trade',
  'Hem, worn': 'trade',
  'Hem: {0}.': 'trade', // {0} hemTold(project)
  'Joins and sheet labels': 'plain',
  'Left and right, as worn: {0}.': 'plain', // {0} inTurn(told, ', ')
  'Leg: {0}, shape {1}, spread {2}, centre back {3}, centre front {4} (straightened as needed to pull on).': 'trade', // {0} lengthTold, {1} shapeTold, {2} spread, {3} back, {4} front
  'Leg: {0}, shape {1}, spread {2}, centre back {3}, centre front {4} (straightened by hand).': 'trade', // {0} lengthTold, {1} shapeTold, {2} spread, {3} back, {4} front
  'Levels and side': 'plain',
  Notches: 'trade',
  'Notes and test squares': 'plain',
  'Seam allowances are drawn in: {0}.': 'trade', // {0} drawnAllowances(project, finished)
  Stitching: 'trade',
  'Waist band, finished depth': 'trade',
  'Waist must open to at least': 'plain',
  'Waist opening': 'trade',
  'Waist: {0}.': 'plain', // {0} waistTold(project)
  Words: 'plain',
  'Wrong – {0}: {1}': 'ours: a verdict, good, doubtful or wrong', // {0} name, {1} told
  'a quarter': 'plain',
  'a third': 'plain',
  'arrow along the selvedge': 'trade',
  'as the block': 'trade',
  'band of knit, {0} high': 'trade', // {0} mm(waist.bandHeight)
  'band {0} high, doubled': 'trade', // {0} mm(hem.bandHeight)
  buttonhole: 'trade',
  'buttonhole for the cord': 'trade',
  'casing for a cord {0} wide, opening at the side': 'trade', // {0} mm(hem.cordWidth)
  'casing for elastic {0} wide': 'trade', // {0} mm(hem.elasticWidth)
  'casing – stitch here': 'trade',
  'channel – stitch here': 'trade',
  crotch: 'trade',
  'crotch and centres {0}': 'trade', // {0} mm(crotch)
  'cuff of rib, {0} high': 'trade', // {0} mm(hem.bandHeight)
  'cut here': 'plain',
  'edge overlocked': 'trade',
  'edge zigzagged': 'plain',
  'elastic {0} wide, 1 row': 'trade', // {0} wide
  'elastic {0} wide, {1} rows': 'trade', // {0} wide, {1} number(waist.rows)
  'faced casing for {0}; {1}': 'trade', // {0} elastic, {1} raw
  'faced, {0} deep, {1}': 'trade', // {0} mm(hem.depth), {1} under
  fold: 'trade',
  'fold here': 'trade',
  'fold – the pocket’s opening': 'trade',
  'fold-over casing for a cord {0} wide; {1}': 'trade', // {0} mm(waist.cordWidth), {1} raw
  'fold-over casing for {0}, and a cord {1} wide above it; {2}': 'trade', // {0} elastic, {1} mm(waist.cordWidth), {2} raw
  'fold-over casing for {0}, sewn to the raw edge': 'trade', // {0} elastic
  'fold-over casing for {0}, threaded; {1}': 'trade', // {0} elastic, {1} raw
  grain: 'trade',
  half: 'plain',
  'hem fold': 'trade',
  'hem fold – the finished hem': 'trade',
  'hem {0}': 'trade', // {0} mm(hem)
  'hem {0} round': 'trade', // {0} mm(shape.hemGirth)
  'hem – stitch here': 'trade',
  'hip line': 'trade',
  'inseam {0}': 'trade', // {0} mm(length.inseam)
  'knee line': 'trade',
  knit: 'trade',
  'lengthen or shorten here': 'plain',
  'main cloth, a knit': 'trade',
  'main cloth, woven': 'trade',
  'no seam allowances': 'trade',
  'none fits {0}': 'plain', // {0} width
  'none fits {0}; {1}': 'plain', // {0} width, {1} first
  'not washed first': 'trade',
  'pocket placement': 'trade',
  'printed {0}': 'plain', // {0} own(dated(date))
  'printer corrected × {0}, × {1}': 'plain', // {0} number(correctX, 4), {1} number(correctY, 4)
  pyjama: 'trade',
  quarter: 'trade',
  'quarter of the hem': 'trade',
  'raw edge overlocked': 'trade',
  'raw edge turned under': 'trade',
  'raw edge zigzagged': 'trade',
  'seam allowance included: {0}': 'trade', // {0} all(told)
  'seam allowances included: {0}': 'trade', // {0} all(told)
  'separate casing for {0}': 'trade', // {0} elastic
  'side, no seam': 'trade',
  stitch: 'trade',
  'stitch ({0})': 'trade', // {0} mm(allowance)
  straight: 'trade',
  'straight grain': 'trade',
  'straight grain, along the selvedge': 'trade',
  'turn under': 'plain',
  'turn under here': 'plain',
  'turned {0}, {1}': 'trade', // {0} mm(hem.depth), {1} under
  'waist edge': 'trade',
  'waist fold': 'trade',
  'waist fold – the finished top edge': 'trade',
  'waist {0}': 'plain', // {0} mm(waist)
  'washed before cutting': 'trade',
  woven: 'trade',
  '{0} (estimated)': 'plain', // {0} mm(estimate)
  '{0} ({1} mirrored)': 'plain', // {0} number(piece.cut), {1} number(piece.cut / 2)
  '{0} by {1}': 'plain', // {0} inside(fieldName(`sides.${side}.${key}`)), {1} mm(more)
  '{0} cord': 'trade', // {0} mm(waist.cordWidth)
  '{0} cord, hems': 'trade', // {0} mm(hem.cordWidth)
  '{0} elastic': 'trade', // {0} mm(waist.elasticWidth)
  '{0} elastic, hems': 'trade', // {0} mm(hem.elasticWidth)
  '{0} of true size, allowances too': 'trade', // {0} size
  '{0} of true size, full allowances': 'trade', // {0} size
  '{0} of {1}, {2}': 'plain', // {0} amount(toBuy), {1} mm(width), {2} LAYOUT_WORDS[layout]
  '{0} turned under': 'trade', // {0} mm(hem.turnUnder)
  '{0} years': 'plain', // {0} number(value, 1)
  '{0} – stitch ({1})': 'trade', // {0} edgeName(edge), {1} mm(allowance)
  '{0}, of the cloth': 'trade', // {0} pieceName(piece)
  '{0}, stretches {1} %': 'plain', // {0} kind, {1} number(cloth.stretch * 100, 0)
} as const;
