// Written by `npm run words`, save where each comes from.
export const filesFit = {
  'All checks are good.': 'ours: a verdict, good, doubtful or wrong',
  Body: 'trade',
  'Hem, over the foot': 'trade',
  'Inside leg and inseam': 'trade',
  'Legwork · fit sheet · {0}': 'trade: what a fitting is held against', // {0} own(project.name)
  'Measure again: {0}': 'plain', // {0} phrase
  'Rise, from the body’s waist': 'trade',
  Safety: 'plain',
  'Something is doubtful: see below.': 'plain',
  'Something is wrong: look before you cut.': 'ours: a verdict in words',
  'To buy': 'ours: to buy, the shopping list',
  'Your choices': 'plain',
  body: 'trade',
  'drawn in to': 'trade',
  finished: 'ours: finished, of the garment, beside the body',
  'must open to at least': 'plain',
  room: 'trade',
  rounding: 'plain',
  'the hem {0}': 'trade', // {0} hemEnds(draft)
  '{0} Not measured: estimated from what was measured.': 'plain', // {0} own(ESTIMATED)
  '{0}, left leg': 'plain', // {0} name
  '{0}, right leg': 'plain', // {0} name
  '{0}: fit sheet': 'trade', // {0} own(content.title)
} as const;
