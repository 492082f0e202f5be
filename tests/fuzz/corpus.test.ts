import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import { onDemand } from './find';
import { openJudge } from './judging';
import type { RawDraw } from './projects';

// Every project that ever went wrong, by what went wrong. A find of `npm run draws` joins them when it is mended:
// a file more here, named after the fault.

const FOLDER = new URL('./corpus/', import.meta.url);
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.json'));

const judge = openJudge();
afterAll(() => judge.close());

/** Longer than a thread may take to start and to be ended. */
const WATCHDOG = 120_000;

describe('what once went wrong doesn’t any more', () => {
  test('nothing was taken away', () => expect(files.length).toBeGreaterThanOrEqual(80));

  test.each(files)(
    '%s',
    async (name) => {
      const project = JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8')) as RawDraw;
      const { finds } = await judge.ask({ project, look: 'all' });
      const told = finds.filter((one) => !onDemand(one)).map(({ kind, seen }) => `${kind}: ${seen}`);
      expect(told).toEqual([]);
    },
    WATCHDOG,
  );
});
