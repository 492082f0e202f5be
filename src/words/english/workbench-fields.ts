// Written by `npm run words`, save where each comes from.
export const workbenchFields = {
  Doubtful: 'plain',
  'Keys that the pad of numbers lacks': 'plain',
  'as the body asks': 'ours: as the body asks, an estimate from what was measured',
  'by hand': 'ours: by hand, a length that the maker types',
  'est. {0}': 'plain', // {0} own(quantity.print(nearestStep(instead, quantity.step(units)), units))
  'plus or minus': 'plain',
} as const;
