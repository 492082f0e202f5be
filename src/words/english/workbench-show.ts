// Written by `npm run words`, save where each comes from.
export const workbenchShow = {
  Esc: 'plain',
  Keys: 'plain',
  'The step of the sewing': 'plain',
  chalkboard: 'plain',
  leave: 'plain',
  next: 'plain',
  play: 'plain',
  playing: 'plain',
  space: 'plain',
  station: 'plain',
  'the join': 'plain',
  unit: 'plain',
  'whole drawing': 'plain',
  'zoom, fit': 'plain',
  '{0} of {1}: {2}.': 'plain', // {0} number(steps.indexOf(step) + 1, 0), {1} number(steps.length, 0), {2} step.title
} as const;
