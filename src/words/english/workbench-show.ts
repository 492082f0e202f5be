// Written by `npm run words`, save where each comes from.
export const workbenchShow = {
  Esc: 'plain',
  Keys: 'plain',
  'The step of the sewing': 'trade',
  chalkboard: 'ours: the chalkboard, light on dark for a class',
  leave: 'plain',
  next: 'plain',
  play: 'plain',
  playing: 'plain',
  space: 'plain',
  station: 'ours: a station, a place of the work',
  'the join': 'ours: the join, where the two blocks meet',
  unit: 'plain',
  'whole drawing': 'plain',
  'zoom, fit': 'plain',
  '{0} of {1}: {2}.': 'plain', // {0} number(steps.indexOf(step) + 1, 0), {1} number(steps.length, 0), {2} step.title
} as const;
