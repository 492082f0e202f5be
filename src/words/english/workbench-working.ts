// Written by `npm run words`, save where each comes from.
export const workbenchWorking = {
  'Step by step, from the body on': 'plain',
  'There is no working to show at this station.': 'plain',
  'Working of {0}': 'plain', // {0} STATION_NAMES[station]
  'show the whole drawing': 'plain',
  '{0}: how?': 'plain', // {0} fieldName(path)
} as const;
