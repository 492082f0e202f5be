// The layer rule: data flows one way through the rooms of src/, and each room is entered by its own door.
const { folders, neighbours, rooms } = require('./.house/rooms.cjs');

/** @type {(names: readonly string[]) => string} */
const anyOf = (names) => `(?:${names.join('|')})`;

/**
 * A package, whether it was found in node_modules or not at all.
 *
 * @type {(names: readonly string[]) => string}
 */
const aPackage = (names) => `(?:^|node_modules/)${anyOf(names)}(?:/|$)`;

const belowRules = rooms.map((room, at) => {
  const below = rooms.filter(
    (other, otherAt) => otherAt > at || (neighbours.includes(room) && neighbours.includes(other)),
  );
  return {
    name: `${room}-uses-only-rooms-above`,
    comment: 'The flow has one direction; a room never knows what is made of its results.',
    severity: 'error',
    from: { path: `^src/${room}/` },
    to: { path: `^src/${anyOf(below.filter((other) => other !== room).concat('(?!)'))}/` },
  };
});

/** The same within a room that is divided into folders. */
const folderRules = Object.entries(folders).flatMap(([room, order]) =>
  order.map((folder, at) => ({
    name: `${room}-${folder}-uses-only-folders-above`,
    comment: 'Folders of a room stand in an order as rooms do; what lies beside them puts them together.',
    severity: 'error',
    from: { path: `^src/${room}/${folder}/` },
    to: { path: `^src/${room}/(?:${anyOf(order.slice(at + 1).concat('(?!)'))}/|[^/]+$)` },
  })),
);

/** Where a package may be used, so that changing it means changing one room. */
const keeps = [
  { room: 'plane', packages: ['paper'] },
  { room: 'files', packages: ['jspdf', '@tarikjabiri/dxf', 'saxes', 'papaparse', 'transformation-matrix'] },
  { room: 'workbench', packages: ['react', 'react-dom', 'zustand', 'idb-keyval', 'radix-ui', '@fontsource'] },
].map(({ room, packages }) => ({
  name: `${packages[0]}-only-in-${room}`,
  severity: 'error',
  from: { path: '^src/', pathNot: `^src/${room}/` },
  to: { path: aPackage(packages) },
}));

/**
 * @typedef {import('dependency-cruiser').IFlattenedRuleSet} Rules
 * @typedef {import('dependency-cruiser').ICruiseOptions} Options
 */

/** @type {Rules & { options: Options }} */
module.exports = {
  forbidden: [
    ...belowRules,
    ...folderRules,
    ...keeps,
    {
      name: 'rooms-by-their-door',
      comment: "Another room's inside is its own affair: import its index.",
      severity: 'error',
      from: { path: '^src/([^/]+)/' },
      to: { path: '^src/[^/]+/', pathNot: ['^src/$1/', '^src/[^/]+/index\\.ts$'] },
    },
    {
      name: 'src-stands-alone',
      comment: 'What is shipped uses neither tests nor the tools of the house.',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^(?:tests|\\.house)/' },
    },
    {
      name: 'node-only-in-command',
      comment: 'Every other room also runs in a browser.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/command/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-development-packages',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only'] },
    },
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'everything-found', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    // Types count too: a type that is imported upwards ties the rooms as firmly as a function.
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.d.ts', '.js', '.mjs', '.json', '.css'],
    },
  },
};
