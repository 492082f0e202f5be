// Written by `npm run words`, save where each comes from.
export const workbenchWorking = {
  'Step by step, from the body on': 'plain',
  'There is no working to show at this station.': 'ours: a station, a place of the work',
  'Working of {0}': 'ours: the working, the derivation that is shown', // {0} STATION_NAMES[station]
  'show the whole drawing': 'plain',
  '{0}: how?': 'ours: how?, the working of a number', // {0} fieldName(path)
} as const;
