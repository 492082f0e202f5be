// Written by `npm run words`, save where each comes from.
export const workbenchHints = {
  'Ask any number “how?”': 'ours: a hint, what to try first',
  'Drag a yellow button': 'ours: a yellow button, what is dragged on the drawing',
  'Drag it, or move it with the arrow keys: the leg is drafted anew at every step, and undo brings it back.': 'plain',
  'Follow the thread': 'ours: a hint, what to try first',
  'Got it': 'ours: a hint, what to try first',
  'Hint {0} of {1}': 'ours: a hint, what to try first', // {0} number(at + 1, 0), {1} number(HINT_COUNT, 0)
  'It answers with its formula, its values, and the lines that it drew. Working goes through all of them.':
    'ours: the working, the derivation that is shown',
  'Next hint': 'ours: a hint, what to try first',
  'This is a finished example. The stations go from the tape measure to the sewing; New begins a pair of your own.':
    'ours: a station, a place of the work',
  'no more hints': 'ours: a hint, what to try first',
} as const;
