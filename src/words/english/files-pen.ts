// Written by `npm run words`, save where each comes from.
export const filesPen = {
  'Cut line': 'trade',
  Folds: 'trade',
  'Joins and sheet labels': 'plain',
  'Levels and side': 'plain',
  'Notches and grain': 'trade',
  Stitching: 'trade',
  Words: 'plain',
} as const;
