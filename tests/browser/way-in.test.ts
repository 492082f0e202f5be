import { readFile } from 'node:fs/promises';
import type { Browser, Download, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { writeBlocksSvg } from '../../src/files/svg/blocks';
import { fieldText } from '../../src/length';
import { draft, exampleProject, type Project } from '../../src/project';
import { openPdf } from '../outside/paper/render';
import { faultsOf } from './faults';
import { keptTexts } from './kept-texts';
import { launchChromium, type OpenedApp, openAppAtFirst } from './open-app';

// The three ways in, as somebody finds them who never was here before.

const WIDE = { width: 1366, height: 768 };
const NARROW = { width: 390, height: 844 };

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

async function arrive(viewport: typeof WIDE, locale: string): Promise<Page> {
  app = await openAppAtFirst(browser, { viewport, locale, reducedMotion: 'reduce' });
  return app.page;
}

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const name = (page: Page) => page.getByLabel('Name of the project');
const ways = (page: Page) => page.locator('.way-in .way-name').allTextContents();
const THREE = ['Draft for a body', 'Bring my own block', 'Look at the example'];

async function saved(page: Page): Promise<Project> {
  const download = page.waitForEvent('download');
  await page.keyboard.press('Control+s');
  return JSON.parse(await readFile(await (await download).path(), 'utf8'));
}

describe.each([
  ['en-US', WIDE, 'in', 'Letter', '⅝'],
  ['en-US', NARROW, 'in', 'Letter', '⅝'],
  ['en-GB', WIDE, 'cm', 'A4', '1.5'],
  ['en-GB', NARROW, 'cm', 'A4', '1.5'],
  ['de-DE', WIDE, 'cm', 'A4', '1.5'],
  ['de-DE', NARROW, 'cm', 'A4', '1.5'],
] as const)('in %s at %o', (locale, viewport, unit, sheet, allowance) => {
  test(`a pair for a body is begun and measured in ${unit}, for ${sheet}, with nothing of anybody else’s`, async () => {
    const page = await arrive(viewport, locale);
    expect(await ways(page)).toEqual(THREE);
    for (const way of THREE) expect(await button(page, new RegExp(`^${way}`)).boundingBox()).toBeTruthy();
    // All of it in sight at once, and no drawing of a stranger’s.
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(viewport.height);
    expect(await page.locator('.drawing').count()).toBe(0);
    await button(page, /^Draft for a body/).click();
    await page.getByRole('group', { name: 'Worn for sleeping' }).waitFor();
    expect(
      await page.getByRole('group', { name: 'Worn for sleeping' }).getByRole('radio', { checked: true }).count(),
    ).toBe(0);
    await page.getByText(/catches fire easily/).waitFor();
    expect(await field(page, 'Waist').inputValue()).toBe('');
    expect(
      await page
        .locator('.field-box', { has: field(page, 'Waist') })
        .locator('.field-unit')
        .textContent(),
    ).toBe(unit);
    // Nothing is held against a body that nobody has measured.
    expect(await page.locator('.verdict, .stop-result:not(:empty)').count()).toBe(0);
    const { allowances, paper, units } = await saved(page);
    expect([fieldText(allowances.inseam, units), paper.sheet]).toEqual([allowance, sheet]);
  });
});

describe.each([WIDE, NARROW])('at %o', (viewport) => {
  test('the example is looked at, stays over a reload, and is nobody’s before it is changed', async () => {
    const page = await arrive(viewport, 'en-GB');
    expect(await faultsOf(page)).toEqual([]);
    await button(page, /^Look at the example/).click();
    await field(page, 'Hem depth').waitFor();
    expect(await name(page).inputValue()).toBe('Flannel bottoms, first pair');
    await page.reload();
    await field(page, 'Hem depth').waitFor();
    expect(await keptTexts(page)).toEqual([]);
    await button(page, 'New').click();
    await page.getByText('The example stays as it is').waitFor();
    await page.keyboard.press('Escape');
    await field(page, 'Hem depth').fill('4.4');
    await page.getByText(/^kept on this computer/).waitFor();
    await button(page, 'New').click();
    await page.getByText('“Flannel bottoms, first pair” stays on this computer: you find it under Projects.').waitFor();
    await button(page, /^Draft for a body/).click();
    await field(page, 'Who it is for').fill('Nora');
    expect(await name(page).inputValue()).toBe('Lounge pant for Nora');
    await button(page, 'Projects').click();
    await button(page, 'open Flannel bottoms, first pair').click();
    expect(await field(page, 'Hem depth').inputValue()).toBe('4.4');
  });

  test('a block of one’s own is brought as a drawing, and its body is still to be measured', async () => {
    const page = await arrive(viewport, 'en-GB');
    await button(page, /^Bring my own block/).click();
    await button(page, /^From a photograph/).click();
    await page.getByRole('dialog', { name: 'Blocks from a photograph' }).waitFor();
    await page.keyboard.press('Escape');
    expect(await ways(page)).toEqual(THREE);
    const drafted = draft(exampleProject);
    if (!drafted.ok) throw new Error('the example can not be drafted');
    const buffer = Buffer.from(writeBlocksSvg(drafted.value));
    await page
      .getByLabel('Drawing of my blocks')
      .setInputFiles({ name: 'mine.svg', mimeType: 'image/svg+xml', buffer });
    await page.getByText('These blocks were brought along.').waitFor();
    await page.getByText('The blocks of “mine.svg” are on the table.').waitFor();
    expect(await name(page).inputValue()).toBe('My lounge pant');
    await page.locator('.stop', { hasText: 'Body' }).getByText('still to be measured').waitFor();
    expect(await page.locator('.verdict').count()).toBe(0);
  });
});

/** The text of a PDF that is being saved, its lines run on. */
async function textOf(download: Promise<Download>): Promise<string> {
  const pdf = openPdf(await readFile(await (await download).path()));
  const text = pdf.text().replace(/\s+/g, ' ');
  pdf.close();
  return text;
}

/** From the first sight of the page to files: fields that are gone to count, what is typed into them does not. */
const MOST_PRESSES = 15;

describe.each([WIDE, NARROW])('at %o', (viewport) => {
  test(`a sewist in America has her files after ${MOST_PRESSES} presses at most, beside what she types`, async () => {
    const page = await arrive(viewport, 'en-US');
    let presses = 0;
    const press = async (one: Locator) => {
      presses += 1;
      await one.click();
    };
    const type = async (label: string, text: string) => {
      await press(field(page, label));
      await field(page, label).fill(text);
    };
    const choose = async (label: string, choice: string) => {
      presses += 1;
      await page.getByRole('combobox', { name: label, exact: true }).selectOption({ label: choice });
    };
    await press(button(page, /^Draft for a body/));
    await press(page.getByRole('group', { name: 'Worn for sleeping' }).getByRole('radio', { name: 'yes' }));
    await type('Waist', '38');
    await type('Hip', '41');
    await press(button(page, /^Estimate body rise: /));
    await type('Pants inseam', '30');
    await page.locator('.finished .measures').waitFor();
    await press(button(page, 'Edges'));
    await choose('Waist finish', 'fold-over casing, drawstring');
    await choose('Pocket', 'one patch, behind');
    await press(button(page, 'Cloth'));
    await type('Width of the cloth', '45');
    await press(button(page, 'Paper'));
    const download = page.waitForEvent('download');
    await press(button(page, /^Print the pattern: \d+ sheets/));
    const sheets = await textOf(download);
    expect(presses).toBeLessThanOrEqual(MOST_PRESSES);
    const { body, cloth, paper } = await saved(page);
    expect([body.bodyRise, cloth.width, paper.sheet]).toEqual(['estimated', 45 * 25.4, 'Letter']);

    // Nobody measured her rise: screen, cover and fit sheet say so, and within what bodies like hers lie.
    const told =
      /Body rise was not measured: 8 in is estimated from waist, hip, and pants inseam; nine in ten bodies like this one have [\d ⅛¼⅜½⅝¾⅞]+ in to [\d ⅛¼⅜½⅝¾⅞]+ in\./;
    expect(sheets).toMatch(told);
    await button(page, 'Sew').click();
    const fit = page.waitForEvent('download');
    await button(page, /^Fit sheet, PDF/).click();
    expect(await textOf(fit)).toMatch(told);
    await button(page, 'Check').click();
    const check = page.locator('#check-measured', { hasText: told });
    await check.getByText('doubtful', { exact: true }).waitFor();
  });
});
