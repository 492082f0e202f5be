// Written by `npm run words`, save where each comes from.
export const workbenchOpen = {
  'takes longer to read than {0} seconds, far more than a drawing of blocks.': 'plain', // {0} number(PATIENCE / 1000, 0)
} as const;
