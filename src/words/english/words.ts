// Written by `npm run words`, save where each comes from.
export const words = {
  ' + rounding {0}': 'plain', // {0} by
  ' − rounding {0}': 'plain', // {0} by
  file: 'plain',
  'less than {0}': 'plain', // {0} own(formatLength(SHOWN_STEP[units], units))
  table: 'plain',
} as const;
