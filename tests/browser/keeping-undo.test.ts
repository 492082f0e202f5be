import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { keptTexts } from './kept-texts';
import { launchChromium, openApp } from './open-app';

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

const depth = (page: Page) => page.getByRole('textbox', { name: 'Hem depth', exact: true });
const wide = (page: Page) => page.getByRole('textbox', { name: 'Elastic width', exact: true });
const button = (page: Page, name: RegExp) => page.getByRole('button', { name });

/** Waits until the newest copy on the shelf holds a number. */
const keptNewest = (page: Page, wanted: string) =>
  expect
    .poll(async () => (await keptTexts(page))[0]?.includes(wanted), { timeout: 10_000, message: `${wanted} is kept` })
    .toBe(true);

test('after an undo everything is kept on: each edit is there when the tab was closed and is opened again', async () => {
  const app = await openApp(browser);
  const { page } = app;
  await depth(page).fill('4.4');
  await keptNewest(page, '"depth": 44');

  await button(page, /^undo/).click();
  await keptNewest(page, '"depth": 30');
  expect(await page.locator('.bar-kept').textContent()).toMatch(/^kept on this computer/);
  expect(await page.locator('.notice').count()).toBe(0);

  await button(page, /^redo/).click();
  await keptNewest(page, '"depth": 44');
  await depth(page).fill('4.5');
  await keptNewest(page, '"depth": 45');
  await wide(page).fill('3.2');
  await keptNewest(page, '"elasticWidth": 32');
  expect(await page.locator('.bar-kept').textContent()).toMatch(/^kept on this computer/);
  await page.close();

  const again = await app.page.context().newPage();
  await again.goto(inject('appUrl'));
  const shown = async () => [await depth(again).inputValue(), await wide(again).inputValue()];
  await depth(again).waitFor();
  expect(await shown()).toEqual(['4.5', '3.2']);
  expect(await again.getByLabel('Name of the project').inputValue()).toBe('Flannel bottoms, first pair');
  // And the way back leads over the same steps.
  const back: string[][] = [];
  for (let step = 0; step < 3; step += 1) {
    await button(again, /^undo/).click();
    back.push(await shown());
  }
  expect(back).toEqual([
    ['4.5', '2.5'],
    ['4.4', '2.5'],
    ['3', '2.5'],
  ]);
  // Shown to the millimetre, an inch of elastic stays an inch: back over the steps, and when its field is only passed through.
  await wide(again).focus();
  await again.keyboard.press('Tab');
  await keptNewest(again, '"elasticWidth": 25.4,');
  await app.close();
});

/** What the page itself may take meanwhile, MB; each state of the workbench that stays weighs some tenths of one. */
const HEAP_MAY_GROW = 5;

test('a hundred steps back and forth leave no weight behind', async () => {
  const app = await openApp(browser);
  const { page } = app;
  const session = await page.context().newCDPSession(page);
  const heap = async () => {
    await session.send('HeapProfiler.collectGarbage');
    return (await session.send('Runtime.getHeapUsage')).usedSize / 1e6;
  };
  await depth(page).fill('4.1');
  await keptNewest(page, '"depth": 41');
  const before = await heap();
  for (let i = 0; i < 50; i += 1) {
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+y');
  }
  const after = await heap();
  console.log(`the heap before and after 50 undos and 50 redos: ${before.toFixed(1)} and ${after.toFixed(1)} MB`);
  expect(after - before).toBeLessThan(HEAP_MAY_GROW);
  await app.close();
});
