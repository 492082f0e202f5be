// Written by `npm run words`, save where each comes from.
export const workbenchOpen = {
  'Leave it': 'plain',
  'Let go to bring the blocks of this drawing to the station Blocks.': 'ours: a station, a place of the work',
  'Let go to mark the blocks in this photograph, for the station Blocks.': 'ours: a station, a place of the work',
  'Let go to open it: a project, a drawing or a photograph of blocks, or the table of a class.': 'trade',
  'Let go to open the class with this table.': 'plain',
  'Let go to open the project; the one on the table is kept, and listed under Projects.': 'plain',
  'Open with these repairs': 'plain',
  'The blocks of “{0}” are on the table.': 'trade', // {0} own(file.name)
  'The file ends in the middle: what came after is missing.': 'plain',
  'The list of repairs': 'plain',
  'The reader of drawings': 'plain',
  'This file needs repair': 'plain',
  'Was empty': 'plain',
  'Was {0}': 'plain', // {0} shown(problem.value, say`a group`)
  'a group': 'plain',
  'a list': 'plain',
  'can’t be read.': 'plain',
  'could not be opened because of an error in Legwork: please report it.': 'ours: the name',
  'has fewer than two closed outlines: draw a front and a back, each as a line that comes back to where it began.':
    'plain',
  'opening a file': 'plain',
  'takes longer to read than {0} seconds, far more than a drawing of blocks.': 'trade', // {0} number(PATIENCE / 1000, 0)
  'the usual choice': 'plain',
  '{0}; it is left out, or still to be measured.': 'plain', // {0} was
  '{0}; {1} is used.': 'plain', // {0} was, {1} shown(now, say`the usual choice`)
  '“{0}” can’t be opened as it stands. Everything else in it is kept.': 'plain', // {0} own(fileName)
  '“{0}” is open, with {1} repaired; the file itself is as it was.': 'plain', // {0} own(fileName), {1} number(salvaged.repairs.length, 0)
  '“{0}” {1} Nothing here was changed.': 'plain', // {0} own(file.name), {1} reason
} as const;
