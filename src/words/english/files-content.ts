// Written by `npm run words`, save where each comes from.
export const filesContent = {
  '{0}, of the cloth': 'plain', // {0} pieceName(piece)
} as const;
