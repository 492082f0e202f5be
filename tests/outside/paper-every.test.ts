import { afterAll, describe, expect, test } from 'vitest';
import { type Draft, sheetsOf, withFewestSheets } from '../../src/project';
import { type Changes, draftWith } from '../files/drafts';
import { printFont } from '../files/print-font';
import { writePdf } from '../files/written';
import { every, share } from './every';
import { compareInk, farthestWithin, TRUE_WITHIN } from './paper/compare';
import { findMap } from './paper/find-map';
import { joinSheets, MARKS_MEET } from './paper/join-sheets';
import type { Place } from './paper/pixels';
import { laidLines, movedLines, onTable, printedPages, printedParts, shownPart } from './paper/printed';
import { openPdf } from './paper/render';
import { findSquares } from './paper/squares';
import { distribution } from './survey';

/** Ink reaches half the cut line's width beyond its middle, whose place is what counts. */
const HALF_CUT = 0.25;
const MIDDLE_TRUE = 0.1;
const SQUARE_TRUE = 0.1;
const SIDES = [100, 101.6];
/** Between two dashes of a stitching line, the second of which may lie on the next sheet. */
const GAP = 2.5;

const bodies: readonly Changes[] = [
  {
    body: { waistGirth: 1020, hipGirth: 1160, hipDepth: 215, bodyRise: 300, insideLeg: 900 },
    waist: { finish: 'separateCasing' },
    pocket: { width: 160, height: 170, facing: 30, part: 'back', count: 2 },
  },
  { body: { waistGirth: 530, hipGirth: 590, hipDepth: 140, bodyRise: 190, insideLeg: 420, ageYears: 4 } },
  { hem: { finish: 'contrastBand' } },
];

const cases = ['A4', 'Letter', 'A3', 'Tabloid', 'Legal', 'A0', 'Roll 36 in']
  .flatMap((sheet) => (['portrait', 'landscape'] as const).map((orientation) => ({ sheet, orientation })))
  .flatMap((paper) => [0, 10, 20].map((overlap) => ({ ...paper, overlap })))
  .map((paper, i) => ({ ...paper, changes: bodies[(i + Math.floor(i / 3)) % bodies.length] as Changes }));

const figures: Record<'square' | 'marks' | 'cut' | 'sewn' | 'trim', number[]> = {
  square: [],
  marks: [],
  cut: [],
  sewn: [],
  trim: [],
};

/** Everything that was measured on the printed pages of one draft. */
async function measured(draft: Draft) {
  const pdf = openPdf(await writePdf(draft, { font: printFont(), date: new Date('2026-11-24T12:00:00Z') }));
  try {
    const first = pdf.picture(1);
    const squares = findSquares(first);
    const pages = printedPages(pdf);
    const parts = printedParts(pages, sheetsOf(draft));
    const { shifts, worst } = joinSheets(parts);
    const lines = laidLines(draft);
    const cut = compareInk(
      onTable(parts, (part) => part.cut, shifts),
      lines.cut,
    );
    const sewn = compareInk(
      onTable(parts, (part) => part.sewn, shifts),
      lines.sewn,
      cut.shift,
    );
    // On each page by itself, so that a line that ends short of a join is not made good by the neighbour.
    const own = pages.map((page) => {
      const sheet = parts.find(({ label }) => label === page.label) as (typeof parts)[number];
      const by = shifts.get(page.label) as Place;
      const back = { x: -by.x - cut.shift.x, y: -by.y - cut.shift.y };
      const part = shownPart(page, sheetsOf(draft).margin);
      return {
        cut: farthestWithin(part, sheet.cut, movedLines(lines.cut, back)),
        // A half-diamond may lie over a stitching line where a join has no other place.
        sewn: farthestWithin(part, [...sheet.sewn, ...sheet.mark], movedLines(lines.sewn, back)),
        shows: { left: -back.x, top: -back.y, right: page.width - back.x, bottom: page.height - back.y },
      };
    });
    const map = findMap(pdf, squares[1] as (typeof squares)[number], lines.cut);
    return { squares, pages, worst, cut, sewn, own, map };
  } finally {
    pdf.close();
  }
}

describe.each(share(cases, 2))('$sheet $orientation, overlap $overlap', ({ changes, ...paper }) => {
  test('joined by its marks the paper is the pattern, every sheet shows all of its own, the map says which is which', async () => {
    const draft = withFewestSheets(draftWith({ ...changes, paper }));
    const { squares, pages, worst, cut, sewn, own, map } = await measured(draft);

    const off = squares.flatMap(({ width, height }, i) => [width, height].map((side) => side - (SIDES[i] ?? 0)));
    expect(off).toHaveLength(4);
    figures.square.push(Math.max(...off.map(Math.abs)));
    figures.marks.push(worst);
    figures.cut.push(cut.inkFromLines - HALF_CUT, cut.linesFromInk);
    figures.sewn.push(sewn.inkFromLines);
    figures.trim.push(...own.map((sheet) => sheet.cut));
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(SQUARE_TRUE);
    expect(worst).toBeLessThan(MARKS_MEET);
    expect(cut.inkFromLines - HALF_CUT).toBeLessThan(MIDDLE_TRUE);
    expect(Math.max(cut.linesFromInk, sewn.inkFromLines)).toBeLessThan(TRUE_WITHIN);
    for (const [i, sheet] of own.entries()) {
      expect(sheet.cut, pages[i]?.label).toBeLessThan(TRUE_WITHIN);
      expect(sheet.sewn, pages[i]?.label).toBeLessThan(GAP + TRUE_WITHIN);
    }

    expect(pages.map(({ label }) => label)).toEqual(sheetsOf(draft).sheets.map(({ label }) => label));
    expect(pages.filter(({ drawn }) => drawn < 20).map(({ label }) => label)).toEqual([]);
    expect(Math.abs(map.stretch - 1)).toBeLessThan(0.03);
    const named = pages.map((page) => page.label);
    expect(map.labels.map(({ label }) => label).sort()).toEqual(expect.arrayContaining(named));
    for (const { label, at } of map.labels.filter((one) => named.includes(one.label))) {
      const { left, right, top, bottom } = own[pages.findIndex((page) => page.label === label)]?.shows ?? {
        left: 0,
        right: 0,
        top: 0,
        bottom: 0,
      };
      expect(at.x > left && at.x < right && at.y > top && at.y < bottom, label).toBe(true);
    }
  }, 120_000);
});

afterAll(() => {
  if (every) for (const [name, values] of Object.entries(figures)) console.log(distribution(name, values, 3));
});
