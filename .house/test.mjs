import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { install } from './install.mjs';
import { run } from './run.mjs';
import { steps } from './steps.mjs';
import { addStep, closingLine, NOTHING_YET, readTally } from './tally.mjs';
import { bringTools } from './tools.mjs';

const [wanted, ...extra] = process.argv.slice(3);
const tally = await testAll(wanted === undefined ? steps : steps.filter((step) => step.name === wanted));
// Nothing may be printed after this line.
console.log(`\n${closingLine(tally)}`);
process.exitCode = tally.failed === 0 ? 0 : 1;

/**
 * Runs the steps in order and stops at the first that goes wrong.
 *
 * @param {typeof steps} chosen
 */
async function testAll(chosen) {
  const failure = addStep(NOTHING_YET, 1, NOTHING_YET);
  if (chosen.length === 0) {
    console.error(`There is no step "${wanted}"; there are: ${steps.map((step) => step.name).join(', ')}.`);
    return failure;
  }
  if (!(await install())) return failure;
  const problem = await bringTools();
  if (problem !== '') {
    console.error(problem);
    return failure;
  }
  const folder = mkdtempSync(join(tmpdir(), 'legwork-test-'));
  let sum = NOTHING_YET;
  for (const step of chosen) {
    console.log(`\n── ${step.heading} ${'─'.repeat(70 - step.heading.length)}`);
    const file = join(folder, `${step.name}.json`);
    const began = Date.now();
    const code = await run(process.execPath, [...step.program, ...extra], { LEGWORK_TALLY: file });
    sum = addStep(sum, code, readTally(file));
    const verdict = code === 0 ? 'good' : `went wrong (exit code ${code}); the later steps were not run`;
    console.log(`${step.heading}: ${verdict}, ${((Date.now() - began) / 1000).toFixed(1)} s`);
    if (code !== 0) break;
  }
  rmSync(folder, { recursive: true });
  return sum;
}
