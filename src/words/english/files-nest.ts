// Written by `npm run words`, save where each comes from.
export const filesNest = {
  'Common to all': 'plain',
  Key: 'plain',
  'Print at 100 %, no fit to page. Measure both squares before cutting.': 'plain',
  'What each line is': 'plain',
  'Which line is whose: on the first pages.': 'plain',
  'a nested drawing needs two projects or more': 'plain',
  'at most {0} bodies can be told apart on one drawing; these are {1}': 'plain', // {0} number(MOST_NESTED), {1} number(drafts.length)
  'dash, two dots': 'standard: ISO 128, line types',
  dashes: 'standard: ISO 128, line types',
  dots: 'standard: ISO 128, line types',
  'finished: hip {0}, inseam {1}, hem {2}': 'trade', // {0} mm(measures.hipGirthFinished), {1} own(measureTold(draft, 'inseamFront', l)), {2} own(measureTold(draft, 'hemGirthFinished', l))
  'inside leg': 'trade',
  'laying out the sheets': 'plain',
  'long dash, dot': 'standard: ISO 128, line types',
  'long dash, short dash': 'standard: ISO 128, line types',
  'long dash, three dots': 'standard: ISO 128, line types',
  'long dash, two short dashes': 'standard: ISO 128, line types',
  'one large sheet': 'plain',
  'sheet {0}': 'plain', // {0} own(sheet.label)
  'short dashes': 'standard: ISO 128, line types',
  solid: 'standard: ISO 128, line types',
  'two dashes, dot': 'standard: ISO 128, line types',
  'two dashes, two dots': 'standard: ISO 128, line types',
  'wide dashes': 'standard: ISO 128, line types',
  '{0} and {1} more': 'plain', // {0} own(project.name), {1} number(others.length)
  '{0} bodies on one drawing, one large sheet': 'plain', // {0} number(nest.length)
  '{0} bodies on one drawing, {1} sheets {2}': 'plain', // {0} number(nest.length), {1} number(plan.sheets.length), {2} paperName(plan.paper.name)
  '{0} bodies on one drawing. One unit is one millimetre.': 'plain', // {0} number(nest.length)
  '{0} bodies on one drawing: the legs lie with their side lines and crotch lines on each other; each body has a line type, a colour and a number of its own. Cut lines, folds and notches are drawn for every body; what else is in a piece stands in its own pattern.':
    'trade', // {0} number(nest.length)
  '{0}, {1} bodies': 'plain', // {0} own(project.name), {1} number(nest.length)
} as const;
