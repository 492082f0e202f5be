import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { root } from './paths.mjs';
import { findChromium } from './tools.mjs';

// Pictures of every station in both themes and three widths, and of show mode, into .look/: `npm run look`, or
// `npm run look -- Leg Check` for some stations. Nothing passes or fails here: somebody has to look at them.

const WIDTHS = [
  { name: 'wide', width: 1440, height: 900 },
  { name: 'tablet', width: 1024, height: 768 },
  { name: 'narrow', width: 390, height: 844 },
] as const;
const THEMES = ['daylight', 'chalkboard'] as const;

const wanted = process.argv.slice(2);
const folder = join(root, '.look');
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder);

await build({ root, logLevel: 'warn', build: { outDir: join(root, '.look', 'app') } });
const server = await preview({
  root,
  logLevel: 'warn',
  build: { outDir: join(root, '.look', 'app') },
  preview: { port: 4473 },
});
const home = server.resolvedUrls?.local[0];
if (home === undefined) throw new Error('The built app could not be served.');
const browser = await chromium.launch({
  executablePath: findChromium(),
  chromiumSandbox: process.getuid?.() !== 0,
  args: ['--disable-gpu', '--disable-quic', '--no-first-run'],
});
let count = 0;
try {
  for (const { name, width, height } of WIDTHS) {
    for (const theme of THEMES) {
      const context = await browser.newContext({
        viewport: { width, height },
        locale: 'en-GB',
        hasTouch: name !== 'wide',
        reducedMotion: 'reduce',
      });
      const page = await context.newPage();
      await page.goto(home);
      await page.locator('.way-in').waitFor();
      if (wanted.length === 0) await keep(page, `${name}-${theme}-first-visit`, false);
      await page.getByRole('button', { name: /^Look at the example/ }).click();
      await page.locator('.hint').waitFor();
      if (wanted.length === 0) await keep(page, `${name}-${theme}-example`, false);
      await page.evaluate((chosen) => {
        localStorage.setItem('legwork.theme', chosen);
        localStorage.setItem('legwork.hints', 'button how path');
      }, theme);
      await page.reload();
      await page.locator('.stop').first().waitFor();
      for (const station of await stationsOf(page)) {
        await page.getByRole('button', { name: station, exact: true }).click();
        await page.locator('.stop-inside').filter({ hasText: /\S/ }).waitFor();
        if (station === 'Sew') await page.locator('.sew-step').waitFor();
        await keep(page, `${name}-${theme}-${station.toLowerCase()}`, name === 'narrow' && theme === 'daylight');
      }
      if (wanted.length === 0 || wanted.includes('Show')) await showMode(page, `${name}-${theme}`);
      await context.close();
    }
  }
} finally {
  await browser.close();
  await server.close();
  rmSync(join(folder, 'app'), { recursive: true, force: true });
}
console.log(`${count} pictures in .look/`);

async function stationsOf(page: Page): Promise<readonly string[]> {
  const names = await page.locator('.stop-name').allTextContents();
  return wanted.length === 0 ? names : names.filter((name) => wanted.includes(name));
}

/** The join on its way, the working, and what a class sees. */
async function showMode(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Leg', exact: true }).click();
  await page.getByRole('button', { name: 'Play the join' }).click();
  await page.getByRole('slider', { name: 'From the blocks to the leg' }).fill('0.5');
  await keep(page, `${name}-join`, false);
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'Working', exact: true }).click();
  await page.locator('.working').waitFor();
  await keep(page, `${name}-working`, false);
  await page.getByRole('button', { name: 'Working', exact: true }).click();
  const show = page.getByRole('button', { name: /^Show/ });
  // A phone has none.
  if (!(await show.isVisible())) return;
  await show.click();
  await page.locator('.show').waitFor();
  await keep(page, `${name}-show`, false);
  for (let i = 0; i < 2; i += 1) await page.keyboard.press('ArrowRight');
  await keep(page, `${name}-show-step`, false);
}

async function keep(page: Page, name: string, whole: boolean): Promise<void> {
  await page.waitForTimeout(150);
  await page.screenshot({ path: join(folder, `${name}.png`) });
  if (whole) await page.screenshot({ path: join(folder, `${name}-whole.png`), fullPage: true });
  count += 1;
}
