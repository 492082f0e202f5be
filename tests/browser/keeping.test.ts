import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { keptTexts } from './kept-texts';
import { launchChromium, type OpenedApp, openApp } from './open-app';

let browser: Browser;
let app: OpenedApp;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

afterEach(async () => {
  expect(app.complaints).toEqual([]);
  expect(app.strangers).toEqual([]);
  await app.close();
});

async function open(width = 1440, height = 900): Promise<Page> {
  app = await openApp(browser, { viewport: { width, height } });
  await ready(app.page);
  return app.page;
}

const ready = (page: Page) => page.getByRole('button', { name: 'Edges', exact: true }).waitFor();
const depth = (page: Page) => page.getByRole('textbox', { name: 'Hem depth', exact: true });
const name = (page: Page) => page.getByLabel('Name of the project');
const kept = (page: Page) => page.getByText(/^kept on this computer/).waitFor();

/** Another tab of the same person, on the same computer. */
async function anotherTab(hash = ''): Promise<Page> {
  const page = await app.page.context().newPage();
  await page.goto(inject('appUrl') + hash);
  await ready(page);
  return page;
}

/** Changes the hem and waits until that is kept. */
async function keepDepth(page: Page, text: string): Promise<void> {
  await depth(page).fill(text);
  const wanted = `"depth": ${Math.round(Number(text) * 10)}`;
  await expect.poll(async () => (await keptTexts(page)).some((one) => one.includes(wanted))).toBe(true);
}

describe('a page that is loaded again in the middle of the work', () => {
  test('has lost nothing: numbers, the name, what can not be read, and what can be undone', async () => {
    const page = await open();
    await name(page).fill('Sunday');
    await keepDepth(page, '4.4');
    await page.getByRole('textbox', { name: 'Elastic width', exact: true }).fill('a bit');
    await keepDepth(page, '4.5');
    // This change is reloaded over at once, before it could come to the shelf.
    await depth(page).fill('4.6');
    await page.reload();
    await kept(page);
    expect(await depth(page).inputValue()).toBe('4.6');
    expect(await page.getByRole('textbox', { name: 'Elastic width', exact: true }).inputValue()).toBe('a bit');
    expect(await name(page).inputValue()).toBe('Sunday');
    for (let i = 0; i < 3; i += 1) await page.getByRole('button', { name: /undo/ }).click();
    expect(await depth(page).inputValue()).toBe('3');
    expect(await name(page).inputValue()).toBe('Flannel bottoms, first pair');
  });

  test('that was killed in the middle of a save has lost that save only', async () => {
    const page = await open();
    await keepDepth(page, '4.4');
    const session = await page.context().newCDPSession(page);
    const inTheMiddle = page.waitForEvent('console', (message) => message.text() === 'in the middle of a save');
    await page.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = function (...values) {
        const request = put.apply(this, values);
        // The transaction is kept open for good: only killing the page ends it.
        const goOn = () => {
          this.get('last').onsuccess = goOn;
        };
        goOn();
        console.log('in the middle of a save');
        return request;
      };
    });
    await depth(page).fill('5.5');
    await inTheMiddle;
    const other = await app.page.context().newPage();
    const crashed = page.waitForEvent('crash');
    void session.send('Page.crash').catch(() => undefined);
    await crashed;
    await other.goto(inject('appUrl'));
    await ready(other);
    await kept(other);
    expect(await depth(other).inputValue()).toBe('4.4');
  });
});

describe('two tabs', () => {
  test('do not eat each other’s work: the second is told, follows, and gets a copy with its first change', async () => {
    const first = await open();
    await name(first).fill('Sunday');
    await keepDepth(first, '4.1');
    const second = await anotherTab();
    await second.getByRole('alert').getByText('“Sunday” is open in another tab').waitFor();
    expect(await depth(second).inputValue()).toBe('4.1');
    await keepDepth(first, '4.2');
    await second.waitForFunction(
      () => (document.querySelector('#field-hem-depth') as HTMLInputElement).value === '4.2',
    );
    await depth(second).fill('6');
    await second.getByText('is now a project of its own').waitFor();
    await kept(second);
    expect(await name(second).inputValue()).toBe('Sunday, copy');
    await keepDepth(first, '4.3');
    await Promise.all([first.reload(), second.reload()]);
    await Promise.all([kept(first), kept(second)]);
    expect([await name(first).inputValue(), await depth(first).inputValue()]).toEqual(['Sunday', '4.3']);
    expect([await name(second).inputValue(), await depth(second).inputValue()]).toEqual(['Sunday, copy', '6']);
  });

  test('the one that stays goes on keeping when the other is closed', async () => {
    const first = await open();
    await keepDepth(first, '4.1');
    const second = await anotherTab();
    await second.getByRole('alert').waitFor();
    await keepDepth(first, '4.2');
    await first.close();
    await second.getByText('The other tab is closed').waitFor();
    await keepDepth(second, '4.4');
    expect(await name(second).inputValue()).toBe('Flannel bottoms, first pair');
  });
});

describe('a disk that is full', () => {
  test('is said in one sentence, and the work goes on', async () => {
    const page = await open();
    const session = await page.context().newCDPSession(page);
    const origin = new URL(inject('appUrl')).origin;
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await depth(page).fill('4.4');
    await page.getByRole('alert').getByText('There is no room left on this computer').waitFor();
    expect(await depth(page).inputValue()).toBe('4.4');
    await session.send('Storage.overrideQuotaForOrigin', { origin });
    await keepDepth(page, '4.5');
    await kept(page);
  });
});

describe('a link', () => {
  test('holds the whole project, and is opened as one of its own', async () => {
    const page = await open();
    await name(page).fill('For “Ütz” – ½');
    await depth(page).fill('4.4');
    await kept(page);
    await page.getByRole('button', { name: 'Projects' }).click();
    await page.getByRole('button', { name: 'Copy a link' }).click();
    const link = await page.getByLabel('Link that holds the project').inputValue();
    expect(link.length).toBeLessThan(2000);
    const other = await anotherTab(link.slice(link.indexOf('#')));
    await other.getByText('came with the link').waitFor();
    expect(await name(other).inputValue()).toBe('For “Ütz” – ½');
    expect(await depth(other).inputValue()).toBe('4.4');
    expect(new URL(other.url()).hash).toBe('#station=edges');
    // What was open before is one step back.
    await other.getByRole('button', { name: 'undo opening a link' }).click();
  });

  test('that was cut says so, and changes nothing', async () => {
    const page = await open();
    await keepDepth(page, '4.4');
    await page.evaluate(() => {
      location.hash = 'project=fY9BCsIwEEX';
    });
    await page
      .getByRole('alert')
      .getByText('This link is incomplete. Was the link cut off? Nothing here was changed.')
      .waitFor();
    expect(await depth(page).inputValue()).toBe('4.4');
  });
});

describe('the sheet of projects', () => {
  test('duplicates, opens, removes and puts back, by keys alone', async () => {
    const page = await open();
    await name(page).fill('Sunday');
    await keepDepth(page, '4.4');
    await page.getByRole('button', { name: 'Projects' }).focus();
    await page.keyboard.press('Enter');
    const sheet = page.getByRole('dialog', { name: 'Projects' });
    await sheet.getByRole('button', { name: 'Duplicate' }).press('Enter');
    const opener = sheet.getByRole('button', { name: 'open Sunday', exact: true });
    await opener.waitFor();
    await sheet.getByRole('button', { name: 'remove Sunday', exact: true }).press('Enter');
    await opener.waitFor({ state: 'detached' });
    await sheet.getByRole('button', { name: 'put it back' }).press('Enter');
    await opener.press('Enter');
    await sheet.waitFor({ state: 'detached' });
    expect(await name(page).inputValue()).toBe('Sunday');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Projects');
  });

  test('keeps a body apart, and puts it into another project', async () => {
    const page = await open();
    await page.getByRole('button', { name: 'Projects' }).click();
    await page.getByRole('tab', { name: 'Bodies' }).click();
    await page.getByLabel('Whose body this project is for').fill('Me, in May');
    await page.getByRole('button', { name: 'Keep this body' }).click();
    await page.getByText('Me, in May').first().waitFor();
    await page.getByRole('tab', { name: 'Projects' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'New' }).click();
    await page.getByRole('button', { name: /^Draft for a body/ }).click();
    const hip = page.getByRole('textbox', { name: 'Hip', exact: true });
    expect(await hip.inputValue()).toBe('');
    await page.getByRole('button', { name: 'Projects' }).click();
    await page.getByRole('tab', { name: 'Bodies' }).click();
    await page.getByRole('button', { name: 'put into this project Me, in May' }).click();
    expect(await hip.inputValue()).toBe('102');
    await page.getByRole('button', { name: /undo starting body/i }).waitFor();
  });
});

test('a file that needs repair is offered with the list of repairs, and opened only when that is agreed to', async () => {
  const page = await open();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file', exact: true }).click();
  const project = JSON.parse(await readFile(await (await download).path(), 'utf8'));
  project.leg.spread = 9999;
  project.body.hipGirth = 'broad';
  project.name = 'Broken';
  const buffer = Buffer.from(JSON.stringify(project));
  const file = { name: 'broken.json', mimeType: 'application/json', buffer };
  await page.getByLabel('Project file').setInputFiles(file);
  const sheet = page.getByRole('dialog', { name: 'This file needs repair' });
  await sheet.getByText('Was 9999; 25.4 is used.').waitFor();
  await sheet.getByRole('button', { name: 'Leave it' }).click();
  expect(await name(page).inputValue()).toBe('Flannel bottoms, first pair');
  await page.getByLabel('Project file').setInputFiles(file);
  await sheet.getByRole('button', { name: 'Open with these repairs' }).click();
  expect(await name(page).inputValue()).toBe('Broken');
  await page.getByText('Still to be measured.').waitFor();
});
