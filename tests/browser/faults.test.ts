import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { exampleProject, saveProject } from '../../src/project';
import { faultsInBothThemes, faultsOf, OF_COLOURS } from './faults';
import { launchChromium, type OpenedApp, openAppAgain } from './open-app';

let browser: Browser;
let app: OpenedApp;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

afterEach(() => app.close());

async function open(width: number, height: number): Promise<Page> {
  app = await openAppAgain(browser, { viewport: { width, height }, reducedMotion: 'reduce' });
  return app.page;
}

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

async function goTo(page: Page, station: string): Promise<void> {
  await button(page, station).click();
  if (station === 'Sew') await page.getByRole('region', { name: 'Step of the sewing' }).waitFor();
}

/** What can be read as a project, but for one number. */
const broken = saveProject(exampleProject).replace(/"spread": [\d.]+/, '"spread": 9999');

/** A table of bodies. */
const tableOf = (rows: readonly string[]) => ({
  name: 'bodies.csv',
  mimeType: 'text/csv',
  buffer: Buffer.from(['Name,Waist,Hip,Body rise,Inside leg', ...rows, ''].join('\n')),
});

const STATIONS = ['Body', 'Blocks', 'Leg', 'Edges', 'Check', 'Cloth', 'Paper', 'Sew'];

/** Everything that the screen can show, one after the other; each leaves the page as the next one needs it. */
const SHOWN: readonly (readonly [string, (page: Page) => Promise<unknown>])[] = [
  ['the first visit', (page) => page.locator('.hint').waitFor()],
  ['a chalk line', (page) => button(page, /^Keep this outline/).click()],
  ...STATIONS.map((station) => [station, (page: Page) => goTo(page, station)] as const),
  [
    'every measurement',
    async (page) => {
      await goTo(page, 'Body');
      for (const summary of await page.locator('.stop-inside summary').all()) await summary.click();
      await field(page, 'Crotch length').focus();
      // To the top, as on a way down: else chance has a field half under the stops, and that half is called small.
      await field(page, 'Crotch length').evaluate((one) => one.scrollIntoView({ block: 'start' }));
    },
  ],
  [
    // A doubtful check, a sentence beside a field, and the drawing that waits for it.
    'what is not good',
    async (page) => {
      await goTo(page, 'Leg');
      await field(page, 'Spread').fill('0.5');
      await page.getByText('More of the leg').click();
      await field(page, 'Raise the waist').fill('much');
    },
  ],
  [
    'the join',
    async (page) => {
      await button(page, /^undo/).click();
      await button(page, 'Play the join').click();
      await page.getByRole('slider', { name: 'From the blocks to the leg' }).fill('0.5');
    },
  ],
  [
    'the working',
    async (page) => {
      await button(page, 'Done').click();
      await button(page, 'Working').click();
      await button(page, 'Next').click();
    },
  ],
  [
    'corrections after wearing',
    async (page) => {
      await button(page, 'Working').click();
      await goTo(page, 'Check');
      await button(page, /^I wore them/).click();
      await field(page, 'Flat seat').fill('1');
    },
  ],
  [
    'what was saved',
    (page) =>
      button(page, 'Save as a file')
        .click()
        .then(() => page.locator('.notice').waitFor()),
  ],
  [
    'the list of projects',
    async (page) => {
      await button(page, 'Projects').click();
      await button(page, 'Duplicate').click();
      await page
        .getByRole('dialog')
        .getByRole('button', { name: /^remove/ })
        .first()
        .waitFor();
    },
  ],
  ['the list of bodies', (page) => page.getByRole('tab', { name: 'Bodies' }).click()],
  [
    'a list of repairs',
    async (page) => {
      await page.keyboard.press('Escape');
      const file = { name: 'broken.json', mimeType: 'application/json', buffer: Buffer.from(broken) };
      await page.getByLabel('Project file').setInputFiles(file);
      await page.getByRole('dialog', { name: 'This file needs repair' }).waitFor();
    },
  ],
  [
    'the rows of a class, one of them bad',
    async (page) => {
      await page.keyboard.press('Escape');
      await goTo(page, 'Paper');
      await button(page, /^Class$/).click();
      await page.getByLabel('Table of bodies').setInputFiles(tableOf(['Ada,74,102,27,76', 'Ben,74,1o2,27,']));
      await page.getByText(/^2 rows/).waitFor();
    },
  ],
  [
    'a table that is none',
    async (page) => {
      await page.getByLabel('Table of bodies').setInputFiles(tableOf([]));
      await page.getByRole('alert').waitFor();
    },
  ],
  [
    'the ways to begin',
    async (page) => {
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: 'New', exact: true }).click();
      await page.getByRole('button', { name: /^Bring my own block/ }).click();
      await page.getByRole('button', { name: /^From a drawing/ }).waitFor();
    },
  ],
  [
    'a fresh project',
    async (page) => {
      await page.getByRole('button', { name: /^Draft for a body/ }).click();
      await page.getByText('Not your drawing yet.').waitFor();
    },
  ],
];

describe.each([
  [1440, 900],
  [390, 844],
])('at %i × %i, in either theme', (width, height) => {
  test('a machine finds no fault in anything that the screen can show', async () => {
    const page = await open(width, height);
    const found: string[] = [];
    for (const [what, show] of SHOWN) {
      await show(page);
      for (const fault of await faultsInBothThemes(page)) found.push(`${what}, ${fault}`);
    }
    expect(found).toEqual([]);
  });
});

test('a machine finds no fault in show mode, in either theme', async () => {
  const page = await open(1440, 900);
  await button(page, /^Show/).click();
  await page.locator('.show').waitFor();
  const found: string[] = [];
  // All of show mode is the same but for the drawing.
  for (const station of ['1', '3', '8']) {
    await page.keyboard.press(station);
    await page.keyboard.press('ArrowRight');
    for (const fault of await faultsInBothThemes(page)) found.push(`station ${station}, ${fault}`);
  }
  expect(found).toEqual([]);
});

test.each([
  [1024, 768],
  [844, 390],
])('a machine finds no fault where the path is arranged otherwise, at %i × %i', async (width, height) => {
  const page = await open(width, height);
  for (const station of ['Body', 'Leg']) {
    await goTo(page, station);
    expect(await faultsOf(page), station).toEqual([]);
  }
});

test.each([
  ['the system’s own colours', { forcedColors: 'active' }],
  ['more contrast', { contrast: 'more' }],
] as const)('a machine finds no fault in the colours of any station with %s', async (_what, media) => {
  const page = await open(1440, 900);
  await page.emulateMedia(media);
  for (const station of STATIONS) {
    await goTo(page, station);
    expect(await faultsOf(page, OF_COLOURS), station).toEqual([]);
  }
  await page.emulateMedia({ forcedColors: null, contrast: null });
});

test('a fault is found: the tests above can fail', async () => {
  const page = await open(1440, 900);
  await page.evaluate(() => {
    document.querySelector('.tools button')?.replaceChildren();
    document.querySelector<HTMLElement>('.measure')?.style.setProperty('color', '#bbb');
  });
  expect((await faultsOf(page)).some((fault) => fault.startsWith('button-name'))).toBe(true);
  // A grey that is too pale by daylight, and one that is too dark on the chalkboard.
  for (const [theme, grey] of [
    ['daylight', '#bbb'],
    ['chalkboard', '#444'],
  ] as const) {
    await page.evaluate((ink) => document.documentElement.style.setProperty('--ink', ink), grey);
    const contrast = (await faultsInBothThemes(page)).filter((fault) => fault.includes('color-contrast'));
    expect(contrast.map((fault) => fault.split(':')[0])).toContain(theme);
  }
});
