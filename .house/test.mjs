import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { install, NO_INSTALL } from './install.mjs';
import { run, runKept } from './run.mjs';
import { steps } from './steps.mjs';
import { addStep, closingLine, NOTHING_YET, readTally } from './tally.mjs';
import { bringTools } from './tools.mjs';

const words = process.argv.slice(3);
const mayInstall = !words.includes(NO_INSTALL);
const [wanted, ...extra] = words.filter((word) => word !== NO_INSTALL);
const tally = await testAll(wanted === undefined ? steps : steps.filter((step) => step.name === wanted));
// Nothing may be printed after this line.
console.log(`\n${closingLine(tally)}`);
process.exitCode = tally.failed === 0 ? 0 : 1;

/**
 * Runs the steps in order and stops where one goes wrong.
 *
 * @param {typeof steps} chosen
 */
async function testAll(chosen) {
  const failure = addStep(NOTHING_YET, 1, NOTHING_YET);
  if (chosen.length === 0) {
    console.error(`There is no step "${wanted}"; there are: ${steps.map((step) => step.name).join(', ')}.`);
    return failure;
  }
  if (!(await install(mayInstall))) return failure;
  const problem = await bringTools(mayInstall);
  if (problem !== '') {
    console.error(problem);
    return failure;
  }
  const folder = mkdtempSync(join(tmpdir(), 'legwork-test-'));
  let sum = NOTHING_YET;
  for (const group of groups(chosen)) {
    const codes = group.length === 1 ? [await shown(group[0])] : await Promise.all(group.map(kept));
    for (const [i, step] of group.entries()) sum = addStep(sum, codes[i] ?? 1, readTally(tallyOf(step)));
    if (codes.some((code) => code !== 0)) break;
  }
  rmSync(folder, { recursive: true });
  return sum;

  /** @param {Step} step */
  function tallyOf({ name }) {
    return join(folder, `${name}.json`);
  }

  /** @param {Step} step */
  async function shown(step) {
    say(step);
    const began = Date.now();
    return ended(
      step,
      began,
      await run(process.execPath, [...step.program, ...extra], { LEGWORK_TALLY: tallyOf(step) }),
    );
  }

  /** @param {Step} step */
  async function kept(step) {
    const began = Date.now();
    const { code, said } = await runKept(process.execPath, [...step.program, ...extra]);
    say(step);
    process.stdout.write(said);
    return ended(step, began, code);
  }
}

/** @typedef {typeof steps[number]} Step */

/**
 * Steps in order, those that run side by side as one.
 *
 * @param {readonly Step[]} chosen
 */
function groups(chosen) {
  /** @type {[Step, ...Step[]][]} */
  const found = [];
  for (const step of chosen) {
    const last = found.at(-1);
    if (step.together && last?.[0].together) last.push(step);
    else found.push([step]);
  }
  return found;
}

/** @param {Step} step */
function say({ heading }) {
  console.log(`\n── ${heading} ${'─'.repeat(70 - heading.length)}`);
}

/**
 * @param {Step} step
 * @param {number} began
 * @param {number} code
 */
function ended({ heading }, began, code) {
  const verdict = code === 0 ? 'good' : `went wrong (exit code ${code}); the later steps were not run`;
  console.log(`${heading}: ${verdict}, ${((Date.now() - began) / 1000).toFixed(1)} s`);
  return code;
}
