// Written by `npm run words`, save where each comes from.
export const workbenchBar = {
  Class: 'plain',
  'Name of the project': 'plain',
  New: 'plain',
  'Project file': 'plain',
  Projects: 'plain',
  'Save a file': 'plain',
  'Save as a file': 'plain',
  'The list of projects': 'plain',
  'The sheet for a class': 'plain',
  Unit: 'plain',
  cm: 'standard: SI, and the inch',
  dismiss: 'plain',
  inch: 'standard: SI, and the inch',
  redo: 'plain',
  'redo {0}': 'plain', // {0} inside(say`${own(forward)}`)
  undo: 'plain',
  'undo {0}': 'plain', // {0} inside(say`${own(back)}`)
} as const;
