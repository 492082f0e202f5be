// Written by `npm run words`, save where each comes from.
export const words = {
  file: 'plain',
  table: 'plain',
} as const;
