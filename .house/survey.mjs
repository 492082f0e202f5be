import { run } from './run.mjs';

// The tests that take a share of the measured people, on everybody: hours of one core. `npm test` takes the share. What
// follows the command goes to Vitest, e.g. `npm run survey -- tests/outside/children.test.ts`.
const asked = process.argv.slice(2);
const folders = ['tests/outside', 'tests/properties', 'tests/cut', 'tests/fuzz', 'tests/sewing'];
process.exitCode = await run(
  process.execPath,
  ['node_modules/vitest/vitest.mjs', 'run', '--project', 'rooms', ...(asked.length > 0 ? asked : folders)],
  { LEGWORK_EVERY: '1' },
);
