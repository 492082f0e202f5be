import { readFile } from 'node:fs/promises';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Point, point } from '../../src/plane';
import { floorBox, LANDMARKS, viewToPicture, viewToPlane } from '../../src/trace';
import { flatsOfWork } from '../../src/workbench/photo/flat';
import { NUDGE } from '../../src/workbench/photo/MarkPad';
import { likelyPixel } from '../../src/workbench/photo/shown-place';
import { type Part, withMark } from '../../src/workbench/photo/work';
import { fitView, outOfWindow } from '../../src/workbench/view/view';
import { openPdf } from '../outside/paper/render';
import { finger, type Hands, keys } from './hands';
import { markBlock, ROOM, sheetWork } from './mark-block';
import { launchChromium, openApp } from './open-app';
import { marksOnFloor, photograph, sheetCamera } from './photographed';

// From a photograph to the printed pattern without a mouse; by mouse it is done in photo.test.ts.

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

/** One press with Shift moves a mark so far, millimetres. */
const STEP = 10 * NUDGE.paper;

/** So many places are moved by keys. */
const MOVED = 3;

/** Marks a block by keys: each place comes near where it lies, arrow keys take it there, Enter goes on to the next. */
async function markByKeys(page: Page, part: Part, hands: Hands): Promise<void> {
  const window = await page.locator('.photo-picture').boundingBox();
  const [flat] = flatsOfWork(sheetWork);
  if (!window || !flat) throw new Error('nothing is shown');
  const seen = fitView(floorBox(flat), window, ROOM);
  const middle = outOfWindow(point(window.width / 2, window.height / 2), seen);
  const { landmarks } = marksOnFloor(part);
  let work = sheetWork;
  for (const [i, name] of LANDMARKS.entries()) {
    if (i === 0) await hands.press(page.getByRole('button', { name: /^Place it with the keyboard/ }));
    else await page.keyboard.press('Enter');
    if (i + 1 < LANDMARKS.length) await page.getByText(`${i + 2} of 11`).waitFor();
    const likely = likelyPixel(work, part);
    const from = likely ? (viewToPlane(flat.view, likely) as Point) : middle;
    const to = viewToPlane(flat.view, sheetCamera(landmarks[name] as Point)) as Point;
    // Once the waist is marked the others come within a centimetre or two of their places, which does for a pattern to print.
    const [right, down] = i < MOVED ? [Math.round((to.x - from.x) / STEP), Math.round((to.y - from.y) / STEP)] : [0, 0];
    for (let k = 0; k < Math.abs(right); k += 1)
      await page.keyboard.press(right > 0 ? 'Shift+ArrowRight' : 'Shift+ArrowLeft');
    for (let k = 0; k < Math.abs(down); k += 1)
      await page.keyboard.press(down > 0 ? 'Shift+ArrowDown' : 'Shift+ArrowUp');
    const set = viewToPicture(flat.view, point(from.x + right * STEP, from.y + down * STEP)) as Point;
    work = withMark(work, 0, { kind: 'landmark', part, name }, set);
  }
}

const WAYS: readonly (readonly [
  string,
  BrowserContextOptions,
  (page: Page) => Hands | Promise<Hands>,
  typeof markByKeys,
])[] = [
  ['by keys alone', { viewport: { width: 1366, height: 768 } }, keys, markByKeys],
  [
    'by touch at 390 × 844',
    { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    finger,
    (page, part) => markBlock(page, part, ({ x, y }) => page.touchscreen.tap(x, y)),
  ],
];

test.each(WAYS)('blocks are photographed, marked and printed %s', async (_, options, handsOf, mark) => {
  const app = await openApp(browser, { ...options, reducedMotion: 'reduce' });
  const { page } = app;
  const hands = await handsOf(page);
  const press = (name: string | RegExp) =>
    hands.press(page.getByRole('button', { name, exact: typeof name === 'string' }));
  await press('Blocks');
  await press(/^From a photograph/);
  const buffer = await photograph(page, 'sheets');
  const chooser = page.waitForEvent('filechooser');
  await press(/^Choose a photograph/);
  await (await chooser).setFiles({ name: 'blocks.png', mimeType: 'image/png', buffer });
  await page.getByText('Marks found: 20, sheets: 4.').waitFor();
  await press(/^Mark the front/);
  await mark(page, 'front', hands);
  await press(/^Mark the back/);
  await mark(page, 'back', hands);
  await press(/^Look and use/);
  await press(/^Use these blocks/);
  await page.getByRole('dialog').waitFor({ state: 'detached' });

  await press('Paper');
  const download = page.waitForEvent('download');
  await press(/^Print the pattern:/);
  const pdf = openPdf(await readFile(await (await download).path()));
  expect(pdf.pages).toBeGreaterThan(10);
  pdf.close();
  expect(app.complaints).toEqual([]);
  expect(app.strangers).toEqual([]);
  await app.close();
});
