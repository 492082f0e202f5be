import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { launchChromium, type OpenedApp, openAppAgain } from './open-app';

// What somebody hears who does not see the page: names, roles, the order of headings, and what is said unasked.

let browser: Browser;
let app: OpenedApp;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

afterEach(async () => {
  expect(app.complaints).toEqual([]);
  await app.close();
});

async function open(): Promise<Page> {
  app = await openAppAgain(browser, { reducedMotion: 'reduce' });
  return app.page;
}

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const STATIONS = ['Body', 'Blocks', 'Leg', 'Edges', 'Check', 'Cloth', 'Paper', 'Sew'];

/** What is heard on the way through the page, line for line: role, name, state. */
const heard = async (page: Page): Promise<readonly string[]> => (await page.locator('body').ariaSnapshot()).split('\n');

test('a walk through the page goes from the bar over the stations and the table to what is finished', async () => {
  const page = await open();
  await button(page, 'Leg').click();
  // The station and its drawing come late.
  await page.getByRole('textbox', { name: 'Spread' }).waitFor();
  await page.getByRole('img', { name: 'The joined blocks' }).waitFor();
  const lines = await heard(page);
  const places = [
    '- banner:',
    'heading "Legwork" [level=1]',
    'group "Unit":',
    '- region "Stations":',
    'button "Leg" [expanded]',
    'textbox "Spread": "1.3"',
    'Opens the join: each leg gets wider, the pair by 2 × 1.3 cm − rounding 0.1 cm = 2.5 cm.',
    'group "Straighten the centres":',
    'radio "as needed" [checked]',
    'combobox "Shape":',
    '- main "Table":',
    'region "Drawing at Leg.',
    'img "The joined blocks under the outline of the leg"',
    'slider "Straighten: lean of centre back"',
    'slider "Spread"',
    'button "Play the join"',
    '- complementary "Finished":',
    'button "Hip 110 cm: how?"',
    'All 28 checks are good',
  ].map((words) => lines.findIndex((line) => line.includes(words)));
  expect(await page.locator('#drawn').textContent()).toMatch(
    /^full, spread 1\.3 cm, opening just passes; [\d.]+ cm wide, [\d.]+ cm high$/,
  );
  expect(places.filter((place) => place < 0)).toEqual([]);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
});

test('at every station headings go down by one level at most, and whatever can be set has a name and a sentence', async () => {
  const page = await open();
  for (const station of STATIONS) {
    await button(page, station).click();
    await page.locator('.stop-inside > *').first().waitFor({ state: 'attached' });
    if (station === 'Sew') await page.getByRole('region', { name: 'Step of the sewing' }).waitFor();
    const levels = await page
      .locator('h1, h2, h3, h4, h5, h6')
      .evaluateAll((all) => all.map(({ tagName }) => Number(tagName[1])));
    expect(levels[0], station).toBe(1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    const leaps = levels.filter((level, i) => level > (levels[i - 1] ?? 0) + 1);
    expect(leaps, station).toEqual([]);
    // Inputs are explained before they are used: every description that is named is there, and says something.
    const mute = await page.locator('.stop-inside :is(input[type="text"], select)').evaluateAll((inputs) =>
      inputs
        .filter((input) => {
          const ids = (input.getAttribute('aria-describedby') ?? '').split(' ');
          return !ids.some((id) => document.getElementById(id)?.textContent?.trim());
        })
        .map(({ id }) => id),
    );
    expect(mute, station).toEqual([]);
    const sliders = await page
      .getByRole('slider')
      .evaluateAll((all) => all.map((one) => one.getAttribute('aria-valuetext') ?? ''));
    expect(
      sliders.filter((words) => !/\d/.test(words)),
      station,
    ).toEqual([]);
  }
});

test('a changed verdict, a sentence beside a field, and the end of a save are said without being asked for', async () => {
  const page = await open();
  const said = (words: string | RegExp) => page.locator('[role="status"], [aria-live]').getByText(words);
  await button(page, 'Leg').click();
  const spread = page.getByRole('textbox', { name: 'Spread', exact: true });
  await spread.fill('0.5');
  await said('Ease at the hip: now doubtful.').waitFor({ state: 'attached' });
  await spread.fill('2.5');
  await said('Ease at the hip: now good.').waitFor({ state: 'attached' });
  await spread.fill('wide');
  // The place was there before the sentence was, or nobody would hear it.
  await page.locator('#field-leg-spread-problem[aria-live="polite"]').getByText('“wide” isn’t a length').waitFor();
  expect(await spread.getAttribute('aria-invalid')).toBe('true');
  expect(await spread.getAttribute('aria-describedby')).toContain('field-leg-spread-problem');
  await spread.fill('2.5');

  await button(page, /^Show/).click();
  await page.getByRole('region', { name: 'Show mode' }).waitFor();
  await page.keyboard.press('ArrowRight');
  const step = page.getByRole('region', { name: 'Show mode' }).getByRole('status');
  const first = await step.textContent();
  expect(first).toMatch(/\w{3}/);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => step.textContent()).not.toBe(first);
});

test('an undo, a chalk line and a station that opens by itself are said, and no press leaves the focus nowhere', async () => {
  const page = await open();
  const said = (words: string) => page.getByRole('status').getByText(words, { exact: true });
  const press = async (name: string | RegExp, then: string | RegExp) => {
    await button(page, name).focus();
    await page.keyboard.press('Enter');
    const heard = () =>
      page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent);
    await expect.poll(heard, { message: String(name) }).toMatch(then);
  };
  await press('no more hints', /^Drawing at Edges/);
  await press(/checks are good$/, /checks are good$/);
  await said('The station Check is open.').waitFor({ state: 'attached' });
  await press('I wore them: correct what I see', '');
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('field-fit-flatSeat');
  await press(/^Keep this outline/, /^Keep this outline/);
  await said('Kept as chalk line 1.').waitFor({ state: 'attached' });
  await press('rub out', /^Keep this outline/);
  await press(/^undo/, /undo/);
  await said('Undone: After wearing.').waitFor({ state: 'attached' });
  await press(/^redo/, /undo/);
  await button(page, 'Leg').click();
  await press(/Play the join/, 'Pause');
  await press('Done', /Play the join/);
  await press('Working', 'Working');
  await press('Next', 'Next');
  await press('show the whole drawing', 'Play');
  await button(page, 'New').click();
  await press(/^Draft for a body/, '');
  const asked = () => page.evaluate(() => document.activeElement?.closest('fieldset')?.textContent ?? '');
  await expect.poll(asked).toContain('Worn for sleeping');
});
