// Written by `npm run words`, save where each comes from.
export const workbench = {
  'If nothing else helps, begin with the finished example: the project that is open now stays in the list of projects.':
    'plain',
  News: 'plain',
  'Open the example': 'plain',
  'Show mode': 'plain',
  'The bar': 'plain',
  'The drawing': 'plain',
  'The example is open.': 'plain',
  'The hints': 'plain',
  'The page': 'plain',
  'The stations': 'plain',
  'The working': 'plain',
  'What is finished': 'plain',
  'What was kept': 'plain',
  'Word of changed verdicts': 'plain',
  'opening the example': 'plain',
} as const;
