// Written by `npm run words`, save where each comes from.
export const workbenchLook = {
  Chalkboard: 'ours: the chalkboard, light on dark for a class',
  Show: 'ours: show mode, for a class',
  close: 'plain',
} as const;
