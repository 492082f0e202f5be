// Written by `npm run words`, save where each comes from.
export const sheets = {
  'Corrected for one projector: × {0} across, × {1} down': 'plain', // {0} number(across, 4), {1} number(down, 4)
  'Roll {0} in': 'standard: SI, and the inch', // {0} number(Number(width))
  'The corner A is off the square by {0}. More than {1} is rarely the projector: see that it looks straight down, and measure again.':
    'plain', // {0} degrees(Math.abs(skew)), {1} degrees(MIND_SKEW)
  'The four lengths contradict each other by {0}: one was misread, or the picture is wider at one end. Compare A to B with D to C; where they differ, set the projector square to the table and measure again.':
    'plain', // {0} mm(misfit)
  'The printer is corrected by {0} % along the {1} side of its paper. More than {2} % is rarely the printer: see that it prints at 100 %, without fitting to the page, and measure the test page again.':
    'plain', // {0} number(100 * (by - 1), 1), {1} side, {2} number(100 * MIND_BEYOND)
  'The projector is off by {0} %. Move it or set its zoom until less than {1} % is left, and measure again: a small correction keeps the picture sharp.':
    'plain', // {0} number(100 * most, 1), {1} number(100 * MIND_BEYOND)
  'The test page showed a margin of {0}: what lies nearer to the edge is not printed.': 'plain', // {0} mm(printerMargin)
  'a printer’s correction must be between {0} and {1}; beyond that it is fitting to the page: switch that off and measure again':
    'plain', // {0} number(1 - WIDEST_CORRECTION), {1} number(1 + WIDEST_CORRECTION)
  'a sheet’s side must be between {0} and {1}, which is the longest that a PDF page can be': 'standard: PDF, ISO 32000', // {0} mm(SMALLEST_PAGE), {1} mm(LARGEST_PAGE)
  'at most {0} on {1} with this margin': 'plain', // {0} mm(Math.max(0, room)), {1} own(size.name)
  'front inseam, along its stitching line': 'trade',
  long: 'plain',
  'must be auto, portrait or landscape': 'plain',
  'not a known paper size; choose one of {0}': 'plain', // {0} own(names)
  'not negative': 'plain',
  'own size': 'plain',
  'the margin must be between {0} and {1}': 'plain', // {0} mm(0), {1} mm(WIDEST_MARGIN)
  'the overlap must be {0}': 'plain', // {0} limit
  'the scale must be between {0} and 1 (true size)': 'plain', // {0} number(LEAST_SCALE)
  'these diagonals can’t belong to these sides: one of the four lengths is off by {0} or more, or the picture is wider at one end; set the projector square to the table and measure all four again.':
    'plain', // {0} mm(misfit)
  'with this diagonal the corner A would be {0} off the square, more than a projector slants its picture: measure both sides and the diagonals again.':
    'plain', // {0} degrees(Math.abs(skew))
  '{0}, {1} off the square.': 'plain', // {0} factors, {1} degrees(Math.abs(skew))
  '{0}, {1} off the square; the four lengths miss each other by {2}.': 'plain', // {0} factors, {1} degrees(Math.abs(skew)), {2} mm(misfit)
} as const;
