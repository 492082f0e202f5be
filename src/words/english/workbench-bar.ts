// Written by `npm run words`, save where each comes from.
export const workbenchBar = {
  Class: 'plain',
  'For the pattern itself press “Print the pattern” at Paper and print that PDF at 100 %.': 'standard: PDF, ISO 32000',
  Help: 'plain',
  'Name of the project': 'plain',
  New: 'plain',
  'Not to scale: cut nothing by this page.': 'plain',
  'Project file': 'plain',
  Projects: 'plain',
  'Save a file': 'plain',
  'Save as a file': 'plain',
  'The help': 'plain',
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
  '{0}: a summary': 'plain', // {0} own(name)
} as const;
