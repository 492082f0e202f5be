import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchChromium, openApp } from './open-app';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

test('blocks saved as a drawing are brought back, the same, and one step to undo', async () => {
  const { page, complaints, strangers, close } = await openApp(browser);
  await page.getByRole('button', { name: 'Blocks', exact: true }).click();
  // The drawing comes with its station, later than the button that opens it.
  const lines = page.locator('.drawing [data-block]');
  const drawn = () => lines.first().getAttribute('d');
  await lines.first().waitFor({ state: 'attached' });
  const before = await drawn();
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: /^Save these blocks/ }).click();
  const file = await (await saved).path();
  await page.getByLabel('Drawing of the blocks').setInputFiles(file);
  await page.getByText('These blocks were brought along.').waitFor();
  expect(await page.getByRole('status').filter({ hasText: 'are on the table' }).count()).toBe(1);
  await page.getByRole('button', { name: /^Undo/i }).first().click();
  await page.getByRole('textbox', { name: 'Ease at the hip' }).waitFor();
  expect(await drawn()).toBe(before);
  expect([complaints, strangers]).toEqual([[], []]);
  await close();
});
