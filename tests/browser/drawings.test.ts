import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { differingPixels } from './differing-pixels';
import { launchChromium, openAppAgain } from './open-app';

// The lines of the main drawings against pictures that somebody has looked at. After a change that is meant, renew them
// with LEGWORK_RENEW=drawings npm test -- browser tests/browser/drawings.test.ts, and look at each before it is kept.

const folder = fileURLToPath(new URL('drawings/', import.meta.url));
const renew = process.env.LEGWORK_RENEW === 'drawings';

/** Edges are smoothed a little differently from one Chromium to the next; more than so many pixels is another drawing. */
const SAME = 100;

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
  if (renew) await mkdir(folder, { recursive: true });
});

afterAll(() => browser.close());

/** Only lines and tints: words are set a little differently everywhere, and are read by other tests. */
const LINES_ONLY = '.word, .rulers, .handle, .tools, .player, .hint { display: none !important; }';

async function openTable(): Promise<Awaited<ReturnType<typeof openAppAgain>>> {
  const app = await openAppAgain(browser, {
    viewport: { width: 1240, height: 640 },
    reducedMotion: 'reduce',
    // The page's own policy would refuse the style that hides the words.
    bypassCSP: true,
  });
  await app.page.addStyleTag({ content: LINES_ONLY });
  return app;
}

/** Lines that only the drawing of a station has: until it is loaded, the one before it stays. */
const OWN_LINES: Readonly<Record<string, string>> = {
  Body: '.figure-view',
  Blocks: '[data-block]',
  Leg: '.gain-ground',
};

/** Opens a station and waits for its drawing, which comes with it. */
async function goTo(page: Page, station: string): Promise<void> {
  await page.getByRole('button', { name: station, exact: true }).click();
  const lines = page.locator(`.drawing ${OWN_LINES[station] ?? '.whole path'}`);
  await lines.first().waitFor({ state: 'attached' });
}

async function picture(page: Page): Promise<Buffer> {
  await page.mouse.move(0, 0);
  return page.locator('.table-window').screenshot({ animations: 'disabled' });
}

const DRAWINGS: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  ['body', (page) => goTo(page, 'Body')],
  ['blocks', (page) => goTo(page, 'Blocks')],
  ['leg', (page) => goTo(page, 'Leg')],
  [
    'join',
    async (page) => {
      await goTo(page, 'Leg');
      await page.locator('.tool', { hasText: 'Play the join' }).dispatchEvent('click');
      await page.locator('.player input').evaluate((input: HTMLInputElement) => {
        Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, '0.5');
        input.dispatchEvent(new Event('input', { bubbles: true }));
      });
      await page.locator('.join-gap').waitFor();
    },
  ],
  ['edges', (page) => goTo(page, 'Edges')],
  ['check', (page) => goTo(page, 'Check')],
];

describe('the lines of the drawing', () => {
  test.each(DRAWINGS)('at %s are those that were looked at', async (name, show) => {
    const { page, close } = await openTable();
    await show(page);
    const now = await picture(page);
    const file = `${folder}${name}.png`;
    if (renew) await writeFile(file, now);
    expect(existsSync(file), `no picture to compare with: see the top of this file`).toBe(true);
    expect(await differingPixels(browser, await readFile(file), now)).toBeLessThanOrEqual(SAME);
    await close();
  });

  test('are another drawing where the body is 1 cm larger', async () => {
    const { page, close } = await openTable();
    await goTo(page, 'Body');
    await page.getByRole('textbox', { name: 'Hip', exact: true }).fill('103');
    await goTo(page, 'Leg');
    expect(await differingPixels(browser, await readFile(`${folder}leg.png`), await picture(page))).toBeGreaterThan(
      4 * SAME,
    );
    await close();
  });
});
