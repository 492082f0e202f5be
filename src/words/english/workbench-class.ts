// Written by `npm run words`, save where each comes from.
export const workbenchClass = {
  '1 row': 'plain',
  '1 to look at.': 'plain',
  'A CSV file, as every spreadsheet saves it. The empty one says which measurements there are and where the tape goes. A row that can’t be drafted is named, and the rest is made.':
    'standard: CSV, RFC 4180',
  'A class from a table': 'plain',
  'Add a learner': 'plain',
  'All cells of the row': 'plain',
  'Bodies on one drawing': 'plain',
  'Cells of {0}': 'plain', // {0} own(name)
  'Choose a table': 'plain',
  'Choose another table': 'plain',
  'Each row of a table brings a body; cloth, leg, edges and paper are those of “{0}”.': 'trade', // {0} own(name)
  'Fit sheets': 'trade: what a fitting is held against',
  'Fix the marked fields first: every row is drafted with these choices.': 'plain',
  Handouts: 'plain',
  'How far the table is looked through': 'plain',
  'Include, besides the summary': 'plain',
  'Learner {0}': 'plain', // {0} number((looked?.members.length ?? 0) + 1, 0)
  'Look through “{0}”': 'plain', // {0} own(table.name)
  'Make the set, ZIP': 'standard: the ZIP format',
  Patterns: 'trade',
  'Put back {0}': 'plain', // {0} own(head)
  'Redone in the table.': 'plain',
  'Samples at a quarter': 'trade: small patterns, to show in class',
  'Save an empty table': 'plain',
  'Save the table, CSV': 'standard: CSV, RFC 4180',
  'Sewing guides': 'trade',
  'Table of bodies': 'trade',
  'The rows of the table': 'plain',
  'The table before it, “{0}”, is still here.': 'plain', // {0} own(table.name)
  'The table of a class': 'plain',
  'Type a table here': 'plain',
  'Undone in the table.': 'plain',
  'Which rows are shown': 'plain',
  'a folder for each of {0}, and the summary': 'plain', // {0} number(count, 0)
  'a page each: body, finished garment, what to buy': 'trade: what a fitting is held against',
  'all can be drafted': 'plain',
  'all of them, several to a page': 'plain',
  'all rows': 'plain',
  'cell {0}': 'plain', // {0} number(i + 1, 0)
  'class.csv': 'plain',
  'each on the paper chosen here': 'plain',
  'it is too large.': 'plain',
  'no row can be drafted yet': 'plain',
  'none to look at.': 'plain',
  'steps with pictures, for each': 'plain',
  'the table of a class': 'plain',
  'the working of each pattern, to read in class': 'ours: the working, the derivation that is shown',
  'those to look at': 'plain',
  'up to twelve of like size on each': 'plain',
  'was empty': 'plain',
  'was {0}': 'plain', // {0} own(first)
  '{0} can be drafted, {1} can’t': 'plain', // {0} number(made, 0), {1} number(rows - made, 0)
  '{0} to look at.': 'plain', // {0} number(look, 0)
  '“{0}” can’t be used as it stands:': 'plain', // {0} own(refused.name)
  '“{0}” has {1} MB; a table of bodies has at most {2} MB.': 'plain', // {0} own(name), {1} size, {2} most
  '“{0}” is drawn, too.': 'plain', // {0} own(file.name)
  '“{0}” isn’t a project that can be drawn: {1}': 'plain', // {0} own(file.name), {1} own(why)
} as const;
