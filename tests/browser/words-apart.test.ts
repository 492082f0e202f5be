import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { plateBodies } from '../../.house/plate-bodies';
import { exampleProject, groupAnew, type Project, saveProject } from '../../src/project';
import { share } from '../outside/every';
import { launchChromium, openAppAgain } from './open-app';

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

const pocket = { ...groupAnew('pocket', 'cm'), count: 2 as const };
const FINISHES = ['elasticCasing', 'elasticAndDrawstring', 'separateCasing'] as const;

/** Very different bodies, each with two pockets, in turn with another waist and in the other unit. */
const projects: readonly (readonly [string, Project])[] = share(plateBodies.flat(), 4).map(
  ({ name, body, rest }, i) => [
    name,
    {
      ...exampleProject,
      ...rest,
      units: i % 2 === 0 ? 'cm' : 'inch',
      body: { label: name, ...body } as Project['body'],
      waist: { ...exampleProject.waist, finish: FINISHES[i % FINISHES.length] ?? 'elasticCasing' },
      pocket,
    },
  ],
);

const lines = (page: Page) =>
  page.locator('.drawing path').evaluateAll((paths) => paths.map((path) => path.getAttribute('d')).join(' '));

/** Opens a project, and waits for its drawing: what is told of it is not shown to a class. */
async function bring(page: Page, name: string, project: Project): Promise<void> {
  const before = await lines(page);
  const buffer = Buffer.from(saveProject(project));
  await page.getByLabel('Project file').setInputFiles({ name: `${name}.json`, mimeType: 'application/json', buffer });
  await expect.poll(() => lines(page)).not.toBe(before);
}

/** Words of the drawing that lie on a line or on each other, by boxes of their letters and points along the lines; and how many are seen. */
const lookAt = (page: Page) =>
  page.evaluate(() => {
    interface Seen {
      readonly text: string;
      readonly left: number;
      readonly right: number;
      readonly top: number;
      readonly bottom: number;
    }
    const all = [...document.querySelectorAll<SVGTextElement>('.drawing .word')].filter(
      (one) => one.getBBox().width > 0,
    );
    const seen = all.filter((one) => getComputedStyle(one).visibility !== 'hidden');
    const words = seen.map((one): Seen => {
      const matrix = one.getScreenCTM() as DOMMatrix;
      const { x, width } = one.getBBox();
      const em = Number.parseFloat(getComputedStyle(one).fontSize);
      // From the line they stand on to the top of small letters: what hangs below or stands out is a hair’s breadth of ink.
      const corners = [x, x + width].flatMap((across) =>
        [-0.5 * em, 0].map((down) => new DOMPoint(across, down).matrixTransform(matrix)),
      );
      const [across, down] = [corners.map((p) => p.x), corners.map((p) => p.y)];
      const text = one.textContent ?? '';
      return {
        text,
        left: Math.min(...across),
        right: Math.max(...across),
        top: Math.min(...down),
        bottom: Math.max(...down),
      };
    });
    const found: string[] = [];
    words.forEach((a, i) => {
      for (const b of words.slice(i + 1))
        if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
          found.push(`“${a.text}” on “${b.text}”`);
    });
    for (const path of document.querySelectorAll<SVGPathElement>('.drawing path')) {
      const { stroke } = getComputedStyle(path);
      const rect = path.getBoundingClientRect();
      if (stroke === 'none' && !path.matches('.arrowhead, .fold-triangle')) continue;
      const near = words.filter(
        (w) => w.left < rect.right && rect.left < w.right && w.top < rect.bottom && rect.top < w.bottom,
      );
      const matrix = path.getScreenCTM();
      if (near.length === 0 || !matrix) continue;
      const length = path.getTotalLength();
      const count = Math.ceil((length * Math.hypot(matrix.a, matrix.b)) / 3);
      const on = new Set<string>();
      for (let k = 0; k <= count; k += 1) {
        const { x, y } = path.getPointAtLength((length * k) / count).matrixTransform(matrix);
        for (const w of near) if (x > w.left && x < w.right && y > w.top && y < w.bottom) on.add(w.text);
      }
      for (const text of on) found.push(`“${text}” on ${path.getAttribute('class')}`);
    }
    return { found, seen: seen.length, all: all.length };
  });

test.each([
  ['at the table', { width: 1366, height: 768 }, false],
  ['in show mode', { width: 1280, height: 720 }, true],
])('%s no word lies on a line or on another, whoever is drafted', async (_where, viewport, showing) => {
  const { page, complaints, close } = await openAppAgain(browser, { viewport, reducedMotion: 'reduce' });
  await page.getByRole('button', { name: 'no more hints' }).click();
  if (showing) {
    await page.getByRole('button', { name: /^Show/ }).click();
    await page.getByRole('region', { name: 'Show mode' }).waitFor();
  }
  let [seen, all] = [0, 0];
  for (const [name, project] of projects) {
    await bring(page, name, project);
    for (const [i, station] of [
      [2, 'Blocks'],
      [4, 'Edges'],
      [6, 'Cloth'],
    ] as const) {
      if (showing) await page.keyboard.press(String(i));
      else await page.getByRole('button', { name: station, exact: true }).click();
      await page
        .locator(`.drawing[data-station="${station.toLowerCase()}"] .word`)
        .first()
        .waitFor({ state: 'attached' });
      await expect.poll(async () => (await lookAt(page)).found, { message: `${name}, ${station}` }).toEqual([]);
      const looked = await lookAt(page);
      seen += looked.seen;
      all += looked.all;
    }
  }
  // Words that are not shown lie on nothing; few may be.
  expect(seen / all).toBeGreaterThan(0.85);
  expect(complaints).toEqual([]);
  await close();
});
