import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { placer } from '../../src/drawing';
import { reportPiece } from '../../src/files/report/report';
import { openProject, sheetsOf } from '../../src/project';
import { type Changes, draftOf, draftWith } from '../files/drafts';
import { printFont } from '../files/print-font';
import { writePdf } from '../files/written';
import { compareInk, TRUE_WITHIN } from './paper/compare';
import { joinSheets, MARKS_MEET } from './paper/join-sheets';
import type { Place } from './paper/pixels';
import { coverPages, printedPages, printedParts } from './paper/printed';
import { type OpenPdf, openPdf } from './paper/render';
import { findSquares } from './paper/squares';

const SQUARE_TRUE = 0.1;
const DATE = new Date('2026-11-24T12:00:00Z');

const example = () => {
  const opened = openProject(
    readFileSync(new URL('../../docs/examples/flannel-bottoms.legwork.json', import.meta.url), 'utf8'),
  );
  if (!opened.ok) throw new Error('the example is refused');
  return draftOf(opened.value);
};

const inches: Changes = { units: 'inch', body: { hipDepth: 206.375 }, paper: { sheet: 'Letter' } };
const cases = [
  { name: 'the example of the documentation', make: example },
  {
    name: 'inches on Letter upright',
    make: () => draftWith({ ...inches, paper: { sheet: 'Letter', orientation: 'portrait' } }),
  },
  { name: 'A3, trimmed and butted', make: () => draftWith({ paper: { sheet: 'A3', overlap: 0, margin: 12.5 } }) },
] as const;

describe.each(cases)('$name', ({ make }) => {
  const draft = make();
  let pdf: OpenPdf;
  let pages: ReturnType<typeof printedPages> = [];
  let sheets: ReturnType<typeof printedParts> = [];
  let cut: readonly (readonly Place[])[] = [];
  let sewn: readonly (readonly Place[])[] = [];

  beforeAll(async () => {
    pdf = openPdf(await writePdf(draft, { font: printFont(), date: DATE }));
    pages = printedPages(pdf);
    sheets = printedParts(pages, sheetsOf(draft));
    cut = sheets.map((part) => part.cut);
    sewn = sheets.map((part) => part.sewn);
  }, 120_000);
  afterAll(() => pdf.close());

  const joined = (places: readonly (readonly Place[])[], push?: { label: string; by: Place }) => {
    const { shifts } = joinSheets(sheets);
    return places.flatMap((own, i) => {
      const label = sheets[i]?.label ?? '';
      const shift = shifts.get(label) as Place;
      const by = push?.label === label ? push.by : { x: 0, y: 0 };
      return own.map((p) => ({ x: p.x + shift.x + by.x, y: p.y + shift.y + by.y }));
    });
  };
  const [leg] = draft.pieces.map(reportPiece);
  // The plan may turn the leg on the sheets; nothing else is done to the report's lines.
  const place = placer(sheetsOf(draft).places[0] ?? { turn: 0, shift: { x: 0, y: 0 } });
  const laid = (points: readonly (readonly [number, number])[]) =>
    points.map(([x, y]): readonly [number, number] => {
      const to = place({ x, y });
      return [to.x, to.y];
    });
  const cutLines = leg?.cutLine.map((edge) => laid(edge.points)) ?? [];
  const sewnLines = [
    ...(leg?.stitchLine.filter((_, i) => (leg.cutLine[i]?.allowance ?? 0) > 0) ?? []),
    ...(leg?.lines.filter((_, i) => draft.pieces[0]?.lines[i]?.kind === 'stitching') ?? []),
  ].map((line) => laid(line.points));

  test('both test squares are true in both directions', () => {
    const squares = findSquares(pdf.picture(1));
    expect(squares).toHaveLength(2);
    for (const [i, side] of [100, 101.6].entries()) {
      expect(Math.abs((squares[i]?.width ?? 0) - side)).toBeLessThan(SQUARE_TRUE);
      expect(Math.abs((squares[i]?.height ?? 0) - side)).toBeLessThan(SQUARE_TRUE);
    }
  });

  test('the half-diamonds found in the pixels join all sheets without a gap', () => {
    expect(joinSheets(sheets).worst).toBeLessThan(MARKS_MEET);
    for (const mark of sheets.flatMap((sheet) => sheet.marks)) expect(mark.baseLength).toBeGreaterThan(mark.depth);
  });

  test('the joined cut line is the report’s, everywhere, both ways', () => {
    const agreement = compareInk(joined(cut), cutLines);
    expect(agreement.inkFromLines).toBeLessThan(TRUE_WITHIN);
    expect(agreement.linesFromInk).toBeLessThan(TRUE_WITHIN);
  });

  test('the joined stitching line lies where the cut line’s own shift puts it', () => {
    const { shift } = compareInk(joined(cut), cutLines);
    const agreement = compareInk(joined(sewn), sewnLines, shift);
    expect(agreement.inkFromLines).toBeLessThan(TRUE_WITHIN);
    // Between two dashes lie 2.5 mm of nothing; no place on the line is farther than half of it from a dash.
    expect(agreement.linesFromInk).toBeLessThan(1.25 + TRUE_WITHIN);
  });

  test('a sheet that slipped by 0.6 mm is found out', () => {
    const most = cut.reduce((best, places, i) => (places.length > (cut[best]?.length ?? 0) ? i : best), 0);
    const label = sheets[most]?.label ?? '';
    const worst = [
      { x: 0.6, y: 0 },
      { x: 0, y: 0.6 },
    ].map((by) => {
      const { inkFromLines, linesFromInk } = compareInk(joined(cut, { label, by }), cutLines);
      return Math.max(inkFromLines, linesFromInk);
    });
    // A slip along a straight stretch of the line moves it onto itself; one of the two goes across.
    expect(Math.max(...worst)).toBeGreaterThan(TRUE_WITHIN);
  });

  test('a half-diamond that is out of place by 0.6 mm is found out', () => {
    const [first, ...others] = sheets;
    if (!first) throw new Error('no sheets');
    const marks = first.marks.map((mark, i) =>
      i === 0 ? { ...mark, base: { x: mark.base.x + 0.6, y: mark.base.y } } : mark,
    );
    expect(joinSheets([{ ...first, marks }, ...others]).worst).toBeGreaterThan(2 * MARKS_MEET);
  });

  test('a sheet that is missing is found out', () => {
    const without = cut.map((places, i) => (i === 0 ? [] : places));
    expect(compareInk(joined(without), cutLines).linesFromInk).toBeGreaterThan(TRUE_WITHIN);
  });

  test('first pages and every sheet of the plan, none of them blank', () => {
    expect(pdf.pages).toBe(sheetsOf(draft).sheets.length + coverPages(pdf));
    expect(pages.map((page) => page.label)).toEqual(sheetsOf(draft).sheets.map((sheet) => sheet.label));
    for (const { drawn, label } of pages) expect(drawn, label).toBeGreaterThan(20);
  });

  test('qpdf finds nothing to say', () => {
    expect(pdf.check()).toContain('No syntax or stream encoding errors found');
  });
});
