import { readFile } from 'node:fs/promises';
import { preview } from 'vite';
import { expect, test } from 'vitest';
import { root } from '../../.house/paths.mjs';
import { launchChromium, lookAtExample, newWindow } from './open-app';

test('after the first visit everything works with the network off and the server gone: reload, change, PDF', async () => {
  const server = await preview({ root, base: '/sewing/legwork/', logLevel: 'warn', preview: { port: 4283 } });
  const browser = await launchChromium();
  const context = await newWindow(browser, { serviceWorkers: 'allow' });
  const page = await context.newPage();
  const strangers: string[] = [];
  const home = server.resolvedUrls?.local[0] ?? '';
  context.on('request', (request) => {
    if (!request.url().startsWith(home) && !/^(data|blob):/.test(request.url())) strangers.push(request.url());
  });
  await page.goto(home);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await server.close();
  await context.setOffline(true);

  await page.reload();
  await lookAtExample(page);
  await page.getByRole('textbox', { name: 'Hem depth', exact: true }).fill('4.4');
  await page.getByRole('button', { name: 'Paper', exact: true }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: /^Print the pattern:/ }).click();
  const bytes = await readFile(await (await download).path());
  expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
  expect(bytes.length).toBeGreaterThan(10_000);
  await page.getByRole('button', { name: 'Projects' }).click();
  await page.getByText('Legwork works here without a network').waitFor();
  expect(
    await page.evaluate(() => [...document.fonts].filter((font) => font.status === 'loaded').length),
  ).toBeGreaterThan(2);
  expect(strangers).toEqual([]);
  await browser.close();
});
