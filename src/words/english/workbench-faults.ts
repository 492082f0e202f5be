// Written by `npm run words`, save where each comes from.
export const workbenchFaults = {
  'A newer Legwork is here.': 'ours: the name',
  'An error in Legwork': 'ours: the name',
  'Another project': 'plain',
  'Are you offline? Everything else works without a connection.': 'plain',
  'Below is the last that could be drawn.': 'plain',
  Close: 'plain',
  'Details of the error': 'plain',
  'Nothing is lost by it.': 'plain',
  'Reload the page': 'plain',
  'Save the project as a file': 'plain',
  'Try again': 'plain',
  'Undo {0}': 'plain', // {0} inside(say`${own(last)}`)
  'Use it now': 'plain',
  'Your project is not to blame, and nothing of it is lost.': 'plain',
  'save the details': 'plain',
  'use it now': 'plain',
  '{0} can’t be drawn because of an error in Legwork.': 'ours: the name', // {0} own(fault.what)
  '{0} can’t be loaded into the one that is open; your project goes along.': 'plain', // {0} own(fault.what)
  '{0} could not be loaded.': 'plain', // {0} own(fault.what)
} as const;
