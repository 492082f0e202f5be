import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchChromium, lookAtExample, newWindow } from './open-app';

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

/** What a browser does whose storage is not to be had: run in the page before the app. */
const STORAGES: Readonly<Record<string, () => void>> = {
  'there is none, and notes are forbidden': () => {
    const forbidden = () => {
      throw new DOMException('forbidden', 'SecurityError');
    };
    Object.defineProperty(window, 'indexedDB', { value: undefined });
    Object.defineProperty(window, 'localStorage', { get: forbidden });
    Object.defineProperty(window, 'sessionStorage', { get: forbidden });
  },
  'to open it throws': () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('forbidden', 'SecurityError');
    };
  },
  'it never answers': () => {
    IDBFactory.prototype.open = () => ({}) as IDBOpenDBRequest;
  },
};

test.each(Object.entries(STORAGES))('where %s everything works, and that is said once', async (_, storage) => {
  const context = await newWindow(browser);
  await context.addInitScript(storage);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(String(error)));
  await page.goto(inject('appUrl'));
  await lookAtExample(page);
  const said = page.getByText('This browser keeps nothing for Legwork');
  await said.first().waitFor();
  const depth = page.getByRole('textbox', { name: 'Hem depth', exact: true });
  await page.getByRole('button', { name: 'dismiss' }).click();
  await depth.fill('4.4');
  await page.getByRole('button', { name: /^undo/ }).click();
  await page.getByRole('button', { name: /^redo/ }).click();
  expect(await depth.inputValue()).toBe('4.4');
  await page.getByRole('button', { name: 'Projects' }).click();
  const sheet = page.getByRole('dialog', { name: 'Projects' });
  await sheet.getByRole('tab', { name: 'Bodies' }).click();
  await sheet.getByRole('button', { name: 'Keep this body' }).click();
  await sheet.getByRole('tab', { name: 'Projects' }).click();
  await sheet.getByText('This browser keeps nothing for Legwork').waitFor();
  await sheet.getByRole('button', { name: 'close' }).click();
  expect(await page.locator('.notice').count()).toBe(0);
  expect(await page.locator('.bar-kept').textContent()).toBe('not kept: save it as a file');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file', exact: true }).click();
  await download;
  expect(complaints).toEqual([]);
  await context.close();
});
