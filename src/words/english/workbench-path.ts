// Written by `npm run words`, save where each comes from.
export const workbenchPath = {
  Stations: 'plain',
  'The blocks': 'plain',
  'The cloth': 'plain',
  'The measurements': 'plain',
  'The paper': 'plain',
  'The sewing': 'plain',
  'The station {0}': 'plain', // {0} STATION_NAMES[station]
  'What the station {0} came to': 'plain', // {0} STATION_NAMES[station]
  'What was checked': 'plain',
  'something is wrong': 'plain',
  'still to be measured': 'plain',
  'wants a look': 'plain',
} as const;
