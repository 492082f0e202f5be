// Written by `npm run words`, save where each comes from.
export const workbenchPath = {
  'Next: {0}': 'plain', // {0} STATION_NAMES[next]
  'Result of the station {0}': 'ours: a station, a place of the work', // {0} STATION_NAMES[station]
  Stations: 'ours: a station, a place of the work',
  'The blocks': 'trade',
  'The cloth': 'trade',
  'The edges': 'plain',
  'The measurements': 'plain',
  'The paper': 'plain',
  'The sewing': 'trade',
  'The station {0}': 'ours: a station, a place of the work', // {0} STATION_NAMES[station]
  'What was checked': 'plain',
  'something is doubtful': 'plain',
  'something is wrong': 'ours: a verdict, good, doubtful or wrong',
  'still to be measured': 'plain',
} as const;
