import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../.house/paths.mjs';
import { readTally } from '../../.house/tally.mjs';

test('passed, failed and skipped tests are counted, and a file that can not be loaded as one failure', () => {
  const kept = join(root, '.cache');
  mkdirSync(kept, { recursive: true });
  // Inside the repository, so that the little tests find vitest.
  const folder = mkdtempSync(join(kept, 'count-'));
  try {
    writeFileSync(
      join(folder, 'mixed.test.mjs'),
      `import { expect, test } from 'vitest';
      test('good', () => expect(1).toBe(1));
      test('also good', () => expect(1).toBe(1));
      test('wrong', () => expect(1).toBe(2));
      test.skip('skipped', () => {});
      test.todo('to do');`,
    );
    // Its own configuration, because vitest would otherwise look for one further up.
    writeFileSync(join(folder, 'vitest.config.mjs'), 'export default {};');
    writeFileSync(join(folder, 'broken.test.mjs'), "import './no-such-file.mjs';");
    const tally = join(folder, 'tally.json');
    const { status } = spawnSync(
      process.execPath,
      [
        join(root, 'node_modules/vitest/vitest.mjs'),
        'run',
        '--root',
        folder,
        '--reporter',
        'json',
        '--outputFile',
        tally,
      ],
      { cwd: folder, encoding: 'utf8' },
    );
    expect(status).toBe(1);
    expect(readTally(tally)).toEqual({ passed: 2, failed: 2, skipped: 2 });
  } finally {
    rmSync(folder, { recursive: true });
  }
});
