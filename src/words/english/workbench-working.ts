// Written by `npm run words`, save where each comes from.
export const workbenchWorking = {
  'Back to where you were': 'plain',
  'Back to {0}': 'plain', // {0} inside(fieldName(field))
  'Step by step, from the body on': 'plain',
  'There is no working to show at this station.': 'ours: a station, a place of the work',
  'Working of {0}': 'ours: the working, the derivation that is shown', // {0} STATION_NAMES[station]
  'show the whole drawing': 'plain',
} as const;
