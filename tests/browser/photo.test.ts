import { readFile } from 'node:fs/promises';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { readBlocks } from '../../src/files/read/blocks';
import { add, edgeLength, outlineEdge, type Point } from '../../src/plane';
import { BLOCK_EDGES, blocksFromTrace } from '../../src/trace';
import { fitView, inWindow } from '../../src/workbench/view/view';
import { faultsOf } from './faults';
import { markBlock, ROOM } from './mark-block';
import { launchChromium, type OpenedApp, openApp } from './open-app';
import { blocks, marksSeen, photograph, SIZE } from './photographed';

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

const button = (page: Page, name: string | RegExp) => page.getByRole('dialog').getByRole('button', { name });

/** Opens the photograph and waits for its corners. */
async function openPhotograph(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Blocks', exact: true }).click();
  await page.getByRole('button', { name: /^From a photograph/ }).click();
  await choosePhotograph(page);
}

async function choosePhotograph(page: Page): Promise<void> {
  const buffer = await photograph(page, 'marks');
  const field = page.getByLabel('Photograph of the blocks');
  await field.setInputFiles({ name: 'blocks.png', mimeType: 'image/png', buffer });
  await button(page, /^Corner A/).waitFor();
}

/** Where a place of the picture is on the screen, as it is first shown. */
async function onScreen(page: Page): Promise<(p: Point) => Point> {
  const box = await page.locator('.photo-picture').boundingBox();
  if (!box) throw new Error('no picture');
  const view = fitView({ left: 0, top: 0, right: SIZE.width, bottom: SIZE.height }, box, ROOM);
  return (p) => add(inWindow(p, view), box);
}

/** Presses of the mouse, counted. */
function pressing(page: Page) {
  let presses = 0;
  return {
    presses: () => presses,
    at: async ({ x, y }: Point) => {
      presses += 1;
      await page.mouse.click(x, y);
    },
    on: async (it: Locator) => {
      presses += 1;
      await it.click();
    },
  };
}

/** Marks lie where the block has them, however close; they can be zoomed apart. */
const faults = async (page: Page) =>
  (await faultsOf(page)).filter((fault) => !fault.startsWith('target-size: button[aria'));

describe('blocks from a photograph', () => {
  test('the whole road by mouse: they come back as they were, within what is said', async () => {
    app = await openApp(browser);
    const { page } = app;
    const press = pressing(page);
    const opened = photograph(page, 'sheets');
    await press.on(page.getByRole('button', { name: 'Blocks', exact: true }));
    await press.on(page.getByRole('button', { name: /^From a photograph/ }));
    const chooser = page.waitForEvent('filechooser');
    await press.on(button(page, /^Choose a photograph/));
    await (await chooser).setFiles({ name: 'blocks.png', mimeType: 'image/png', buffer: await opened });
    await page.getByText('Marks found: 20, sheets: 4.').waitFor();
    await press.on(button(page, /^Mark the front/));
    await markBlock(page, 'front', press.at);
    await press.on(button(page, /^Mark the back/));
    await markBlock(page, 'back', press.at);
    const said = await page.locator('.photo-exact').textContent();
    const off = Number(/± (?:less than )?([\d.]+) cm/.exec(said ?? '')?.[1]);
    expect(off).toBeLessThan(0.4);
    expect(await faults(page)).toEqual([]);
    await press.on(button(page, /^Look and use/));
    await page.getByRole('table').waitFor();
    await press.on(button(page, /^Use these blocks/));
    await page.getByText('The blocks of the photograph are on the table.').waitFor();
    expect(press.presses()).toBeLessThanOrEqual(40);

    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: /^Save these blocks/ }).click();
    const read = await readBlocks(await readFile(await (await download).path(), 'utf8'));
    if (!read.ok) throw new Error('the saved blocks can not be read');
    const back = blocksFromTrace(read.value.front, read.value.back, 0);
    for (const part of ['front', 'back'] as const)
      for (const name of BLOCK_EDGES) {
        const [own, traced] = [blocks, back].map((pair) => edgeLength(outlineEdge(pair[part].edges, name)));
        expect(Math.abs((own ?? 0) - (traced ?? 0)), `${part} ${name}`).toBeLessThan(1);
      }
    // What a photograph leaves of the corners at the crotch point is offered to be trued.
    await page.getByRole('button', { name: /Crotch runs smooth/ }).waitFor();
    await page.getByRole('button', { name: /^True the crotch run by/ }).click();
    await page.getByRole('button', { name: /^As it was brought: crotch run/ }).waitFor();
    await page.getByRole('button', { name: /Crotch runs smooth/ }).waitFor({ state: 'detached' });
    // Changes like any other.
    for (let i = 0; i < 2; i += 1) await page.keyboard.press('ControlOrMeta+z');
    await page.getByRole('textbox', { name: 'Ease at the hip' }).waitFor();
  });

  test('finds printed marks, which can be corrected, and refuses far too large a picture before it is decoded', async () => {
    app = await openApp(browser);
    const { page } = app;
    await page.getByRole('button', { name: 'Blocks', exact: true }).click();
    await page.getByRole('button', { name: /^From a photograph/ }).click();
    const field = page.getByLabel('Photograph of the blocks');
    // The head of a PNG of 20,000 by 10,000 pixels, and nothing else of it.
    const head = Buffer.from('89504e470d0a1a0a0000000d4948445200004e20000027100802000000', 'hex');
    await field.setInputFiles({ name: 'vast.png', mimeType: 'image/png', buffer: head });
    await page.getByText('“vast.png” has 200 megapixels').waitFor();
    const buffer = await photograph(page, 'sheets');
    await field.setInputFiles({ name: 'blocks.png', mimeType: 'image/png', buffer });
    await page.getByText('Marks found: 20, sheets: 4.').waitFor();
    const seen = marksSeen.find(({ number }) => number === 7);
    const whole = button(page, 'Found mark 7');
    await whole.focus();
    const corner = page.getByRole('button', { name: 'Corner 1 of found mark 7' });
    await corner.waitFor();
    const at = await onScreen(page);
    const box = await corner.boundingBox();
    const wanted = seen && at(seen.corners[0]);
    expect(
      Math.hypot(
        (box?.x ?? 0) + (box?.width ?? 0) / 2 - (wanted?.x ?? 0),
        (box?.y ?? 0) + (box?.height ?? 0) / 2 - (wanted?.y ?? 0),
      ),
    ).toBeLessThan(1);
    await corner.focus();
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    await page.getByText('Left out, because they don’t lie where the others say: 7.').waitFor();
    await page.keyboard.press('Delete');
    await page.getByText('Marks found: 19, sheets: 4.').waitFor();
    expect(await whole.count()).toBe(0);
    await button(page, /^Mark the front/).click();
    await page.getByText('1 of 11').waitFor();
    expect(await faults(page)).toEqual([]);
  });

  test('by keys alone, with the marks kept over a reload', async () => {
    app = await openApp(browser);
    const { page } = app;
    await openPhotograph(page);
    // Focus goes to the dialog; Tab comes to every corner, and arrow keys move it by a pixel, ten with Shift.
    const corner = page.getByRole('dialog').locator('.photo-mark').first();
    await corner.focus();
    const name = () => corner.getAttribute('aria-label');
    expect(await name()).toBe('Corner A, 500 across, 375 down');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    expect(await name()).toBe('Corner A, 501 across, 385 down');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Shift+ArrowLeft');
    expect(await page.locator('.photo-mark').nth(1).getAttribute('aria-label')).toBe('Corner B, 1490 across, 375 down');
    // Undo means the marks, not the project behind them; what one mark went is one change.
    await page.keyboard.press('ControlOrMeta+z');
    await page.keyboard.press('ControlOrMeta+z');
    expect(await name()).toBe('Corner A, 500 across, 375 down');
    await page.keyboard.press('ControlOrMeta+Shift+z');
    expect(await name()).toBe('Corner A, 501 across, 385 down');

    await button(page, /^Mark the front/).focus();
    await page.keyboard.press('Enter');
    await button(page, /^Place it with the keyboard/).focus();
    await page.keyboard.press('Enter');
    const first = button(page, 'Waist at the side');
    await first.waitFor();
    expect(await first.evaluate((element) => element === document.activeElement)).toBe(true);
    await button(page, /^Place it with the keyboard/).focus();
    await page.keyboard.press('Enter');
    const second = button(page, 'Waist at the centre');
    await second.waitFor();
    // What is shown goes along with the mark that keys move: it is seen beside the one that stays.
    const apart = async () => ((await second.boundingBox())?.x ?? 0) - ((await first.boundingBox())?.x ?? 0);
    const before = await apart();
    for (let i = 0; i < 5; i += 1) await page.keyboard.press('Shift+ArrowRight');
    await expect.poll(async () => (await apart()) - before).toBeGreaterThan(5);
    await page.getByText('3 of 11').waitFor();

    await page.reload();
    await page.getByRole('button', { name: 'Blocks', exact: true }).click();
    await page.getByRole('button', { name: /^From a photograph/ }).click();
    await page.getByText('Marks are kept.', { exact: true }).waitFor();
    await choosePhotograph(page);
    expect(await name()).toBe('Corner A, 501 across, 385 down');
    await button(page, /^Front$/).click();
    await page.getByText('3 of 11').waitFor();
    await second.focus();
    await page.keyboard.press('Delete');
    await page.getByText('2 of 11').waitFor();
    expect(await second.count()).toBe(0);
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  });

  test('with a finger on a narrow screen, and what is no picture is said', async () => {
    app = await openApp(browser, { viewport: { width: 390, height: 844 }, hasTouch: true });
    const { page } = app;
    await page.getByRole('button', { name: 'Blocks', exact: true }).tap();
    await page.getByRole('button', { name: /^From a photograph/ }).tap();
    await page.getByLabel('Photograph of the blocks').setInputFiles({
      name: 'blocks.png',
      mimeType: 'image/png',
      buffer: Buffer.from('no picture'),
    });
    await page.getByText('“blocks.png” can’t be read as a picture here').waitFor();
    await choosePhotograph(page);
    const corner = page.locator('.photo-mark').first();
    await corner.tap();
    await page.getByRole('button', { name: 'Left', exact: true }).tap();
    expect(await corner.getAttribute('aria-label')).toBe('Corner A, 499 across, 375 down');
    expect(await faultsOf(page)).toEqual([]);
    await button(page, /^Mark the front/).tap();
    // Only then does the picture lie where it is tapped, with the block's places asked for.
    await page.getByText('1 of 11').waitFor();
    await page.locator('.photo-picture[data-placing]').waitFor();
    const box = await page.locator('.photo-picture').boundingBox();
    await page.touchscreen.tap((box?.x ?? 0) + 150, (box?.y ?? 0) + 150);
    await page.getByText('2 of 11').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});
