import { readFileSync } from 'node:fs';

/**
 * How many tests passed, failed and were skipped.
 *
 * @typedef {{ passed: number, failed: number, skipped: number }} Tally
 */

/** @type {Tally} */
export const NOTHING_YET = { passed: 0, failed: 0, skipped: 0 };

/**
 * Adds one step's outcome to the tally so far. A step that went wrong always counts at least one failure: a red linter
 * or a crashed run must never close with "0 failed".
 *
 * @param {Tally} soFar
 * @param {number} exitCode of the step
 * @param {Tally} tests what the step counted; all zero for a step that runs no tests
 * @returns {Tally}
 */
export function addStep(soFar, exitCode, tests) {
  const failed = exitCode === 0 ? tests.failed : Math.max(1, tests.failed);
  return {
    passed: soFar.passed + tests.passed,
    failed: soFar.failed + failed,
    skipped: soFar.skipped + tests.skipped,
  };
}

/**
 * @param {Tally} tally
 */
export function closingLine(tally) {
  return `${tally.passed} passed, ${tally.failed} failed, ${tally.skipped} skipped`;
}

/**
 * What Vitest's JSON reporter wrote; all zero where it wrote nothing, because the run ended before. A file that could not
 * be loaded has no failed test to count, and counts as one.
 *
 * @param {string} file
 * @returns {Tally}
 */
export function readTally(file) {
  try {
    const report = JSON.parse(readFileSync(file, 'utf8'));
    /** @param {{ status: string }} one */
    const fails = ({ status }) => status === 'failed';
    /** @type {{ status: string, assertionResults: { status: string }[] }[]} */
    const files = report.testResults;
    const unread = files.filter((one) => fails(one) && !one.assertionResults.some(fails)).length;
    return {
      passed: report.numPassedTests,
      failed: report.numFailedTests + unread,
      skipped: report.numPendingTests + report.numTodoTests,
    };
  } catch {
    return NOTHING_YET;
  }
}
