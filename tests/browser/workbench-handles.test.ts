import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { fingerLifted, middleOf, touchAt } from './hands';
import { launchChromium, type OpenedApp, openAppAgain } from './open-app';

let browser: Browser;
let app: OpenedApp;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

afterEach(async () => {
  expect(app.complaints).toEqual([]);
  expect(app.strangers).toEqual([]);
  await app.close();
});

async function openLeg(options: BrowserContextOptions = {}): Promise<Page> {
  app = await openAppAgain(browser, options);
  await app.page.getByRole('button', { name: 'Leg', exact: true }).click();
  await app.page.getByRole('slider', { name: 'Spread' }).waitFor();
  return app.page;
}

const slider = (page: Page, name: string) => page.getByRole('slider', { name, exact: true });
const words = async (handle: Locator) => (await handle.getAttribute('aria-valuetext')) ?? '';
const undo = (page: Page) => page.getByRole('button', { name: /undo/ });

async function drag(page: Page, handle: Locator, dx: number, dy: number): Promise<void> {
  const { x, y } = await middleOf(handle);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= 4; i += 1) {
    await page.mouse.move(x + (dx * i) / 4, y + (dy * i) / 4);
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => done(undefined))));
  }
}

/** The report as the workbench writes it for the present project. */
async function report(page: Page) {
  await page.getByRole('button', { name: 'Paper', exact: true }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: /Report/ }).click();
  const written = JSON.parse(await readFile(await (await download).path(), 'utf8'));
  await page.getByRole('button', { name: 'Leg', exact: true }).click();
  return written;
}

/** The first length in words, in millimetres. */
function lengthIn(text: string): number {
  const match = /([\d.]+) (cm|mm|in)/.exec(text);
  if (!match) throw new Error(`no length in “${text}”`);
  return Number(match[1]) * { cm: 10, mm: 1, in: 25.4 }[match[2] as 'cm' | 'mm' | 'in'];
}

/** What the report calls the number beside each button. */
const REPORTED = [
  ['Spread', 'spread', 24, 0],
  ['Waist height', 'crotchDepthFinished', 0, -20],
  ['Leg width at the hem', 'hemGirthFinished', -16, 0],
  ['Hem level: inseam', 'inseamFront', 0, -60],
] as const;

describe('a button on the drawing', () => {
  test('says the number of the report while it is dragged, within half a millimetre', async () => {
    const page = await openLeg();
    for (const [name, measure, dx, dy] of REPORTED) {
      const handle = slider(page, name);
      const before = lengthIn(await words(handle));
      await drag(page, handle, dx, dy);
      const said = lengthIn(await words(handle));
      expect(said, name).not.toBeCloseTo(before, 1);
      // Held, it stays under the pointer, but for the step to which it snaps.
      await page.mouse.up();
      const written = await report(page);
      expect(Math.abs(written.measures[measure] - said), `${name}: ${said}`).toBeLessThanOrEqual(0.5);
    }
  });

  test('follows the pointer, and a whole drag is one change that is undone by one press', async () => {
    const page = await openLeg();
    const hem = slider(page, 'Hem level: inseam');
    const start = await middleOf(hem);
    const said = await words(hem);
    await drag(page, hem, 30, -120);
    expect(await page.locator('.handle[data-held]').count()).toBe(1);
    const now = await middleOf(hem);
    // 5 mm steps are about 3 pixels at this size.
    expect(Math.abs(now.y - (start.y - 120))).toBeLessThan(4);
    await page.mouse.up();
    expect(await words(hem)).not.toBe(said);
    expect(Math.round(lengthIn(await words(hem)) * 10) % 50).toBe(0);
    expect(await page.getByRole('textbox', { name: 'Inseam' }).inputValue()).not.toBe('');
    await undo(page).click();
    expect(await words(hem)).toBe(said);
    expect(await undo(page).isDisabled()).toBe(true);
  });

  test('leans centre back by hand, as far as upright and no further', async () => {
    const page = await openLeg();
    const lean = slider(page, 'Straighten: lean of centre back');
    expect(await words(lean)).toMatch(/^leans 2\.9 cm, as needed/);
    await drag(page, lean, 60, 0);
    await page.mouse.up();
    const most = lengthIn(await words(lean));
    expect(most).toBeGreaterThan(25);
    await drag(page, lean, -300, 0);
    await page.mouse.up();
    expect(lengthIn(await words(lean))).toBeLessThan(0.5);
    expect(await page.getByRole('radio', { name: 'by hand' }).isChecked()).toBe(true);
  });

  test('stops where nothing can be drawn, says so, and leaves the drawing good', async () => {
    const page = await openLeg();
    const hem = slider(page, 'Leg width at the hem');
    await drag(page, hem, -600, 0);
    await page.getByText('no further').waitFor();
    await page.mouse.up();
    expect(await page.locator('.drawing').first().getAttribute('data-stale')).toBeNull();
    expect(lengthIn(await words(hem))).toBeGreaterThan(100);
  });

  test('is put back by Escape while it is held', async () => {
    const page = await openLeg();
    const handle = slider(page, 'Spread');
    const said = await words(handle);
    await handle.focus();
    await drag(page, handle, 60, 0);
    expect(await words(handle)).not.toBe(said);
    await page.keyboard.press('Escape');
    expect(await words(handle)).toBe(said);
    await page.mouse.up();
    expect(await undo(page).isDisabled()).toBe(true);
  });

  test('steps by keys: a millimetre, an eighth of an inch, ten of them with shift', async () => {
    const page = await openLeg();
    const handle = slider(page, 'Spread');
    await handle.focus();
    await page.keyboard.press('ArrowRight');
    expect(await words(handle)).toMatch(/^spread 1\.3 cm/);
    await page.keyboard.press('Shift+ArrowUp');
    expect(await words(handle)).toMatch(/^spread 2\.3 cm/);
    expect(await handle.getAttribute('aria-valuenow')).toBe('2.3');
    await page.getByRole('radio', { name: 'inch' }).check();
    await handle.focus();
    await page.keyboard.press('ArrowRight');
    expect(await words(handle)).toMatch(/^spread 1 in/);
    await page.keyboard.press('ArrowRight');
    expect(await words(handle)).toMatch(/^spread 1⅛ in/);
    await page.keyboard.press('Home');
    expect(await words(handle)).toMatch(/^spread 0 in/);
    // Leaving the button ends the change.
    await page.keyboard.press('Tab');
    await undo(page).click();
    expect(await words(handle)).toMatch(/^spread ⅞ in/);
    await undo(page).click();
    expect(await words(handle)).toMatch(/^spread ½ in/);
  });

  test('is drawn by a finger, and the paper stays under it', async () => {
    const page = await openLeg({ viewport: { width: 1024, height: 768 }, hasTouch: true });
    const handle = slider(page, 'Hem level: inseam');
    const said = lengthIn(await words(handle));
    const place = () => page.locator('.drawing').first().getAttribute('style');
    const lay = await place();
    const touch = await page.context().newCDPSession(page);
    const { x, y } = await middleOf(handle);
    await touchAt(touch, 'touchStart', x, y);
    for (let i = 1; i <= 4; i += 1) await touchAt(touch, 'touchMove', x, y - i * 15);
    expect(await place()).toBe(lay);
    await fingerLifted(page, touch);
    expect(lengthIn(await words(handle))).toBeLessThan(said - 50);
    await undo(page).tap();
    // The press follows the tap a little later.
    await expect.poll(async () => lengthIn(await words(handle))).toBe(said);
  });
});
