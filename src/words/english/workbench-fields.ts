// Written by `npm run words`, save where each comes from.
export const workbenchFields = {
  Doubtful: 'plain',
  'Keys that the pad of numbers lacks': 'plain',
  automatic: 'plain',
  'by hand': 'ours: by hand, a length that the maker types',
  'est. {0}': 'plain', // {0} own(quantity.print(nearestStep(instead, quantity.step(units)), units))
  'plus or minus': 'plain',
} as const;
