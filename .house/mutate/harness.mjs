// Stands in for the test runner while mutants are tried: tests are collected once and called again and again in the
// same process, which takes milliseconds where a run of their own takes seconds. Only what those tests use is here.
import { ASYMMETRIC_MATCHERS_OBJECT, chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';

/**
 * @typedef {object} Opened a test file whose body has run
 * @property {{ name: string, run: (...given: any[]) => unknown }[]} tests
 * @property {(() => unknown)[]} before what its tests want done first
 */

/** @type {Opened} */
let opened = { tests: [], before: [] };
/** @type {readonly string[]} */
let within = [];

/**
 * What a test file holds.
 *
 * @param {() => Promise<unknown>} load imports it
 */
export async function openedBy(load) {
  const now = { tests: [], before: [] };
  opened = now;
  within = [];
  await load();
  return /** @type {Opened} */ (now);
}

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = Object.assign(
  (/** @type {unknown} */ value, /** @type {string} */ message) => chai.expect(value, message),
  chai.expect,
  /** @type {any} */ (globalThis)[ASYMMETRIC_MATCHERS_OBJECT],
);

/** @param {() => unknown} run */
export const beforeAll = (run) => void opened.before.push(run);

/** @type {(name: string, ...rest: any[]) => void} */
const addTest = (name, ...rest) => {
  const run = rest.find((one) => typeof one === 'function');
  const full = [...within, name].join(' > ');
  const same = opened.tests.filter((one) => one.name === full || one.name.startsWith(`${full} #`)).length;
  opened.tests.push({ name: same === 0 ? full : `${full} #${same + 1}`, run });
};

/** @type {(name: string, run: () => void) => void} */
const addGroup = (name, run) => {
  const outside = within;
  within = [...outside, name];
  run();
  within = outside;
};

/**
 * @param {(name: string, ...rest: any[]) => void} add
 * @returns {(cases: readonly any[]) => (name: string, ...rest: any[]) => void}
 */
const eachWith =
  (add) =>
  (cases) =>
  (name, ...rest) => {
    // As Vitest does: lists are arguments only where every case is one.
    const spread = cases.every((given) => Array.isArray(given));
    for (const [n, given] of cases.entries()) {
      const run = rest.find((one) => typeof one === 'function');
      add(`${name} (${n + 1})`, () => run(...(spread ? given : [given])));
    }
  };

export const test = Object.assign(addTest, { each: eachWith(addTest) });
export const it = test;
export const describe = Object.assign(addGroup, { each: eachWith(addGroup) });
