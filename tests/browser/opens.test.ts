import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchChromium, openApp } from './open-app';

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

test('the built app opens from a sub-folder without complaint, and asks nothing of anybody else', async () => {
  const app = await openApp(browser);
  await app.page.getByText('Legwork', { exact: true }).first().waitFor();
  await app.page.waitForLoadState('networkidle');
  expect(app.complaints).toEqual([]);
  expect(app.strangers).toEqual([]);
  await app.close();
});

test('the page’s own policy keeps it from asking anybody else, from scripts and from styles written into it', async () => {
  const app = await openApp(browser);
  await app.page.evaluate(async () => {
    await fetch('http://127.0.0.1:9/').catch(() => undefined);
    const style = document.createElement('style');
    style.textContent = 'body { visibility: hidden }';
    document.head.append(style);
    const script = document.createElement('script');
    script.textContent = 'document.title = "taken over"';
    document.head.append(script);
  });
  expect(app.strangers).toEqual([]);
  expect(await app.page.title()).toMatch(/^Legwork/);
  expect(await app.page.evaluate(() => getComputedStyle(document.body).visibility)).toBe('visible');
  for (const directive of ['connect-src', 'style-src', 'script-src'])
    expect(
      app.complaints.some((complaint) => complaint.includes(directive)),
      directive,
    ).toBe(true);
  await app.close();
});

test('complaints and strangers are noticed: the tests above can fail', async () => {
  const app = await openApp(browser, { bypassCSP: true });
  await app.page.evaluate(async () => {
    console.error('a complaint');
    await fetch('http://127.0.0.1:9/').catch(() => undefined);
  });
  expect(app.complaints).toContain('a complaint');
  expect(app.strangers).toEqual(['http://127.0.0.1:9/']);
  await app.close();
});
