// Written by `npm run words`, save where each comes from.
export const workbenchBar = {
  'Name of the project': 'plain',
  'Project file': 'plain',
  Projects: 'plain',
  Save: 'plain',
  'Start with my measurements': 'plain',
  'The list of projects': 'plain',
  Unit: 'plain',
  cm: 'standard: SI, and the inch',
  inch: 'standard: SI, and the inch',
  'my measurements': 'plain',
  'put away': 'plain',
  redo: 'plain',
  'redo {0}': 'plain', // {0} inside(say`${own(forward)}`)
  undo: 'plain',
  'undo {0}': 'plain', // {0} inside(say`${own(back)}`)
} as const;
