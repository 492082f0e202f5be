// Written by `npm run words`, save where each comes from.
export const workbench = {
  'If nothing else helps, begin with the finished example: the project that is open now stays in the list of projects.':
    'plain',
  News: 'plain',
  'News of changed verdicts': 'ours: a verdict, good, doubtful or wrong',
  'Open the example': 'plain',
  'Show mode': 'ours: show mode, for a class',
  'The bar': 'plain',
  'The drawing': 'plain',
  'The example is open.': 'plain',
  'The hints': 'ours: a hint, what to try first',
  'The page': 'plain',
  'The sheets': 'plain',
  'The stations': 'ours: a station, a place of the work',
  'The working': 'ours: the working, the derivation that is shown',
  'What is finished': 'plain',
  'What was kept': 'plain',
} as const;
