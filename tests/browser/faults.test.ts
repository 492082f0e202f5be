import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { faultsOf } from './faults';
import { launchChromium, type OpenedApp, openApp } from './open-app';

let browser: Browser;
let app: OpenedApp;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

afterEach(() => app.close());

async function open(width: number, height: number): Promise<Page> {
  app = await openApp(browser, { viewport: { width, height }, reducedMotion: 'reduce' });
  return app.page;
}

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });

async function goTo(page: Page, station: string): Promise<void> {
  await button(page, station).click();
  if (station === 'Sew') await page.getByRole('region', { name: 'Step of the sewing' }).waitFor();
}

describe.each(['daylight', 'chalkboard'] as const)('in the theme %s', (theme) => {
  // Names, roles and targets are the same in both themes: in the second the contrast alone is looked at again.
  const what = theme === 'daylight' ? 'all' : 'contrast';
  const faultless = async (page: Page, where: string) => expect(await faultsOf(page, what), where).toEqual([]);

  test('a machine finds no fault at any station, in the join, in the working and in show mode', async () => {
    const page = await open(1440, 900);
    if (theme === 'chalkboard') await button(page, 'Chalkboard').click();
    await button(page, /Keep this outline/).click();
    for (const station of await page.locator('.stop-name').allTextContents()) {
      await goTo(page, station);
      await faultless(page, station);
    }
    await goTo(page, 'Leg');
    // A check to mind, a sentence beside a field, and the drawing that waits for it.
    await page.getByRole('textbox', { name: 'Spread', exact: true }).fill('0.5');
    await page.getByRole('textbox', { name: 'Raise the waist', exact: true }).fill('much');
    await faultless(page, 'what is not good');
    await button(page, /undo/).click();
    await button(page, /Play the join/).click();
    await page.getByRole('slider', { name: 'From the blocks to the leg' }).fill('0.5');
    await faultless(page, 'the join');
    await button(page, 'Done').click();
    await button(page, 'Working').click();
    await button(page, 'Next').click();
    await faultless(page, 'the working');
    await button(page, /^Show/).click();
    await page.locator('.show').waitFor();
    for (let station = 1; station <= 8; station += 1) {
      await page.keyboard.press(String(station));
      await page.keyboard.press('ArrowRight');
      // All of show mode is the same but for the drawing.
      if (station % 3 === 1) await faultless(page, `show mode, station ${station}`);
    }
  });
});

test.each([
  [1024, 768, ['Body', 'Leg', 'Edges', 'Paper']],
  [390, 844, ['Body', 'Blocks', 'Leg', 'Edges', 'Check', 'Cloth', 'Paper', 'Sew']],
] as const)('a machine finds no fault at %i × %i', async (width, height, stations) => {
  const page = await open(width, height);
  for (const station of stations) {
    await goTo(page, station);
    expect(await faultsOf(page), station).toEqual([]);
  }
});

test('a fault is found: the tests above can fail', async () => {
  const page = await open(1440, 900);
  await page.evaluate(() => {
    document.querySelector('.tools button')?.replaceChildren();
    document.querySelector<HTMLElement>('.measure')?.style.setProperty('color', '#bbb');
  });
  const found = await faultsOf(page);
  expect(found.some((fault) => fault.startsWith('button-name'))).toBe(true);
  await page.evaluate(() => document.documentElement.style.setProperty('--ink', '#bbb'));
  expect((await faultsOf(page, 'contrast')).some((fault) => fault.startsWith('color-contrast'))).toBe(true);
});
