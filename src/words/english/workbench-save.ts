// Written by `npm run words`, save where each comes from.
export const workbenchSave = {
  'A part of Legwork could not be fetched: is there a network? Nothing here was changed; try again, or load the page again.':
    'ours: the name',
  'Nothing here was changed.': 'plain',
  'Saved as “{0}” with the last values that can be drawn.': 'plain', // {0} own(fileName)
  'Saved as “{0}”.': 'plain', // {0} own(fileName)
  'Something went wrong inside Legwork while {0}: that is its fault, not yours. {1}': 'ours: the name', // {0} doing, {1} goesOn
  'What you see goes on; if it behaves oddly, load the page again.': 'plain',
  'it was at work': 'plain',
  'save this project as a file': 'plain',
  'save what went wrong, to send it to us': 'plain',
  'the same with this project in it': 'plain',
} as const;
