import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchChromium, openAppAgain } from './open-app';

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

/** The colours of the first of each: what it stands on, its letters, its border, its line and its outline. */
const coloursOf = (page: Page, ...places: readonly string[]) =>
  page.evaluate(
    (selectors) =>
      selectors.map((selector) => {
        const element = document.querySelector(selector);
        if (!element) throw new Error(`nothing at ${selector}`);
        const { backgroundColor, color, stroke, outlineColor, outlineStyle } = getComputedStyle(element);
        return { backgroundColor, color, stroke, outlineColor, outlineStyle };
      }),
    places,
  );

test('in the system’s own colours every choice is seen, and the drawing', async () => {
  const { page, close } = await openAppAgain(browser, { viewport: { width: 1366, height: 768 } });
  await page.emulateMedia({ forcedColors: 'active' });
  await page.getByRole('button', { name: 'Edges', exact: true }).click();
  await page.getByRole('button', { name: 'Chalkboard' }).click();
  const pairs = [
    ['.tools .switch-choice input:checked + span', '.tools .switch-choice input:not(:checked) + span'],
    ['.stop[data-open] .stop-knot', '.stop:not([data-open]) .stop-knot'],
    ['.bar button[aria-pressed="true"]', '.bar button:not([aria-pressed])'],
  ] as const;
  for (const [chosen, other] of pairs) {
    const [a, b] = await coloursOf(page, chosen, other);
    expect(a?.backgroundColor, chosen).not.toBe(b?.backgroundColor);
  }
  const [line, ground] = await coloursOf(page, '.drawing .line-cut', 'body');
  expect(line?.stroke).not.toBe(ground?.backgroundColor);
  await page.getByRole('radio', { name: 'laid flat' }).focus();
  await page.keyboard.press('ArrowLeft');
  const [focused] = await coloursOf(page, '.tools .switch-choice input:focus-visible + span');
  expect(focused?.outlineStyle).toBe('solid');
  expect(focused?.outlineColor).not.toBe(ground?.backgroundColor);
  await page.emulateMedia({ forcedColors: null });
  await close();
});

test('with more contrast nothing is quiet', async () => {
  const { page, close } = await openAppAgain(browser, { viewport: { width: 1366, height: 768 } });
  const quiet = async () => (await coloursOf(page, '.stop-result', 'body')).map((one) => one.color);
  expect(new Set(await quiet()).size).toBe(2);
  await page.emulateMedia({ contrast: 'more' });
  expect(new Set(await quiet()).size).toBe(1);
  await page.emulateMedia({ contrast: null });
  await close();
});
