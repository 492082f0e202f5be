import { writeFileSync } from 'node:fs';
import type { Reporter, TestModule } from 'vitest/node';

/**
 * Writes how many tests passed, failed and were skipped to the file that `LEGWORK_TALLY` names, so that `npm test` can
 * close with one sum over several runs. Silent, and without effect where the variable is not set.
 */
export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const file = process.env.LEGWORK_TALLY;
    if (file === undefined) return;
    const tally = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      let failedHere = 0;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') tally.passed += 1;
        else if (state === 'failed') failedHere += 1;
        else tally.skipped += 1;
      }
      // A file that could not be loaded has no failed test to count, and must not count as nothing.
      tally.failed += failedHere === 0 && module.state() === 'failed' ? 1 : failedHere;
    }
    writeFileSync(file, JSON.stringify(tally));
  }
}
