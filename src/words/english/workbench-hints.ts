// Written by `npm run words`, save where each comes from.
export const workbenchHints = {
  'Ask any number “how?”': 'plain',
  'Draw it, or move it with the arrow keys: the leg is drafted anew at every step, and undo brings it back.': 'plain',
  'Follow the thread': 'plain',
  'Got it': 'plain',
  'Hint {0} of {1}': 'plain', // {0} number(at + 1, 0), {1} number(HINT_COUNT, 0)
  'It answers with its formula, its values, and the lines that it drew. Working goes through all of them.': 'plain',
  'Next hint': 'plain',
  'Take hold of a yellow button': 'plain',
  'This is a finished example. The stations go from the tape measure to the sewing; start with your own measurements when you like.':
    'plain',
  'no more hints': 'plain',
} as const;
