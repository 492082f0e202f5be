import { readFile } from 'node:fs/promises';
import { unzipSync } from 'fflate';
import type { Browser, Download, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { SINGLE_FILES } from '../../src/files';
import { exampleProject, saveProject } from '../../src/project';
import { launchChromium, type OpenedApp, openAppAgain } from './open-app';

let browser: Browser;
let app: OpenedApp;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

async function open(width = 1440, height = 900): Promise<Page> {
  app = await openAppAgain(browser, { viewport: { width, height } });
  await app.page.getByRole('button', { name: 'Edges', exact: true }).waitFor();
  return app.page;
}

afterEach(async () => {
  // Whatever a test does, nothing goes wrong behind its back and nothing leaves the place the app came from.
  expect(app.complaints).toEqual([]);
  expect(app.strangers).toEqual([]);
  await app.close();
});

const goTo = (page: Page, station: string) => page.getByRole('button', { name: station, exact: true }).click();
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
/** Every line of the drawing. */
const lines = (page: Page) =>
  page.locator('.drawing path').evaluateAll((paths) => paths.map((path) => path.getAttribute('d')).join(' '));
const drawing = (page: Page) => page.locator('.drawing').first();

async function textOf(download: Promise<Download>): Promise<{ name: string; bytes: Buffer }> {
  const file = await download;
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

describe('the first screen', () => {
  test('is the finished example, its casing shown folded over, with measures and verdicts', async () => {
    const page = await open();
    expect((await lines(page)).length).toBeGreaterThan(200);
    expect(await page.locator('.folded-over').count()).toBe(2);
    await page.getByText('front', { exact: true }).waitFor();
    await page.getByText('back', { exact: true }).waitFor();
    expect(await page.locator('.measure').count()).toBeGreaterThanOrEqual(8);
    await page
      .locator('.finished')
      .getByText(/checks are good/)
      .waitFor();
  });

  test('shows every fraction in the print font', async () => {
    const page = await open();
    await page.getByRole('radio', { name: 'inch' }).check();
    await goTo(page, 'Body');
    await field(page, 'Hip').fill('40 5/8');
    await page.keyboard.press('Tab');
    expect(await field(page, 'Hip').inputValue()).toBe('40⅝');
    await page.waitForFunction(() =>
      [...document.fonts].some((f) => f.family.includes('Legwork') && f.status === 'loaded'),
    );
  });
});

describe('typing', () => {
  test('measurements in inches with fractions redraws the leg at each keystroke, and is undone by one press', async () => {
    const page = await open();
    await page.getByRole('radio', { name: 'inch' }).check();
    const before = await lines(page);
    await goTo(page, 'Body');
    await field(page, 'Hip').fill('38 1/4');
    await field(page, 'Waist').fill('29⅞');
    await field(page, 'Inside leg').fill('80cm');
    await goTo(page, 'Edges');
    const after = await lines(page);
    expect(after).not.toBe(before);
    await page.getByText('body 38¼ in', { exact: false }).waitFor();
    for (let i = 0; i < 3; i += 1) await page.getByRole('button', { name: /undo/ }).click();
    expect(await lines(page)).toBe(before);
  });

  test('what can not be read gives a sentence beside the field and keeps the last good drawing, greyed', async () => {
    const page = await open();
    const before = await lines(page);
    const depth = field(page, 'Hem depth');
    await depth.fill('three');
    expect(await depth.getAttribute('aria-invalid')).toBe('true');
    const problem = page.locator('#field-hem-depth-problem');
    expect(await problem.textContent()).toBe('“three” isn’t a length; write it like 102 cm, 40 1/8 in or 40⅛.');
    expect(await drawing(page).getAttribute('data-stale')).toBe('true');
    expect(await lines(page)).toBe(before);
    await depth.fill('4');
    expect(await drawing(page).getAttribute('data-stale')).toBeNull();
    expect(await lines(page)).not.toBe(before);
  });

  test('what can not be drawn does the same, and the drawing leads back to the field', async () => {
    const page = await open();
    const before = await lines(page);
    await goTo(page, 'Body');
    await field(page, 'Hip').fill('5');
    expect(await page.locator('#field-body-hipGirth-problem').textContent()).toBe('Must be 40 to 210 cm.');
    await goTo(page, 'Edges');
    expect(await lines(page)).toBe(before);
    await page.getByRole('button', { name: 'go there' }).click();
    await page.waitForFunction(() => document.activeElement?.id === 'field-body-hipGirth');
  });

  test('steps by arrow keys', async () => {
    const page = await open();
    await field(page, 'Hem depth').focus();
    await page.keyboard.press('ArrowUp');
    expect(await field(page, 'Hem depth').inputValue()).toBe('3.1');
  });
});

describe('a check that is not good', () => {
  test('offers its remedy as one press that can be undone, and says the new verdict', async () => {
    const page = await open();
    await goTo(page, 'Leg');
    await field(page, 'Spread').fill('0.5');
    await goTo(page, 'Check');
    const hip = page.locator('#check-hip-ease');
    expect(await hip.locator('.verdict').textContent()).toBe('doubtful');
    await page.getByText('Ease at the hip: now doubtful.').waitFor({ state: 'attached' });
    await hip.getByRole('button', { name: /^Spread by 1/ }).click();
    expect(await hip.locator('.verdict').textContent()).toBe('good');
    // The button is gone with the fault; the focus stays at the check, which stays in sight.
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('check-hip-ease');
    await page.getByText('Ease at the hip: now good.').waitFor({ state: 'attached' });
    await page.getByRole('button', { name: /undo spread by 1/ }).click();
    expect(await hip.locator('.verdict').textContent()).toBe('doubtful');
  });

  test('of nightwear for a child has its caution where sleeping is chosen', async () => {
    const page = await open();
    await goTo(page, 'Body');
    await page.getByText('More measurements').click();
    await field(page, 'Age').fill('6');
    const sleepwear = page.locator('.cautions', { hasText: 'For a child of 6 years' });
    await sleepwear.getByText('KEEP AWAY FROM FIRE').waitFor();
    await page.getByRole('group', { name: 'Worn for sleeping' }).getByRole('radio', { name: 'no' }).check();
    await sleepwear.getByText('loungewear is regarded as sleepwear').waitFor();
    expect(await page.getByText('KEEP AWAY FROM FIRE').count()).toBe(0);
  });
});

describe('the table', () => {
  test('is zoomed, panned and fitted by keys', async () => {
    const page = await open();
    const place = () => drawing(page).evaluate((element) => (element as SVGElement).style.transform);
    const fitted = await place();
    await page.locator('.table-window').focus();
    await page.keyboard.press('+');
    await page.keyboard.press('ArrowLeft');
    expect(await place()).not.toBe(fitted);
    await page.keyboard.press('f');
    expect(await place()).toBe(fitted);
  });

  test('is zoomed by the wheel about the pointer and panned by dragging', async () => {
    const page = await open();
    const place = () => drawing(page).evaluate((element) => (element as SVGElement).style.transform);
    const fitted = await place();
    await page.mouse.move(700, 400);
    await page.mouse.wheel(0, -200);
    await page.waitForFunction(
      (old) => (document.querySelector('.drawing') as SVGElement).style.transform !== old,
      fitted,
    );
    const zoomed = await place();
    await page.mouse.down();
    await page.mouse.move(760, 430, { steps: 3 });
    await page.mouse.up();
    expect(await place()).not.toBe(zoomed);
  });

  test('lights the lines of a step of the working', async () => {
    const page = await open();
    await goTo(page, 'Leg');
    await page.getByRole('button', { name: 'Working', exact: true }).click();
    const steps = page.locator('.step');
    await steps.first().waitFor();
    expect(await steps.count()).toBeGreaterThan(2);
    await steps.first().hover();
    expect((await page.locator('.lit-ink').getAttribute('d'))?.length).toBeGreaterThan(10);
  });
});

describe('files', () => {
  test('the PDF has two first pages and every sheet of the plan, and its writer is loaded only then', async () => {
    const page = await open();
    const scripts: string[] = [];
    page.on('request', (request) => {
      if (request.resourceType() === 'script') scripts.push(request.url());
    });
    await goTo(page, 'Paper');
    // The station itself is loaded with the first step to it; its writer is no part of that.
    const writers = () => scripts.filter((url) => /worker|pdf/i.test(url));
    await page.getByRole('button', { name: /Print the pattern:/ }).waitFor();
    expect(writers()).toEqual([]);
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: /Print the pattern:/ }).click();
    const { name, bytes } = await textOf(download);
    expect(writers().length).toBeGreaterThan(0);
    expect(name).toMatch(/\.pdf$/);
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    // The station says how many sheets there are as soon as the longer search has laid them.
    const pages = bytes.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    await page.getByRole('button', { name: `Print the pattern: ${pages - 2} sheets` }).waitFor();
    await page.getByText(`Saved as “${name}”. Print its first page alone, at 100 %`).waitFor();
  });

  test('the drawing and the report are what they say', async () => {
    const page = await open();
    await goTo(page, 'Paper');
    const svg = page.waitForEvent('download');
    await page.getByRole('button', { name: /Drawing, SVG/ }).click();
    expect((await textOf(svg)).bytes.toString()).toMatch(/^(<\?xml[^>]*>\s*)?<svg[^>]*width="[\d.]+mm"/);
    const report = page.waitForEvent('download');
    await page.getByRole('button', { name: /Report/ }).click();
    const written = JSON.parse((await textOf(report)).bytes.toString());
    expect(written.format).toBe('legwork-report');
    expect(written.pieces[0].name).toBe('leg');
  });

  test('every other file can be taken too, several bodies on one drawing among them', async () => {
    const page = await open();
    await goTo(page, 'Paper');
    const other = { ...exampleProject, body: { ...exampleProject.body, label: 'Body 2', hipGirth: 1100 } };
    const taken = async (press: () => Promise<void>) => {
      const download = page.waitForEvent('download');
      await press();
      return textOf(download);
    };
    const press = (name: RegExp) => () => page.getByRole('button', { name }).click();
    const dxf = await taken(press(/^Cutting file, DXF For/));
    expect([dxf.name.split('.').slice(1).join('.'), dxf.bytes.toString('latin1')]).toEqual([
      'dxf',
      expect.stringContaining('AC1021'),
    ]);
    expect((await taken(press(/Projector, PDF/))).bytes.subarray(0, 5).toString()).toBe('%PDF-');
    const zip = unzipSync((await taken(press(/Everything, ZIP/))).bytes);
    // Beside the project itself each kind that can be made of a draft which was never printed.
    expect(Object.keys(zip)).toHaveLength(SINGLE_FILES.filter((file) => !('of' in file)).length + 1);
    const nest = await taken(() =>
      page.getByLabel('Project files to lay on this one').setInputFiles({
        name: 'second.legwork.json',
        mimeType: 'application/json',
        buffer: Buffer.from(saveProject(other)),
      }),
    );
    expect(Object.keys(unzipSync(nest.bytes)).map((name) => name.replace(/^.*more\./, ''))).toEqual([
      'nested.pdf',
      'nested.large.pdf',
      'nested.svg',
    ]);
  });

  test('long work says how far it has come, leaves the screen free, and can be stopped', async () => {
    const page = await open();
    await goTo(page, 'Paper');
    const bodies = Array.from({ length: 9 }, (_, i) => ({
      name: `b${i}.legwork.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(
        saveProject({
          ...exampleProject,
          body: { ...exampleProject.body, hipGirth: 950 + 20 * i },
          // Many pieces, so that it takes long enough to be stopped.
          waist: { ...exampleProject.waist, finish: 'separateCasing' },
          hem: { ...exampleProject.hem, finish: 'contrastBand' },
          pocket: { width: 160, height: 170, facing: 30, part: 'back', count: 2 },
        }),
      ),
    }));
    let downloads = 0;
    page.on('download', () => {
      downloads += 1;
    });
    await page.getByLabel('Project files to lay on this one').setInputFiles(bodies);
    await page.getByRole('progressbar', { name: 'How far the file has come' }).waitFor();
    expect(await page.getByRole('button', { name: /Everything, ZIP/ }).isEnabled()).toBe(false);
    // The screen answers while the worker works.
    await goTo(page, 'Edges');
    await goTo(page, 'Paper');
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByRole('progressbar', { name: 'How far the file has come' }).waitFor({ state: 'detached' });
    expect(await page.getByRole('button', { name: /Everything, ZIP/ }).isEnabled()).toBe(true);
    expect(downloads).toBe(0);
  });

  test('a project that was saved opens again as it was', async () => {
    const page = await open();
    await page.getByLabel('Name of the project').fill('Sunday, second pair');
    await field(page, 'Hem depth').fill('4.4');
    const line = await lines(page);
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a file', exact: true }).click();
    const { name, bytes } = await textOf(download);
    expect(name).toMatch(/^Sunday.*\.legwork\.json$/);

    await field(page, 'Hem depth').fill('3');
    expect(await lines(page)).not.toBe(line);
    await page.getByLabel('Project file').setInputFiles({ name, mimeType: 'application/json', buffer: bytes });
    await page.getByText(`“${name}” is open.`).waitFor();
    expect(await lines(page)).toBe(line);
    expect(await page.getByLabel('Name of the project').inputValue()).toBe('Sunday, second pair');
  });

  test('a broken file gives a sentence and loses nothing', async () => {
    const page = await open();
    await field(page, 'Hem depth').fill('4.4');
    const line = await lines(page);
    const buffer = Buffer.from('{"format":"legwork-project"');
    await page.getByLabel('Project file').setInputFiles({ name: 'half.json', mimeType: 'application/json', buffer });
    await page.getByRole('alert').getByText('“half.json” isn’t a project file').waitFor();
    expect(await lines(page)).toBe(line);
    expect(await field(page, 'Hem depth').inputValue()).toBe('4.4');
  });

  test('a project for a body is begun beside the one that is open', async () => {
    const page = await open();
    await page.getByRole('button', { name: 'New', exact: true }).click();
    await page.getByRole('button', { name: /^Draft for a body/ }).click();
    for (const [name, text] of [
      ['Waist', '31 1/2'],
      ['Hip', '41'],
      ['Body rise', '10⅞'],
      ['Inside leg', '29.5'],
    ] as const) {
      expect(await field(page, name).inputValue()).toBe('');
      await field(page, name).fill(`${text} in`);
    }
    await expect.poll(() => drawing(page).getAttribute('data-stale')).toBeNull();
  });
});

const STATIONS = ['Body', 'Blocks', 'Leg', 'Check', 'Cloth', 'Paper', 'Edges'];

describe.each([
  [1440, 900],
  [1024, 768],
  [390, 844],
  [320, 640],
  // A phone on its side, and a page at 200 %.
  [844, 390],
  [720, 450],
])('at %i × %i', (width, height) => {
  test('nothing overflows sideways, and every station has its drawing', async () => {
    const page = await open(width, height);
    for (const station of STATIONS) {
      await goTo(page, station);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(over, station).toBeLessThanOrEqual(0);
      const box = await page.locator('.table-window').boundingBox();
      expect(box?.width ?? 0, station).toBeGreaterThan(300);
      expect(box?.height ?? 0, station).toBeGreaterThan(240);
      // What can be taken hold of on the drawing is not covered by the tools.
      const covered = await page.locator('.handle-button').evaluateAll((all) =>
        all.flatMap((one) => {
          const { x, y, width, height } = one.getBoundingClientRect();
          const over = document.elementFromPoint(x + width / 2, y + height / 2)?.closest('.tools');
          return over ? [one.parentElement?.getAttribute('aria-label')] : [];
        }),
      );
      expect(covered, station).toEqual([]);
    }
  });
});
