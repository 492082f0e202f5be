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
    const codes = await sideBySide(group, folder);
    for (const [i, step] of group.entries()) sum = addStep(sum, codes[i] ?? 1, readTally(tallyIn(folder, step)));
    if (codes.some((code) => code !== 0)) break;
  }
  rmSync(folder, { recursive: true });
  return sum;
}

/** @typedef {typeof steps[number]} Step */

/**
 * The first speaks while it runs; what the others say is kept until then, so that nobody speaks over another.
 *
 * @param {readonly [Step, ...Step[]]} group
 * @param {string} folder for what is counted
 * @returns {Promise<readonly number[]>} the exit code of each
 */
async function sideBySide([first, ...others], folder) {
  const began = Date.now();
  /** @param {Step} step */
  const started = (step) => ({
    arguments_: [...step.program, ...extra],
    counted: { LEGWORK_TALLY: tallyIn(folder, step) },
  });
  const kept = others.map(async (step) => {
    const { arguments_, counted } = started(step);
    const { code, said } = await runKept(process.execPath, arguments_, counted);
    return { step, code, said, seconds: (Date.now() - began) / 1000 };
  });
  const { arguments_, counted } = started(first);
  say(first);
  const code = await run(process.execPath, arguments_, counted);
  close(first, code, (Date.now() - began) / 1000);
  const codes = [code];
  for (const ended of kept) {
    const { step, said, seconds, ...other } = await ended;
    say(step);
    process.stdout.write(said);
    close(step, other.code, seconds);
    codes.push(other.code);
  }
  return codes;
}

/**
 * @param {string} folder
 * @param {Step} step
 */
function tallyIn(folder, { name }) {
  return join(folder, `${name}.json`);
}

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
    if (step.beside === last?.[0].beside) last?.push(step);
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
 * @param {number} code
 * @param {number} seconds
 */
function close({ heading }, code, seconds) {
  const verdict = code === 0 ? 'good' : `went wrong (exit code ${code}); the later steps were not run`;
  console.log(`${heading}: ${verdict}, ${seconds.toFixed(1)} s`);
}
