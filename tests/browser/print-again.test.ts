import { readFile } from 'node:fs/promises';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchChromium, openApp } from './open-app';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

const goTo = (page: Page, station: string) => page.getByRole('button', { name: station, exact: true }).click();

/** How many pages a file has that is saved by a press. */
async function pagesSaved(page: Page, button: RegExp): Promise<number> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  const text = await readFile(await (await download).path(), 'latin1');
  return text.match(/\/Type \/Page\b(?!s)/g)?.length ?? 0;
}

/** How many sheets have to be printed again, as soon as that is told. */
async function changedCount(told: Locator): Promise<number> {
  const text = await told.getByText(/Print again \d+ of \d+ sheets/).textContent();
  return Number(text?.match(/Print again (\d+)/)?.[1]);
}

test('what was printed is noted, and after a change only its changed sheets are saved, as often as it changes', async () => {
  const app = await openApp(browser, { viewport: { width: 390, height: 844 }, locale: 'en-GB' });
  const { page } = app;
  const told = page.getByRole('group', { name: 'Printed before' });
  await goTo(page, 'Paper');
  // Two first pages, and the sheets that the longer search found.
  const count = (await pagesSaved(page, /^Print the pattern: \d+ sheets/)) - 2;
  await page.getByRole('button', { name: `Print the pattern: ${count} sheets` }).waitFor();
  await told.getByText(`${count} sheets in all`).waitFor();
  await told.getByText('there is nothing to print again').waitFor();
  expect(await page.getByRole('button', { name: /^Only changed sheets/ }).count()).toBe(0);

  await goTo(page, 'Edges');
  await page.getByRole('textbox', { name: 'Hem depth' }).fill('4');
  await goTo(page, 'Paper');
  await told.getByText('Changed since: Hem depth: 3 cm, now 4 cm.').waitFor();
  const again = await changedCount(told);
  expect(again).toBeLessThan(count / 2);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  expect(await pagesSaved(page, /^Only changed sheets: /)).toBeGreaterThan(again);
  await told.getByText('there is nothing to print again').waitFor();

  // It never came to paper: what was printed before counts, until it is said that it did.
  await told.getByRole('button', { name: 'That was never printed' }).click();
  expect(await changedCount(told)).toBe(again);
  await page.getByRole('button', { name: 'It was printed' }).click();
  await told.getByText('there is nothing to print again').waitFor();

  // The paper stays what it is when the drawing goes back, and when the page is opened another day.
  await page.getByRole('button', { name: /undo/ }).click();
  await told.getByText('Changed since: Hem depth: 4 cm, now 3 cm.').waitFor();
  await page.getByText(/kept on this computer/).waitFor();
  await page.reload();
  await goTo(page, 'Paper');
  expect(await changedCount(told)).toBeLessThan(count / 2);
  expect(app.complaints).toEqual([]);
  await app.close();
});
