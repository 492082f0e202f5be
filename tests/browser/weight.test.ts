import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { LICENCES_FILE } from '../../.house/licences';
import { root } from '../../.house/paths.mjs';
import { launchChromium, openAppAtFirst } from './open-app';

/** Script that may be asked for before a PDF is, kB of 1000 bytes, gzip. */
const MOST_KB = 200;

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

test(`the first load asks for less than ${MOST_KB} kB of script, and for neither the PDF writer nor a sheet`, async () => {
  const app = await openAppAtFirst(browser);
  await app.page.waitForLoadState('networkidle');
  const names = await app.page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .map(({ name }) => new URL(name).pathname)
      .filter((path) => path.endsWith('.js')),
  );
  const files = [...new Set(names.map((path) => path.slice(path.indexOf('/assets/') + 1)))];
  const sizes = files.map((file) => [file, gzipSync(readFileSync(join(root, 'dist', file))).length / 1000] as const);
  const sum = sizes.reduce((total, [, size]) => total + size, 0);
  console.log(`script of the first load: ${sum.toFixed(1)} kB in ${files.length} files`);
  expect(sum, JSON.stringify(sizes)).toBeLessThan(MOST_KB);
  expect(sum).toBeGreaterThan(60);
  expect(files.filter((file) => /pdf|Dialog|Sheet/.test(file))).toEqual([]);
  await app.close();
});

test('the licences of what is in it stand beside it', () => {
  const text = readFileSync(join(root, 'dist', LICENCES_FILE), 'utf8');
  for (const name of ['react', 'jspdf', 'valibot', '@fontsource/source-serif-4'])
    expect(text).toMatch(new RegExp(`^${name} [0-9.]+$`, 'm'));
});
