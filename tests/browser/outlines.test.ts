import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPdf } from '../outside/paper/render';
import { finger, type Hands, keys, mouse } from './hands';
import { launchChromium, openApp } from './open-app';

// Blocks from a drawing that another program wrote, its lines without names: picked, looked at, used, to the counted sheets.

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

const DRAWING = fileURLToPath(new URL('../trace/fixtures/inkscape.dxf', import.meta.url));
const PEOPLE: readonly (readonly [string, BrowserContextOptions, (page: Page) => Hands | Promise<Hands>, boolean])[] = [
  ['by mouse', { viewport: { width: 1366, height: 768 } }, mouse, true],
  ['by keys alone', { viewport: { width: 1366, height: 768 } }, keys, false],
  ['by touch', { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }, finger, true],
];

test.each(PEOPLE)('blocks come from a drawing without names %s', async (_, options, handsOf, points) => {
  const app = await openApp(browser, { ...options, reducedMotion: 'reduce' });
  const { page } = app;
  const hands = await handsOf(page);
  const button = (name: string | RegExp) => page.getByRole('button', { name });
  await hands.press(page.getByRole('button', { name: 'Blocks', exact: true }));
  await page.getByLabel('Drawing of the blocks').setInputFiles(DRAWING);
  const dialog = page.getByRole('dialog', { name: 'Blocks from a drawing' });
  await dialog.getByText('Two outlines look like a front and a back.').waitFor();

  // The other way round, and back by undo.
  const front = dialog.getByRole('button', { name: /^Outline \d, .*: front$/ });
  const back = dialog.getByRole('button', { name: /^Outline \d, .*: back$/ });
  const was = await front.getAttribute('aria-label');
  await hands.press(back);
  await expect.poll(() => front.getAttribute('aria-label')).not.toBe(was);
  await hands.press(dialog.getByRole('button', { name: 'Undo', exact: true }));
  await expect.poll(() => front.getAttribute('aria-label')).toBe(was);

  await hands.press(button(/^Look at the corners/));
  const dot = dialog.locator('g[data-part="front"] [data-place="hemSide"]');
  const lies = () => dot.getAttribute('cx');
  const before = await lies();
  const place = dialog.getByRole('group', { name: 'Front' }).getByRole('button', { name: 'Hem at the side' });
  await hands.press(place);
  if (points) await hands.press(dialog.locator('g[data-part="front"] [data-place="hemInseam"]'));
  else await place.press('ArrowLeft');
  await expect.poll(lies).not.toBe(before);
  await hands.press(dialog.getByRole('button', { name: 'Undo', exact: true }));
  await expect.poll(lies).toBe(before);
  if (points) {
    await hands.press(dialog.locator('g[data-part="back"] [data-place="hemSide"]'));
    await dialog.getByText('This edge of the back is the').waitFor();
  }

  await hands.press(button(/^Use these blocks/));
  await page.getByText('The blocks of “inkscape.dxf” are on the table.').first().waitFor();

  await hands.press(page.getByRole('button', { name: 'Paper', exact: true }));
  await page.getByText(/\d+ sheets in/).waitFor();
  const download = page.waitForEvent('download');
  await hands.press(button(/^Print the pattern:/));
  const pdf = openPdf(await readFile(await (await download).path()));
  expect(pdf.pages).toBeGreaterThan(8);
  pdf.close();
  expect([app.complaints, app.strangers]).toEqual([[], []]);
  await app.close();
});
