// Written by `npm run words`, save where each comes from.
export const command = {
  BLOCKS: 'trade',
  BODIES: 'plain',
  DIR: 'plain',
  'Drafts a lounge pant from a project file and writes its pattern.': 'plain',
  'Exit codes: 0 written, 1 written but a check says wrong ({0}), 2 refused and nothing written;\n129, 130 or 143 where it was stopped ({1}), and nothing written. All files are written or\nnone: where that fails, those of the same names stay as they were.':
    'plain', // {0} strict, {1} own('HUP, INT, TERM')
  PROJECT: 'plain',
  'a file of that name may only be read': 'plain',
  'a project file, or - to read it from standard input; several may be named': 'plain',
  'a table of bodies, one a row, each drafted with the project’s choices: a folder for each\nwith the files asked for ({0} where that is left out) and a\nsummary, in one ZIP; a row that can’t be drafted is told, and the rest is made':
    'standard: the ZIP format', // {0} own(CLASS_KINDS.join(','))
  'an SVG or DXF drawing of your own front and back block, to be used instead of drafting\nthem: each edge a line by its name, as {0} writes it, or just two closed\noutlines, each with its grainline, whose shapes tell the rest':
    'standard: SVG, W3C', // {0} own('--files blocks')
  'british (trousers, overlocker), american (pants, serger) or canadian; otherwise as is said\nwhere your system says that you live':
    'trade',
  'can’t be read: {0}.': 'plain', // {0} reason
  'can’t be written to: there is a file of that name; name a folder.': 'plain',
  'can’t be written to: {0}; nothing was changed.': 'plain', // {0} reason
  'drafting {0} of {1}': 'plain', // {0} number(i + 1), {1} number(projects.length)
  'exit with 1 if a check says wrong, or a row of a class can’t be drafted; the files are\nwritten all the same':
    'plain',
  'has letters that are not UTF-8, or is cut off within one; save it as UTF-8.': 'standard: UTF-8, RFC 3629',
  'is a folder, not a file.': 'plain',
  'is empty.': 'plain',
  'is larger than the {0} MB that a file may have.': 'plain', // {0} number(LARGEST_FILE / 1e6, 0)
  'isn’t a plain file; name one, or give a project through - instead.': 'plain',
  'it is a folder, not a file': 'plain',
  'it is in use': 'plain',
  'it is not there any more': 'plain',
  'it is one of the files that were read; choose another folder': 'plain',
  'it is there already, and may have been filled in; choose another folder': 'plain',
  'its links lead round in a circle': 'plain',
  'name one or more of {0}': 'plain', // {0} KINDS
  'name the drawing of the blocks': 'trade',
  'name the folder to write to': 'plain',
  'name the table of bodies': 'plain',
  'name whose words to use': 'plain',
  'program: an error in Legwork, not in your files; nothing was written. Please report it with the project file: {0}':
    'ours: the name', // {0} own(what + where)
  'project: missing: name a project file, or - for standard input': 'plain',
  'project: {0}: a class has one project; its bodies stand in the table': 'plain', // {0} quoted(others[0])
  'project: {0}: another project is called "{1}" too; rename one of them': 'plain', // {0} own(JSON.stringify(path)), {1} own(name)
  'project: {0}: named twice': 'plain', // {0} quoted(again)
  'row {0} ({1}): {2}': 'plain', // {0} number(row), {1} own(name), {2} own(reason)
  'standard output: can’t be written to ({0}); the files are written all the same': 'plain', // {0} own(`${code}`)
  'stopped: nothing was written': 'plain',
  'stopped: the files are written': 'plain',
  'that is not allowed': 'plain',
  'the disk can only be read': 'plain',
  'the disk failed': 'plain',
  'the disk is full': 'plain',
  'the file grew larger than the disk takes': 'plain',
  'the folder to write to; it is made if it is missing': 'plain',
  'the name is too long': 'plain',
  'the system says {0}': 'plain', // {0} own(code)
  'there is a file where a folder should be': 'plain',
  'there is a folder of that name': 'plain',
  'there is a link of that name': 'plain',
  'there is no such file.': 'plain',
  'there is something else of that name': 'plain',
  'these lines': 'plain',
  'too many files are open': 'plain',
  'was written to while it was read; try again once it is done.': 'plain',
  'what follows is project files, also where a name begins with a hyphen': 'plain',
  'what has that name isn’t a plain file': 'plain',
  'which files, with commas between them (all, if left out);\n{0} draws all projects at a quarter, several to a page, {1} draws them on one\ndrawing, {2} packs everything in one file':
    'plain', // {0} own('samples'), {1} own('nested'), {2} own('zip')
  'write such a table to fill in, in the project’s units': 'plain',
  'your share of the disk is full': 'plain',
  '{0} %  {1}  ({2} stops)': 'plain', // {0} own(percent), {1} own(spelledOut(doing)), {2} own('Ctrl+C')
  '{0} as it was is now {1}': 'plain', // {0} own(name), {1} own(old)
  '{0} can’t be written to: {1}; not all could be put back: {2}; move these before the next run.': 'plain', // {0} own(name), {1} reason, {2} inRow(kept)
  '{0} can’t be written to: {1}; nothing was changed.': 'plain', // {0} own(name), {1} reason
  '{0} can’t be written to: {1}; what had been renamed was put back, nothing is changed.': 'plain', // {0} own(name), {1} reason
  '{0} is new': 'plain', // {0} own(name)
  '{0} would be written twice; rename one of the projects.': 'plain', // {0} own(name)
  '{0}: a table is written or read, not both at once': 'plain', // {0} EMPTY_TABLE
  '{0}: blocks that were brought along fit one body, not a class': 'trade', // {0} BLOCKS
  '{0}: missing: {1}': 'plain', // {0} own(option), {1} VALUED[option]
  '{0}: named twice; name it once': 'plain', // {0} own(option)
  '{0}: nothing else is written; leave out {1} and {2}': 'plain', // {0} EMPTY_TABLE, {1} FILES, {2} BLOCKS
  '{0}: table: no row can be drafted; nothing was written': 'plain', // {0} own(order.table)
  '{0}: unknown option; known are {1}': 'plain', // {0} own(word), {1} own([...Object.keys(VALUED), ...SWITCHES].join(', '))
  '{0}: {1}: must be {2}': 'plain', // {0} own('--words'), {1} quoted(english), {2} either(ENGLISHES.map((one) => say`${own(one)}`))
  '{0}: {1}: needs two projects or more, to lay one on the other': 'plain', // {0} FILES, {1} quoted('nested')
  '{0}: {1}: unknown kind; it must be one of {2}': 'plain', // {0} FILES, {1} quoted(kind), {2} KINDS
} as const;
