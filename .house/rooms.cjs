// The rooms of src/, in the order of the work: each may use those above it, none those below.
// A plain CommonJS list, because the layer tool's configuration has to be able to read it too.
exports.rooms = [
  'length',
  'plane',
  'body',
  'block',
  'leg',
  'edges',
  'check',
  'cloth',
  'sheets',
  'sewing',
  'project',
  'files',
  'workbench',
  'command',
];

/** The last two stand side by side: the same pattern on a screen and in a terminal. */
exports.neighbours = ['workbench', 'command'];
