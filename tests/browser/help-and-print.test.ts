import { AxeBuilder } from '@axe-core/playwright';
import { PDFDocument } from 'pdf-lib';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchChromium, openAppAgain } from './open-app';

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

test('the help fits a phone, breaks no rule of access, and leads to a check whose place is then lit', async () => {
  const { page, complaints, close } = await openAppAgain(browser, { viewport: { width: 390, height: 844 } });
  await page.getByRole('button', { name: 'Help' }).click();
  const help = page.getByRole('dialog', { name: 'Help' });
  await help.getByRole('searchbox').fill('hip ease');
  const check = help.getByRole('listitem').filter({ hasText: 'Ease at the hip' }).first();
  await check.getByText('Ease at the hip', { exact: true }).click();
  await check.getByRole('img').waitFor();
  const { violations } = await new AxeBuilder({ page }).include('.sheet').analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await check.getByRole('button', { name: 'Show me where' }).click();
  await page.locator('.table .lit-ink').waitFor({ state: 'attached' });
  await expect.poll(() => page.locator('[aria-pressed="true"].check-name').textContent()).toBe('Ease at the hip');
  expect(complaints).toEqual([]);
  await close();
});

test('what is printed from the browser is one page that says it is not to scale and which file to print instead', async () => {
  const { page, close } = await openAppAgain(browser);
  await page.getByRole('button', { name: 'Check', exact: true }).click();
  await page.locator('.checks-good').waitFor();
  const pdf = await PDFDocument.load(await page.pdf({ format: 'A4', printBackground: true }));
  expect(pdf.getPageCount()).toBe(1);
  await page.emulateMedia({ media: 'print' });
  await page.getByText('Not to scale: cut nothing by this page.').waitFor();
  await page.getByText(/press “Print the pattern” at Paper/).waitFor();
  await page.locator('.table-paper').waitFor();
  // The list that stands at the station on the screen stands beside the measures on paper.
  await page
    .locator('.finished')
    .getByText(/checks are good$/)
    .waitFor();
  await page.getByRole('button', { name: 'Save as a file' }).waitFor({ state: 'hidden' });
  await page.emulateMedia({ media: null });
  await close();
});
