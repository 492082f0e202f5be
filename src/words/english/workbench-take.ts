// Written by `npm run words`, save where each comes from.
export const workbenchTake = {
  'How far the file has come': 'plain',
  Stop: 'plain',
  'about {0} min left': 'plain', // {0} number(minutes, 0)
  drafting: 'plain',
  'less than a minute left': 'plain',
  'making a file': 'plain',
  starting: 'plain',
} as const;
