import { describe, expect, test } from 'vitest';
import { drawingInk, placedDrawings } from '../../src/drawing';
import { patternWords } from '../../src/files/content/piece-words';
import { sheetWords } from '../../src/files/pdf/sheet-words';
import { startPdf } from '../../src/files/pen/pen';
import { type Draft, draft, type Project, sheetsOf } from '../../src/project';
import { planParts } from '../../src/sheets';
import { draftWith } from '../files/drafts';
import { printFont } from '../files/print-font';
import { writePdf } from '../files/written';
import { every } from '../outside/every';
import { linesMeet, type SetLine, wordedPages } from '../outside/paper/printed-words';
import { readByEye } from '../outside/paper/read-by-eye';
import { projectDrawn } from './projects';

// The pattern's sheets of projects that were drawn at random, as they come out of the printer.

const DATE = new Date('2026-11-30T12:00:00Z');
const COUNT = every ? 60 : 3;
/** The smallest type that is printed; a hundredth for how the file writes it. */
const LEAST_PT = 7.99;

/** The first projects that can be drafted, counted from a seed, on A4. */
function draftsOnA4(count: number): readonly (readonly [number, Draft])[] {
  const found: (readonly [number, Draft])[] = [];
  for (let seed = 1601; found.length < count; seed += 1) {
    const raw = projectDrawn(seed) as unknown as Project & { readonly paper?: object };
    const result = draft({ ...raw, paper: { ...raw.paper, sheet: 'A4' } } as Project);
    if (result.ok) found.push([seed, result.value]);
  }
  return found;
}

/** A line's letters, capitals and figures, without the white that a font leaves above and below them. */
const lettersOf = (line: SetLine): SetLine => ({
  ...line,
  half: { ...line.half, across: line.half.across * CAPITALS_OF_LINE },
});
/** The print font's capitals in parts of its line. */
const CAPITALS_OF_LINE = 0.729 / 1.164;

const { widthOf } = startPdf(210, 297, printFont(), { title: '', subject: '', date: DATE });

/** How many of the lines of a draft say what they are on one sheet at least, and how many there are. */
function saidLines(of: Draft): { readonly said: number; readonly all: number } {
  const { project, printed } = of;
  const plan = sheetsOf(of);
  const ink = drawingInk(placedDrawings(printed, plan.places));
  const wanted = patternWords(printed, plan.places, { project, scale: project.paper.scale, date: DATE });
  const wordsOf = sheetWords(wanted, plan, plan.sheets, ink, widthOf);
  const said = new Set(planParts(plan).flatMap((part) => wordsOf(part).map(({ text }) => text)));
  const lines = [...wanted.along.map(({ says }) => says), ...wanted.once.map(({ lines: [first] }) => [first.text])];
  return { said: lines.filter((says) => says.some((text) => said.has(text))).length, all: lines.length };
}

describe('the words on the first pages and the sheets of random projects', () => {
  const share = { said: 0, all: 0 };
  test.each(draftsOnA4(COUNT))(
    'project %i: none on a line or another, none under 8 pt, read alike by both readers',
    async (_seed, of) => {
      const pages = wordedPages(await writePdf(of, { font: printFont(), date: DATE }));
      for (const [i, { lines, words, isInked }] of pages.entries()) {
        const where = (line: (typeof lines)[number]) =>
          `page ${i + 1} at ${Math.round(line.middle.x)}, ${Math.round(line.middle.y)} mm`;
        // Poppler's words lie in the lines that the file sets: both see the same.
        const lost = words.filter((word) => {
          const [x, y] = [(word.left + word.right) / 2, (word.top + word.bottom) / 2];
          return !lines.some(
            ({ middle, way, half }) =>
              Math.abs((x - middle.x) * way.x + (y - middle.y) * way.y) < half.along + 1 &&
              Math.abs((y - middle.y) * way.x - (x - middle.x) * way.y) < half.across + 1,
          );
        });
        expect(lost.map(({ text }) => `page ${i + 1}: ${text}`)).toEqual([]);
        // On the map, which is crowded, lines may come as near to letters as other letters do in a text.
        const isFirst = i < pages.length - sheetsOf(of).sheets.length;
        const seen = isFirst ? (line: SetLine) => isInked(lettersOf(line)) : isInked;
        expect(lines.filter(({ pt }) => pt < LEAST_PT).map(where)).toEqual([]);
        expect(lines.filter(seen).map(where)).toEqual([]);
        const meeting = lines.filter((a, k) => lines.slice(k + 1).some((b) => linesMeet(a, b)));
        expect(meeting.map(where)).toEqual([]);
      }
      const { said, all } = saidLines(of);
      share.said += said;
      share.all += all;
    },
    120_000,
  );

  test('nearly every line says on some sheet what it is', () => {
    console.info(`lines that say what they are: ${share.said} of ${share.all}`);
    expect(share.said / share.all).toBeGreaterThan(0.9);
  });
});

test('level words are read by a machine’s eye from the picture of the sheet that bears the most', async () => {
  const bytes = await writePdf(draftWith(), { font: printFont(), date: DATE });
  const level = wordedPages(bytes).map(({ words }) =>
    words.filter(({ text, left, right, top, bottom }) => /^[a-z]{4,}$/.test(text) && right - left > bottom - top),
  );
  // The first two pages are documents.
  const most = level.reduce((best, words, i) => (i > 1 && words.length > (level[best]?.length ?? 0) ? i : best), 2);
  const read = readByEye(bytes, most + 1);
  if (read === undefined) {
    console.info('Tesseract is not installed: the printed words were not read by eye.');
    return;
  }
  const asked = [...new Set(level[most]?.map(({ text }) => text))];
  const found = asked.filter((text) => read.some((word) => word.includes(text)));
  console.info(`read by eye: ${found.length} of ${asked.length} level words of page ${most + 1}`);
  expect(asked.length).toBeGreaterThan(8);
  expect(found.length / asked.length).toBeGreaterThanOrEqual(0.8);
});
