import { readFile } from 'node:fs/promises';
import { unzipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchChromium, openApp } from './open-app';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

const HEADS = 'Name;Waist (cm);Hip (cm);Body rise (cm);Inside leg (cm)';
const rows = (count: number) =>
  Array.from({ length: count }, (_, i) => `Learner ${i + 1};${74 + (i % 20)};${102 + (i % 9)},5;27;76`);
const table = (name: string, lines: readonly string[]) => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from([HEADS, ...lines, ''].join('\r\n')),
});

async function openSheet(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Paper', exact: true }).click();
  await page.getByRole('button', { name: /^Class$/ }).click();
}

test('a class: an empty table, a look through the rows with the bad one named, the set, and Stop', async () => {
  const app = await openApp(browser);
  const { page } = app;
  await openSheet(page);
  const empty = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save an empty table' }).click();
  expect(await readFile(await (await empty).path(), 'utf8')).toContain('# where the tape goes');

  await page.getByLabel('Table of bodies').setInputFiles(table('evening.csv', [...rows(2), 'Ben;74;1o2;27;76']));
  await page.getByText('3 rows: 2 can be drafted, 1 can’t; 1 to look at.').waitFor();
  await page.getByText('Hip (cm): "1o2": isn’t a length; write a number such as 102.5 cm.').waitFor();
  // No column has the hip depth: nobody needs a look for that, but each row tells the doubt.
  await expect.poll(() => page.getByText(/^Doubtful: .*Estimated, not measured: hip depth/).count()).toBe(2);
  // On a narrow page the rows need no scrolling sideways.
  await page.setViewportSize({ width: 390, height: 844 });
  const list = page.getByLabel('The rows of the table');
  expect(await list.evaluate((box) => box.scrollWidth - box.clientWidth)).toBe(0);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  for (const kind of [/^Patterns/, /^Bodies on one drawing/]) await page.getByLabel(kind).uncheck();
  const set = page.waitForEvent('download');
  await page.getByRole('button', { name: /^Make the set, ZIP/ }).click();
  const download = await set;
  expect(download.suggestedFilename()).toMatch(/\.class\.zip$/);
  expect(Object.keys(unzipSync(await readFile(await download.path()))).sort()).toEqual([
    'Learner-1/Learner-1.fit.pdf',
    'Learner-1/Learner-1.handout.pdf',
    'Learner-1/Learner-1.legwork.json',
    'Learner-2/Learner-2.fit.pdf',
    'Learner-2/Learner-2.handout.pdf',
    'Learner-2/Learner-2.legwork.json',
    'samples.pdf',
    'summary.csv',
    'summary.pdf',
  ]);

  // A large one: it tells whose turn it is, goes on while its sheet is closed, and is stopped.
  let downloads = 0;
  page.on('download', () => {
    downloads += 1;
  });
  await page.getByLabel('Table of bodies').setInputFiles(table('all.csv', rows(40)));
  await page.getByText('40 rows: all can be drafted; none to look at.').waitFor();
  await page.getByRole('button', { name: /^Make the set, ZIP/ }).click();
  await page.getByText(/^Learner 2\b/).waitFor({ state: 'attached' });
  await page.getByRole('button', { name: 'close' }).click();
  await page.getByRole('progressbar', { name: 'How far the file has come' }).waitFor();
  await page.getByRole('button', { name: 'Stop' }).click();
  await page.getByRole('progressbar').waitFor({ state: 'detached' });
  expect(downloads).toBe(0);

  // A table that is none is refused in words.
  await page.getByRole('button', { name: /^Class$/ }).click();
  await page.getByLabel('Table of bodies').setInputFiles(table('none.csv', []));
  await page
    .getByRole('alert')
    .getByText(/holds no body/)
    .waitFor();
  expect([app.complaints, app.strangers]).toEqual([[], []]);
  await app.close();
});

test('a table that is carried over the page is shown where it would go, and opens the class when it is let go', async () => {
  const app = await openApp(browser);
  const { page } = app;
  const carried = (type: string, name: string, text: string) =>
    page.evaluateHandle(
      (file) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([file.text], file.name, { type: file.type }));
        return transfer;
      },
      { type, name, text },
    );
  const drawing = await carried('image/svg+xml', 'blocks.svg', '<svg/>');
  await page.dispatchEvent('.table-window', 'dragover', { dataTransfer: drawing });
  await page.getByText('Let go to bring the blocks of this drawing to the station Blocks.').waitFor();
  await page.dispatchEvent('body', 'dragleave', { dataTransfer: drawing });
  await page.locator('.carried').waitFor({ state: 'detached' });

  const rowsOfTwo = await carried('text/csv', 'evening.csv', [HEADS, ...rows(2), ''].join('\r\n'));
  await page.dispatchEvent('.table-window', 'dragover', { dataTransfer: rowsOfTwo });
  await page.getByText('Let go to open the class with this table.').waitFor();
  await page.dispatchEvent('.table-window', 'drop', { dataTransfer: rowsOfTwo });
  await page.getByText('2 rows: all can be drafted; none to look at.').waitFor();
  expect(await page.locator('.carried').count()).toBe(0);
  expect(app.complaints).toEqual([]);
  await app.close();
});

test('a class’s table is filled in on the screen: typed, pasted, undone, kept over a reload, saved', async () => {
  const app = await openApp(browser);
  const { page } = app;
  await openSheet(page);
  const lines = [...rows(20), 'Ben;74;1o2;27;76', 'Cy;;102;27;76', 'Di;;102;27;76'];
  await page.getByLabel('Table of bodies').setInputFiles(table('evening.csv', lines));
  await page.getByText('23 rows: 20 can be drafted, 3 can’t; 3 to look at.').waitFor({ timeout: 60_000 });
  await page.getByRole('radio', { name: 'those to look at' }).check();
  const cells = (name: string) => page.getByRole('group', { name: `Cells of ${name}` }).getByRole('textbox');
  await cells('Ben').fill('102');
  await cells('Ben').press('Enter');
  await page.getByText('21 can be drafted, 2 can’t; 2 to look at.').waitFor();
  // On to the next that wants something; what was mended stays in sight.
  await expect.poll(() => cells('Cy').evaluate((cell) => cell === document.activeElement)).toBe(true);
  await page.getByRole('button', { name: 'Put back Hip (cm)' }).waitFor();
  await cells('Cy').evaluate((cell) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', '75\n76\n');
    cell.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  });
  await page.getByText('23 rows: all can be drafted; none to look at.').waitFor();
  expect(await cells('Di').inputValue()).toBe('76');
  await page.keyboard.press('Control+z');
  await page.getByText('21 can be drafted, 2 can’t; 2 to look at.').waitFor();
  await page.getByRole('button', { name: 'redo', exact: true }).click();
  await page.getByText('23 rows: all can be drafted; none to look at.').waitFor();

  // A wrong file takes nothing away, and neither does a reload.
  await page.getByLabel('Table of bodies').setInputFiles(table('none.csv', []));
  await page.getByText('The table before it, “evening.csv”, is still here.').waitFor();
  await page.reload();
  await openSheet(page);
  await page.getByText('23 rows: all can be drafted; none to look at.').waitFor({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Put back Hip (cm)' }).waitFor();
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the table, CSV' }).click();
  const text = await readFile(await (await saved).path(), 'utf8');
  expect(text).toContain('Ben;74;102;27;76\r\nCy;75;102;27;76\r\nDi;76;102;27;76\r\n');
  // A readable one that is not meant is undone like a cell.
  await page.getByLabel('Table of bodies').setInputFiles(table('other.csv', rows(2)));
  await page.getByText('2 rows: all can be drafted; none to look at.').waitFor();
  await page.getByRole('button', { name: 'undo', exact: true }).last().click();
  await page.getByRole('heading', { name: 'evening.csv' }).waitFor();
  expect([app.complaints, app.strangers]).toEqual([[], []]);
  await app.close();
});
