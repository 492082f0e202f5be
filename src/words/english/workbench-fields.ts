// Written by `npm run words`, save where each comes from.
export const workbenchFields = {
  Mind: 'plain',
  'as the body asks': 'plain',
  'by hand': 'plain',
  'est. {0}': 'plain', // {0} own(quantity.print(nearestStep(instead, quantity.step(units)), units))
} as const;
