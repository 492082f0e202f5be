// Written by `npm run words`, save where each comes from.
export const workbenchChalk = {
  'No measure differs.': 'plain',
  area: 'plain',
  'chalk line {0}': 'ours: a chalk line, an outline that is kept', // {0} number(next, 0)
  rise: 'trade',
} as const;
