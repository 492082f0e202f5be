// Written by `npm run words`, save where each comes from.
export const workbenchTable = {
  'Not your drawing yet.': 'plain',
  'Still to be measured: {0}.': 'plain', // {0} inRow(waiting)
  'The last good drawing.': 'plain',
  'go there': 'plain',
  '{0} has to be put right.': 'plain', // {0} fieldName(path)
} as const;
