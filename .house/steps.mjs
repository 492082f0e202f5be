/**
 * One step of `npm test`: a tool of the repository, run by Node.
 *
 * @typedef {object} Step
 * @property {string} name to run it alone: `npm test -- NAME`
 * @property {string} heading
 * @property {readonly string[]} program script file and arguments
 * @property {boolean} [together] run at the same time as its neighbours that are, too: each alone leaves a core idle
 */

const vitest = ['node_modules/vitest/vitest.mjs', 'run'];

/**
 * In order: what is quick and says most comes first.
 *
 * @type {readonly Step[]}
 */
export const steps = [
  {
    name: 'format',
    heading: 'Format and lint',
    program: ['node_modules/@biomejs/biome/bin/biome', 'ci', '--error-on-warnings'],
    together: true,
  },
  { name: 'types', heading: 'Types', program: ['.house/types.mjs'], together: true },
  { name: 'layers', heading: 'Layers', program: ['.house/layers.mjs'], together: true },
  { name: 'dead', heading: 'Dead code', program: ['node_modules/knip/bin/knip.js'], together: true },
  {
    name: 'build',
    heading: 'Build',
    program: ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'],
    together: true,
  },
  {
    name: 'unit',
    heading: 'Unit and outside tests',
    // All of the processor: these tests compute, nobody waits at the screen.
    program: [...vitest, '--project', 'rooms', '--project', 'bench', '--project', 'workbench', '--maxWorkers', '100%'],
  },
  {
    name: 'browser',
    heading: 'Browser tests',
    // Two at a time: a test waits for its page, and a page for its test.
    program: [...vitest, '--project', 'browser', '--maxWorkers', '2'],
  },
];
