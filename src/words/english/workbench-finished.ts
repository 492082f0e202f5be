// Written by `npm run words`, save where each comes from.
export const workbenchFinished = {
  '; on the left {0}': 'plain', // {0} mm(left.measures[key])
  'body {0} + {1}': 'plain', // {0} mm(body), {1} mm(more)
  'body {0} − {1}': 'plain', // {0} mm(body), {1} mm(-more)
  'foot {0}{1}': 'plain', // {0} mm(body.footEntryGirth), {1} other('hemGirthFinished')
  'hangs {0} below the body': 'plain', // {0} mm(below)
  'just passes': 'plain',
  'leg {0}{1}': 'plain', // {0} mm(body.insideLeg), {1} other('inseamFront')
  'not measured': 'plain',
  'passes by {0}': 'plain', // {0} mm(spare)
  'to cut, for one row': 'plain',
  'too small by {0}': 'plain', // {0} mm(-spare)
  '{0} above the body’s crotch': 'plain', // {0} mm(-below)
} as const;
