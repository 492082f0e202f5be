import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { formatLength } from '../../src/length';
import { draft, exampleProject, workingOf } from '../../src/project';
import { tellClothSteps } from '../../src/workbench/store/cloth-told';
import { stepsInOrder } from '../../src/workbench/store/working-at';
import { tellDraftSteps } from '../../src/workbench/store/working-told';
import { launchChromium, type OpenedApp, openAppAgain } from './open-app';

let browser: Browser;
let app: OpenedApp;

beforeAll(async () => {
  tellDraftSteps();
  tellClothSteps();
  browser = await launchChromium();
});

afterAll(() => browser.close());

afterEach(async () => {
  expect(app.complaints).toEqual([]);
  expect(app.strangers).toEqual([]);
  await app.close();
});

async function open(station: string, options: BrowserContextOptions = {}): Promise<Page> {
  app = await openAppAgain(browser, options);
  await app.page.getByRole('button', { name: station, exact: true }).click();
  return app.page;
}

const result = draft(exampleProject);
if (!result.ok) throw new Error('the example can not be drafted');
const example = result.value;

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const outline = (page: Page) => page.locator('.block-front').getAttribute('d');

describe('the join', () => {
  test('is scrubbed from apart to the leg, its gaps measured on the way', async () => {
    const page = await open('Leg');
    await button(page, /Play the join/).click();
    const way = page.getByRole('slider', { name: 'From the blocks to the leg' });
    await way.fill('0');
    await page.getByText('hip 9 cm').waitFor();
    const apart = await outline(page);
    await way.fill('1');
    await page.getByText('hip: touching').waitFor();
    // The gaps of the report, to the millimetre.
    for (const [name, gap] of [
      ['waist', 'gapAtWaist'],
      ['knee', 'gapAtKnee'],
      ['hem', 'gapAtHem'],
    ] as const)
      await page.getByText(`${name} ${formatLength(example.joined[gap], 'cm')}`, { exact: true }).waitFor();
    expect(await outline(page)).not.toBe(apart);
    expect(await way.getAttribute('aria-valuetext')).toBe('joined');
    await way.fill('2');
    await page.getByText('hip 1.3 cm', { exact: true }).waitFor();
    await way.fill('4');
    expect(await page.locator('.drawing .line-joined').count()).toBe(1);
    await button(page, 'Done').click();
    await page.getByRole('slider', { name: 'Spread' }).waitFor();
  });

  test('plays by itself, from stop to stop where movement is not welcome', async () => {
    const page = await open('Leg', { reducedMotion: 'reduce' });
    const place = () => page.getByRole('slider', { name: 'From the blocks to the leg' }).inputValue();
    await page.clock.install();
    await button(page, /Play the join/).click();
    await page.getByText('hip 9 cm').waitFor();
    expect(await place()).toBe('0');
    await page.clock.runFor(1900);
    expect(await place()).toBe('1');
    await page.clock.runFor(6000);
    expect(await place()).toBe('4');
    await button(page, 'Play').waitFor();
    // Its clock is no longer the world's: no other test goes on in this page.
    await page.context().close();
  });
});

describe('the working', () => {
  test('answers “how?” for a finished measure and for a field', async () => {
    const page = await open('Body');
    await button(page, /^Waist opening .*how\?/).click();
    const lit = page.locator('.step[aria-pressed="true"]');
    expect(await lit.textContent()).toContain('The opening is');
    expect(await page.getByRole('button', { name: 'Leg', exact: true }).getAttribute('aria-expanded')).toBe('true');
    await button(page, 'Spread: how?').click();
    expect(await lit.textContent()).toContain('The join is spread by');
    expect(await page.locator('.lit').getAttribute('data-step')).toBe('leg.spread');
  });

  test('runs through the steps, over the stations, each drawing its own lines', async () => {
    const page = await open('Blocks', { reducedMotion: 'reduce' });
    await button(page, 'Working').click();
    await button(page, 'Next').click();
    const ids = stepsInOrder(example).map(({ id }) => id);
    const at = Number(/\d+/.exec((await page.getByText(/Step \d+ of \d+/).textContent()) ?? '')?.[0]);
    for (let i = 0; i < 11; i += 1) {
      await page.getByText(`Step ${at + i} of`).waitFor();
      const step = workingOf(example).find(({ id }) => id === ids[at + i - 1]);
      expect(await page.locator('.lit').getAttribute('data-step')).toBe(step?.id);
      const ink = (await page.locator('.lit-ink').getAttribute('d')) ?? '';
      expect(ink.length > 0, step?.id).toBe((step?.lines.length ?? 0) > 0);
      await button(page, 'Next').click();
    }
    expect(await page.getByRole('button', { name: 'Leg', exact: true }).getAttribute('aria-expanded')).toBe('true');
    await button(page, 'Back').click();
    await button(page, 'show the whole drawing').click();
    expect(await page.locator('.lit').count()).toBe(0);
  });
});

describe('a chalk line', () => {
  test('keeps an outline with its name, measures what changes, survives a reload, and is rubbed out', async () => {
    const page = await open('Leg');
    await button(page, /Keep this outline/).click();
    await page.getByRole('textbox', { name: 'Name of the chalk line' }).fill('before the spread');
    await page.getByText('No measure differs.').waitFor();
    await page.getByRole('textbox', { name: 'Spread', exact: true }).fill('2.27');
    const card = page.locator('.chalk-card');
    expect(await card.locator('li').allTextContents()).toContain('hip +2 cm');
    expect(await card.locator('li', { hasText: 'area' }).textContent()).toMatch(/^area \+[\d.]+ %$/);
    await page.locator('.word-chalk', { hasText: 'before the spread' }).waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'Leg', exact: true }).click();
    expect(await page.locator('.chalk-line').count()).toBe(1);
    await button(page, 'hide').click();
    expect(await page.locator('.chalk-line').count()).toBe(0);
    await button(page, 'rub out').click();
    expect(await card.count()).toBe(0);
  });
});

describe('after wearing', () => {
  test('shows what was worn beside what is corrected, each step undone', async () => {
    const page = await open('Check');
    await button(page, /I wore them/).click();
    expect(await page.locator('.chalk-line').count()).toBe(0);
    await page.getByRole('textbox', { name: 'Flat seat' }).fill('1');
    await page.locator('.word-chalk', { hasText: 'before the corrections' }).waitFor();
    expect(await page.locator('.corrected li').allTextContents()).toContainEqual(expect.stringMatching(/^crotch −/));
    await button(page, /undo flat seat/).click();
    expect(await page.locator('.chalk-line').count()).toBe(0);
  });
});

describe('the first visit', () => {
  test('has three hints, which never come back', async () => {
    const page = await open('Leg');
    for (const [title, press] of [
      ['Drag a yellow button', 'Next hint'],
      ['Ask any number', 'Next hint'],
      ['Follow the thread', 'Got it'],
    ] as const) {
      await page.getByText(title).waitFor();
      await button(page, press).click();
    }
    expect(await page.locator('.hint').count()).toBe(0);
    await page.reload();
    await page.locator('.stop').first().waitFor();
    expect(await page.locator('.hint').count()).toBe(0);
  });
});

describe('show mode', () => {
  test('leaves the drawing and one sentence, and is led by keys alone', async () => {
    const page = await open('Leg', { reducedMotion: 'reduce' });
    await button(page, /^Show/).click();
    await page.getByRole('region', { name: 'Show mode' }).waitFor();
    expect(await page.locator('.path, .finished, .bar').count()).toBe(0);
    await page.keyboard.press('ArrowRight');
    await page.locator('.show-sentence', { hasText: 'side by side' }).waitFor();
    await page.keyboard.press('ArrowRight');
    await page.locator('.show-sentence', { hasText: 'spread by' }).waitFor();
    await page.keyboard.press('ArrowLeft');
    await page.locator('.show-sentence', { hasText: 'side by side' }).waitFor();
    await page.keyboard.press('j');
    await page.getByRole('slider', { name: 'From the blocks to the leg' }).waitFor();
    await page.keyboard.press('j');
    await page.keyboard.press('2');
    await page.locator('.show-station', { hasText: 'Blocks' }).waitFor();
    await page.keyboard.press('c');
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('chalkboard');
    await page.keyboard.press('Escape');
    await page.locator('.path').waitFor();
    // The theme is remembered, show mode is not.
    await page.reload();
    await page.locator('.path').waitFor();
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('chalkboard');
  });

  test('answers a clicker and a finger, leaves out what was unticked, and goes dark', async () => {
    const page = await open('Leg', { reducedMotion: 'reduce' });
    await button(page, /^Show/).click();
    await page.getByRole('region', { name: 'Show mode' }).waitFor();
    const sentence = page.locator('.show-sentence');
    await page.keyboard.press('PageDown');
    await sentence.filter({ hasText: 'side by side' }).waitFor();
    await page.keyboard.press('s');
    await page.getByRole('checkbox', { name: /is spread by/ }).uncheck();
    await page.keyboard.press('Escape');
    await button(page, 'Next').click();
    await sentence
      .filter({ hasText: 'waist opening' })
      .or(sentence.filter({ hasNotText: 'side by side' }))
      .waitFor();
    expect(await sentence.textContent()).not.toContain('is spread by');
    await page.keyboard.press('PageUp');
    await sentence.filter({ hasText: 'side by side' }).waitFor();
    // Dark until a key, which does nothing else.
    await page.keyboard.press('b');
    await page.locator('.show-dark').waitFor();
    await page.keyboard.press('PageDown');
    await page.locator('.show-dark').waitFor({ state: 'detached' });
    expect(await sentence.textContent()).toContain('side by side');
    await page.keyboard.press('j');
    await page.getByRole('slider', { name: 'From the blocks to the leg' }).waitFor();
    await page.keyboard.press('PageDown');
    await expect
      .poll(() => page.getByRole('slider', { name: 'From the blocks to the leg' }).inputValue())
      .toMatch(/^[1-4]$/);
    await page.keyboard.press('j');
    // Paper has the taping, and after its last step comes the sewing.
    await page.keyboard.press('7');
    await page.keyboard.press('PageDown');
    await sentence.filter({ hasText: /^(Put down sheet|Cut out the small piece)/ }).waitFor();
    await button(page, 'Leave').click();
    await page.locator('.path').waitFor();
  });

  test('reads from the last row: every word on the drawing and below it is 32 px high at 1280 × 720', async () => {
    const page = await open('Leg', { reducedMotion: 'reduce', viewport: { width: 1280, height: 720 } });
    await button(page, /^Show/).click();
    await page.locator('.show').waitFor();
    for (const key of ['1', '2', '3', '4', '6', '7', '8']) {
      await page.keyboard.press(key);
      await page.keyboard.press('PageDown');
      await page.locator('.show-sentence').waitFor();
      await expect.poll(() => page.evaluate(tooSmall), { message: `station ${key}` }).toEqual([]);
    }
    // A phone leads it, too: nothing is wider than it.
    await page.setViewportSize({ width: 390, height: 844 });
    await button(page, 'Next').click();
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await button(page, 'Leave').click();
  });
});

/** Words that are seen in show mode and smaller than 32 px, with their size. */
function tooSmall(): readonly string[] {
  const seen = [...document.querySelectorAll<HTMLElement | SVGElement>('.show *, .table *')].filter(
    (one) =>
      [...one.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim()) &&
      !one.closest('.unseen, desc') &&
      one.getClientRects().length > 0,
  );
  return seen.flatMap((one) => {
    const matrix = one instanceof SVGGraphicsElement ? one.getScreenCTM() : undefined;
    const size = Number.parseFloat(getComputedStyle(one).fontSize) * (matrix ? Math.hypot(matrix.a, matrix.b) : 1);
    return size < 31.9 ? [`${one.textContent}: ${size}`] : [];
  });
}
