// Written by `npm run words`, save where each comes from.
export const workbenchAloud = {
  'Redone: {0}.': 'plain', // {0} own(next.label)
  'The station {0} is open.': 'ours: a station, a place of the work', // {0} STATION_NAMES[station]
  'Undone: {0}.': 'plain', // {0} own(last.label)
} as const;
