import { expect, test } from 'vitest';
import { drawingInk, LEAST_PT, type PlacedWord, placedDrawings } from '../../../src/drawing';
import { patternWords } from '../../../src/files/content/piece-words';
import { controlWords } from '../../../src/files/pdf/control-words';
import { placeNumbers } from '../../../src/files/pdf/mark-numbers';
import { printedSheet } from '../../../src/files/pdf/part-on-paper';
import { sheetWords } from '../../../src/files/pdf/sheet-words';
import { startPdf } from '../../../src/files/pen/pen';
import { boxesMeet, type Point } from '../../../src/plane';
import { sheetsOf } from '../../../src/project';
import { draftWith } from '../drafts';
import { printFont } from '../print-font';

const { widthOf } = startPdf(210, 297, printFont(), { title: '', subject: '', date: new Date(0) });

/** Whether a place of the paper lies within a word. */
const within = ({ covers: { middle, way, half } }: PlacedWord, { x, y }: Point): boolean =>
  Math.abs((x - middle.x) * way.x + (y - middle.y) * way.y) < half.along &&
  Math.abs((y - middle.y) * way.x - (x - middle.x) * way.y) < half.across;

/** Places all over a word, a third of a letter apart. */
function placesOf({ covers: { middle, way, half } }: PlacedWord): readonly Point[] {
  const steps = (reach: number) =>
    Array.from({ length: Math.ceil(reach * 2) + 1 }, (_, i) => Math.min(i - reach, reach));
  return steps(half.along).flatMap((along) =>
    steps(half.across).map((across) => ({
      x: middle.x + way.x * along - way.y * across,
      y: middle.y + way.y * along + way.x * across,
    })),
  );
}

const child = { waistGirth: 530, hipGirth: 590, hipDepth: 140, bodyRise: 190, insideLeg: 420, ageYears: 4 };

test.each([
  { name: 'the example on A4', changes: {}, least: 60 },
  { name: 'a band on Letter', changes: { paper: { sheet: 'Letter' }, hem: { finish: 'contrastBand' } }, least: 60 },
  { name: 'a child', changes: { body: child, paper: { overlap: 0 } }, least: 30 },
  { name: 'at a quarter', changes: { paper: { scale: 0.25 } }, least: 12 },
] as const)('words stand clear of lines, marks and each other, and can be read: $name', ({ changes, least }) => {
  const draft = draftWith(changes);
  const plan = sheetsOf(draft);
  const { project, printed } = draft;
  const { scale } = plan;
  const ink = drawingInk(placedDrawings(printed, plan.places));
  const { once, along } = patternWords(printed, plan.places, { project, scale: project.paper.scale });
  const wordsOf = sheetWords({ once, along: [...controlWords(draft), ...along] }, plan, plan.sheets, ink, widthOf);
  const inked = ink.lines.flatMap(({ points }) =>
    points.slice(1).flatMap((b, i) => {
      const a = points[i] as Point;
      const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 0.5));
      return Array.from({ length: count }, (_, k) => ({
        x: (a.x + ((b.x - a.x) * k) / count) * scale.x,
        y: (a.y + ((b.y - a.y) * k) / count) * scale.y,
      }));
    }),
  );
  const all: PlacedWord[] = [];
  for (const printed of plan.sheets.flatMap((sheet) => printedSheet(plan, sheet))) {
    const { part: sheet } = printed;
    const words = wordsOf(sheet);
    const numbers = placeNumbers(printed, ink, widthOf);
    for (const [i, word] of words.entries()) {
      expect(word.pt, word.text).toBeGreaterThanOrEqual(LEAST_PT);
      const places = placesOf(word);
      for (const other of words.slice(i + 1))
        expect(
          places.some((place) => within(other, place)),
          `${sheet.label}: ${word.text} / ${other.text}`,
        ).toBe(false);
      for (const { box } of numbers)
        expect(
          places.some(({ x, y }) =>
            boxesMeet(box, { left: x / scale.x, right: x / scale.x, top: y / scale.y, bottom: y / scale.y }),
          ),
          `${sheet.label}: ${word.text}`,
        ).toBe(false);
    }
    all.push(...words);
  }
  const across = all.filter((word) => inked.some((place) => within(word, place)));
  expect(across.map(({ text }) => text)).toEqual([]);
  expect(all.length).toBeGreaterThanOrEqual(least);
  const said = new Set(all.map(({ text }) => text));
  for (const text of ['front', 'back', 'cut here', 'hip line', 'lengthen or shorten here'])
    expect(said.has(text), text).toBe(true);
});
