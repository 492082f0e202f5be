// Written by `npm run words`, save where each comes from.
export const filesClass = {
  '1 pattern made': 'trade',
  '1 to look at': 'plain',
  Cloth: 'trade',
  'Cloth {0} wide': 'trade', // {0} mm(width)
  'Columns not used: {0}.': 'plain', // {0} own(unused.join(', '))
  'Doubtful: {0}.': 'plain', // {0} own(doubtful.join(', '))
  'For all together': 'plain',
  'Hem cord': 'trade',
  'Hem elastic': 'trade',
  'Hip, finished': 'trade',
  Inseam: 'trade',
  'Left out, because it belongs to one body: {0}.': 'plain', // {0} own(leftOut.join(', '))
  'Legwork · class summary · {0} rows · lengths in cm': 'ours: the name', // {0} rows
  'Legwork · class summary · {0} rows · lengths in inches': 'ours: the name', // {0} rows
  'Look at': 'plain',
  Name: 'plain',
  'No column of that name was found; not known are {0} and {1} more.': 'plain', // {0} shown, {1} number(more)
  'No column of that name was found; not known are {0}.': 'plain', // {0} shown
  'No {0} of the chosen width is wide enough.': 'plain', // {0} inside(NEED_NAMES[kind])
  'Not made, {0}: {1}': 'plain', // {0} own(kind), {1} inTurn(error.problems.map(({ phrase }) => phrase))
  'Paper: 1 sheet': 'plain',
  'Paper: {0} sheets': 'plain', // {0} number(sheets)
  Row: 'plain',
  'Row {0}': 'plain', // {0} number(row)
  Sheets: 'plain',
  Verdict: 'ours: a verdict, good, doubtful or wrong',
  'Waist cord': 'trade',
  'Waist elastic': 'trade',
  Wide: 'trade: of cloth, from selvedge to selvedge',
  'a quotation mark is opened in row {0} and never closed, so all that follows is one cell.': 'plain', // {0} number(row, 0)
  'a typed length of elastic': 'trade',
  'and {0} more, marked {1} below': 'plain', // {0} number(look.length - MOST_NAMED), {1} own(LOOK_SIGN)
  'are columns for the same thing; only one of them may stay.': 'plain',
  'blocks that were brought along fit one body only; choose drafted blocks, to draft a class.': 'trade',
  centimetres: 'standard: SI, and the inch',
  'column {0}': 'plain', // {0} own(nameOf(kind))
  'corrections after wearing': 'plain',
  'empty: as the project': 'plain',
  estimated: 'plain',
  example: 'plain',
  'has a row of more than {0} cells; a table of bodies has a column for each measurement.': 'plain', // {0} number(MOST_CELLS, 0)
  'has more than {0} lines: divide it.': 'plain', // {0} number(MOST_LINES, 0)
  'has {0} MB; a table of bodies has at most {1} MB.': 'plain', // {0} number(bytes.length / 1e6, 1), {1} number(LARGEST_TABLE / 1e6, 0)
  'has {0} cells below {1} names of columns; a decimal comma must stand in quotation marks, or the cells must be separated by semicolons.':
    'plain', // {0} number(cells.length, 0), {1} number(heads.length, 0)
  'has {0} rows; at most {1} are made at once: divide it.': 'plain', // {0} number(bodies.length, 0), {1} number(MOST_ROWS, 0)
  'holds no body: each body stands in a row of its own below the names of the columns.': 'plain',
  inches: 'standard: SI, and the inch',
  'isn’t a length; write a number such as {0}.': 'plain', // {0} own(sample)
  'isn’t a measurement.': 'plain',
  'may stay empty': 'plain',
  millimetres: 'standard: SI, and the inch',
  'must be a number of years between {0} and {1}.': 'plain', // {0} number(lowest), {1} number(highest)
  'must be yes or no.': 'plain',
  'must be {0}, or the finished inseam as a length.': 'trade', // {0} inTurn(Object.values(LENGTH_NAMES), ', ')
  needed: 'plain',
  'needed, or {0}': 'plain', // {0} inside(measurementName(inPlace))
  'needed?': 'plain',
  'no row names the columns: one row must say Name, Waist, Hip, Body rise, Inside leg …, and each body follows in a row of its own.':
    'trade',
  'none fits': 'plain',
  'none to look at': 'plain',
  'not made': 'plain',
  'on one drawing': 'plain',
  'row {0}': 'plain', // {0} number(row)
  'samples at a quarter': 'plain',
  'the measurements stand below one another; turn the table, so that each body is one row.': 'plain',
  'the summary': 'plain',
  'was read as {0}; {1}.': 'plain', // {0} mm(read.value), {1} limits
  'was read as {0}; {1}. In {2} it would do: write the unit into the head or the cell.': 'plain', // {0} mm(read.value), {1} limits, {2} UNIT_NAMES[other]
  what: 'plain',
  'what left and right differ by': 'plain',
  'where the tape goes': 'plain',
  'yes where one is worn': 'plain',
  '{0} (row {1})': 'plain', // {0} own(name), {1} number(row)
  '{0} (row {1}, not made)': 'plain', // {0} own(name), {1} number(row)
  '{0} Look at these before cutting': 'plain', // {0} own(LOOK_SIGN)
  '{0} cells': 'plain', // {0} number(cells.length, 0)
  '{0} must lie between {1} and {2}': 'plain', // {0} name, {1} mm(lowest), {2} mm(highest)
  '{0} not made': 'plain', // {0} number(unmade)
  '{0} patterns made': 'trade', // {0} number(made.length)
  '{0} rows': 'plain', // {0} number(bodies.length, 0)
  '{0} to look at': 'plain', // {0} number(look.length)
  '{0}, {1} wide': 'plain', // {0} NEED_NAMES[kind], {1} mm(width)
  '{0}: class summary': 'plain', // {0} own(content.title)
  '{0}: {1} for 1 learner': 'plain', // {0} whole, {1} amount(length)
  '{0}: {1} for {2} learners': 'plain', // {0} whole, {1} amount(length), {2} number(learners)
  '{0}; empty: as the project': 'plain', // {0} inTurn(Object.values(LENGTH_NAMES), ', ')
} as const;
