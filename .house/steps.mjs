/**
 * One step of `npm test`: a tool of the repository, run by Node.
 *
 * @typedef {object} Step
 * @property {string} name to run it alone: `npm test -- NAME`
 * @property {string} heading
 * @property {readonly string[]} program script file and arguments
 * @property {'house' | 'tests'} beside which others it runs at the same time as: each alone leaves a core idle
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
    beside: 'house',
  },
  { name: 'types', heading: 'Types', program: ['.house/types.mjs'], beside: 'house' },
  { name: 'layers', heading: 'Layers', program: ['.house/layers.mjs'], beside: 'house' },
  { name: 'dead', heading: 'Dead code', program: ['node_modules/knip/bin/knip.js'], beside: 'house' },
  {
    name: 'build',
    heading: 'Build',
    program: ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'],
    beside: 'house',
  },
  {
    name: 'unit',
    heading: 'Unit and outside tests',
    // All of the processor: these tests compute, nobody waits at the screen.
    program: [...vitest, '--project', 'rooms', '--project', 'bench', '--project', 'workbench', '--maxWorkers', '100%'],
    beside: 'tests',
  },
  {
    name: 'browser',
    heading: 'Browser tests',
    // Two at a time: a test waits for its page, and a page for its test; so most of the processor is left to the others.
    program: [...vitest, '--project', 'browser', '--maxWorkers', '2'],
    beside: 'tests',
  },
];
