// Written by `npm run words`, save where each comes from.
export const workbenchLook = {
  Chalkboard: 'plain',
  Show: 'plain',
  close: 'plain',
} as const;
