import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContextOptions, Download, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPdf } from '../outside/paper/render';
import { finger, type Hands, keys, mouse } from './hands';
import { launchChromium, openApp } from './open-app';

// The whole job, as four people do it: from the tape measure to the counted pages of the pattern, and all the way back.

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

const PEOPLE: readonly (readonly [string, BrowserContextOptions, (page: Page) => Hands | Promise<Hands>])[] = [
  ['by mouse at 1440 × 900', { viewport: { width: 1440, height: 900 } }, mouse],
  ['by keys alone at 1440 × 900', { viewport: { width: 1440, height: 900 } }, keys],
  ['by touch at 1024 × 768', { viewport: { width: 1024, height: 768 }, hasTouch: true }, finger],
  ['by touch at 390 × 844', { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }, finger],
];

test.each(PEOPLE)('the whole job is done %s, reloaded over, and undone to the start', async (_, options, handsOf) => {
  const app = await openApp(browser, { ...options, reducedMotion: 'reduce' });
  const { page } = app;
  const hands = await handsOf(page);
  const goTo = (station: string) => hands.press(button(page, station));
  const atStart = await savedProject(page, hands);

  // The tape, in whatever it is marked.
  await hands.press(button(page, 'New'));
  await hands.press(page.getByRole('button', { name: /^Draft for a body/ }));
  for (const [name, text] of [
    ['Waist', '29 1/4 in'],
    ['Hip', '40⅛in'],
    ['Body rise', '26.8'],
    ['Inside leg', '765 mm'],
  ] as const)
    await hands.write(field(page, name), text);
  await page.getByText('body 101.9 cm + ').waitFor();

  await goTo('Blocks');
  await hands.write(field(page, 'Ease at the hip'), '4');
  await page.getByText('body 101.9 cm + ').waitFor();
  expect(await page.locator('.drawing .word-part').allTextContents()).toEqual(['back', 'front']);

  await goTo('Leg');
  await hands.press(page.getByRole('button', { name: /Play the join/ }));
  await hands.slideUp(page.getByRole('slider', { name: 'From the blocks to the leg' }));
  await hands.press(button(page, 'Done'));
  const spread = page.getByRole('slider', { name: 'Spread' });
  const narrow = await spread.getAttribute('aria-valuetext');
  await hands.draw(spread, 30, 0);
  expect(await spread.getAttribute('aria-valuetext')).not.toBe(narrow);
  await hands.pick(page.getByRole('radio', { name: 'by hand' }));
  await hands.slideUp(page.getByRole('slider', { name: 'From the block’s lean to upright' }));
  await page.getByText('Centre back stands upright, centre front stands upright.').first().waitFor();
  await hands.choose(page.getByRole('combobox', { name: 'Length', exact: true }), 'below the knee');
  await hands.choose(page.getByRole('combobox', { name: 'Shape', exact: true }), 'straight');

  await goTo('Edges');
  await hands.choose(page.getByRole('combobox', { name: 'Waist finish' }), 'elastic and drawstring');
  await hands.write(field(page, 'Elastic width'), '1 1/4"');
  await page.getByRole('textbox', { name: 'Cord width' }).waitFor();

  // In the middle of the work, and before the last keystroke could come to the shelf.
  const written = await savedProject(page, hands);
  await page.reload();
  await button(page, 'Edges').waitFor();
  expect(await savedProject(page, hands)).toBe(written);

  await goTo('Check');
  await page.locator('.stop-inside .verdict').first().waitFor({ state: 'attached' });
  const checks = await page.locator('.checks .verdict').allTextContents();
  expect(checks.length).toBeGreaterThan(15);
  expect(checks.filter((verdict) => /wrong/.test(verdict))).toEqual([]);

  await goTo('Cloth');
  await hands.write(field(page, 'Width of the cloth'), '150');
  await page.getByText(/^Buy [\d.]+ m/).waitFor();

  await goTo('Paper');
  const counted = page.getByText(/\d+ sheets in/);
  await counted.waitFor();
  const download = page.waitForEvent('download');
  await hands.press(page.getByRole('button', { name: /^Print the pattern:/ }));
  const pdf = openPdf(await bytesOf(await download));
  const sheets = pdf.pages - (pdf.text().match(/first page, continued/g) ?? []).length - 1;
  pdf.close();
  // The printed sheets without the first pages, once the longer search has laid them.
  await page.getByRole('button', { name: `Print the pattern: ${sheets} sheets` }).waitFor();

  await goTo('Sew');
  await page.getByText(/^Step 1 of \d+/).waitFor();

  const undo = page.getByRole('button', { name: /^undo/ });
  for (let i = 0; i < 60 && (await undo.isEnabled()); i += 1) await hands.press(undo);
  expect(await undo.isEnabled()).toBe(false);
  expect(await savedProject(page, hands)).toBe(atStart);

  expect(app.complaints).toEqual([]);
  expect(app.strangers).toEqual([]);
  await app.close();
});

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const bytesOf = async (download: Download) => readFile(await download.path());

/** The project file, as anybody would save it. */
async function savedProject(page: Page, hands: Hands): Promise<string> {
  const download = page.waitForEvent('download');
  await hands.press(button(page, 'Save as a file'));
  return (await bytesOf(await download)).toString();
}
