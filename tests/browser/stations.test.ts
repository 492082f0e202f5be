import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { launchChromium, type OpenedApp, openAppAgain } from './open-app';

let browser: Browser;
let app: OpenedApp;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

async function open(width: number, height: number, options = {}): Promise<Page> {
  app = await openAppAgain(browser, { viewport: { width, height }, ...options });
  return app.page;
}

afterEach(async () => {
  expect(app.complaints).toEqual([]);
  await app.close();
});

const STATIONS = ['Body', 'Blocks', 'Leg', 'Edges', 'Check', 'Cloth', 'Paper', 'Sew'];
const station = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const isOpen = (page: Page, name: string) =>
  expect.poll(() => station(page, name).getAttribute('aria-expanded')).toBe('true');

/** The stations that are not wholly to be seen, or lie under something. */
const outOfSight = (page: Page) =>
  page.locator('.stop-name button').evaluateAll((buttons) =>
    buttons.flatMap((button) => {
      const { left, right, top, bottom } = button.getBoundingClientRect();
      const above = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
      return top >= 0 && bottom <= innerHeight && left >= 0 && right <= innerWidth && button.contains(above)
        ? []
        : [button.textContent];
    }),
  );

describe.each([
  [1366, 768, 8],
  [1024, 768, 3],
  [390, 844, 8],
  [844, 390, 3],
])('at %i × %i', (width, height, count) => {
  test('every station stays in sight while what the open one holds goes by, and leads on to the next', async () => {
    const page = await open(width, height);
    for (const [i, name] of STATIONS.slice(0, count).entries()) {
      if (i === 0) await station(page, name).click();
      await isOpen(page, name);
      const next = page.getByRole('button', { name: `Next: ${STATIONS[i + 1]}` });
      if (i === STATIONS.length - 1) {
        expect(await page.getByRole('button', { name: /^Next: / }).count()).toBe(0);
        break;
      }
      await next.scrollIntoViewIfNeeded();
      await expect.poll(() => outOfSight(page), { message: name }).toEqual([]);
      await next.click();
      // The focus goes on to the station, for whoever works by keys.
      await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe(STATIONS[i + 1]);
    }
  });
});

describe('the address', () => {
  test('names the station, and the browser’s Back goes to the last one', async () => {
    const page = await open(1366, 768);
    const hash = () => new URL(page.url()).hash;
    const first = await page.locator('.stop[data-open] .stop-name').textContent();
    await station(page, 'Leg').click();
    await expect.poll(hash).toBe('#station=leg');
    await station(page, 'Cloth').click();
    await page.goBack();
    await isOpen(page, 'Leg');
    await page.goBack();
    await isOpen(page, first ?? '');
    await page.goForward();
    await isOpen(page, 'Leg');
    await page.reload();
    await isOpen(page, 'Leg');
  });
});

/** Gives every field of the open station the focus in turn, and tells of those that then lie under something or out of sight. */
const covered = (page: Page) =>
  page.evaluate(async () => {
    const found: string[] = [];
    for (const field of document.querySelectorAll<HTMLElement>('.stop-inside :is(.field-box input, select)')) {
      // What is folded away is asked for only once it is open.
      if (!field.checkVisibility()) continue;
      field.focus();
      await new Promise((frame) => requestAnimationFrame(frame));
      const { left, right, top, bottom } = field.getBoundingClientRect();
      const above = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
      if (above !== field || top < 0 || bottom > innerHeight) found.push(field.id);
    }
    return found;
  });

describe('on a phone', () => {
  test('nothing lies over the field that is asked for, with and without its keyboard', async () => {
    const page = await open(390, 844, { hasTouch: true });
    // As where a keyboard makes the page lower.
    for (const height of [844, 480]) {
      await page.setViewportSize({ width: 390, height });
      for (const name of ['Body', 'Leg', 'Edges', 'Cloth', 'Paper']) {
        await station(page, name).click();
        await page.locator('.stop-inside .field:visible').first().waitFor();
        expect(await covered(page), `${name}, ${height} high`).toEqual([]);
      }
    }
    // Where it covers the page instead, the drawing leaves more to the fields.
    await page.setViewportSize({ width: 390, height: 844 });
    const before = (await page.locator('.table').boundingBox())?.height ?? 0;
    await page.evaluate(() => document.documentElement.style.setProperty('--seen', '480px'));
    await expect.poll(async () => (await page.locator('.table').boundingBox())?.height ?? 0).toBeLessThan(before / 2);
  });

  test('a fraction is one press away where the pad of numbers has none', async () => {
    const page = await open(390, 844, { hasTouch: true });
    await page.getByRole('radio', { name: 'inch' }).locator('..').tap();
    await station(page, 'Edges').tap();
    const depth = page.getByRole('textbox', { name: 'Hem depth', exact: true });
    await depth.tap();
    await depth.fill('1');
    await page.getByRole('button', { name: '⅜', exact: true }).tap();
    await expect.poll(() => depth.inputValue()).toBe('1⅜');
    // The keyboard stays: the field still has the focus.
    expect(await depth.evaluate((field) => field === document.activeElement)).toBe(true);
  });
});
