// The rooms of src/, in the order of the work: each may use those above it, none those below.
// A plain CommonJS list, because the layer tool's configuration has to be able to read it too.
exports.rooms = [
  'length',
  'words',
  'plane',
  'body',
  'block',
  'trace',
  'leg',
  'edges',
  'check',
  'cloth',
  'drawing',
  'sheets',
  'sewing',
  'project',
  'files',
  'workbench',
  'command',
];

/** The last two stand side by side: the same pattern on a screen and in a terminal. */
exports.neighbours = ['workbench', 'command'];

/**
 * The folders of a large room, in the same order: each may use those above it, none those below. Files beside the
 * folders use them all, and no folder uses such a file. The folders of a room that is not named here know no order.
 *
 * @type {Readonly<Record<string, readonly string[]>>}
 */
exports.folders = {
  trace: ['marks', 'truing', 'picture', 'camera', 'numbers', 'drawing'],
  files: [
    'work',
    'zip',
    'content',
    'pen',
    'pdf',
    'svg',
    'dxf',
    'read',
    'guide',
    'fit',
    'report',
    'nest',
    'make',
    'class',
  ],
  workbench: [
    'store',
    'look',
    'view',
    'aloud',
    'working',
    'fields',
    'save',
    'shelf',
    'faults',
    'take',
    'chalk',
    'finished',
    'table',
    'photo',
    'outlines',
    'class',
    'open',
    'projects',
    'stations',
    'path',
    'show',
    'help',
    'hints',
    'ways',
    'bar',
  ],
};
