import { describe, expect, test } from 'vitest';
import { writePrinterTestPdf } from '../../src/files/pdf/printer-test';
import { sheetsOf } from '../../src/project';
import { correctionFor, edgeLines, joinLine, printerTest, type SheetPlan } from '../../src/sheets';
import { draftWith, projectWith } from '../files/drafts';
import { printFont } from '../files/print-font';
import { writePdf } from '../files/written';
import { every } from './every';
import { findBars } from './paper/find-bars';
import { joinSheets, MARKS_MEET } from './paper/join-sheets';
import { inkedPixels, type Place } from './paper/pixels';
import { printedPages, printedParts } from './paper/printed';
import { openPdf, PIXELS_PER_MM } from './paper/render';
import { findSquares } from './paper/squares';

/** A printer that prints a millimetre too short across its paper and too long along it. */
const PRINTER = { x: 0.985, y: 1.01 };
/** A sheet that lies across goes through it turned. */
const TURNED = { x: PRINTER.y, y: PRINTER.x };
/** A steel rule is read to half a millimetre. */
const READ = 0.5;
const TRUE_AGAIN = 0.2;
/** Two pixels: the rim of a line is paler than its middle. */
const EDGE_TRUE = 0.2;
const SIDES = [100, 101.6];

const options = { font: printFont(), date: new Date('2026-11-24T12:00:00Z') };
const cases = [
  { sheet: 'A4', orientation: 'portrait', units: 'cm' },
  { sheet: 'Letter', orientation: 'landscape', units: 'inch' },
  ...(every
    ? ([
        { sheet: 'A4', orientation: 'landscape', units: 'cm' },
        { sheet: 'Letter', orientation: 'portrait', units: 'inch' },
        { sheet: 'A3', orientation: 'landscape', units: 'cm' },
        { sheet: 'Tabloid', orientation: 'portrait', units: 'inch' },
        { sheet: 'Legal', orientation: 'portrait', units: 'inch' },
      ] as const)
    : []),
] as const;

/** A tip that lies turned has what the rule's reading left of the error across where its neighbours have that along. */
function turnedOff({ sheets, scale }: SheetPlan, printer: { readonly x: number; readonly y: number }): number {
  const turned = sheets.flatMap(({ tips }) => tips.filter(({ place }) => place.turn !== 0).map(({ window }) => window));
  const longest = Math.max(0, ...turned.map((box) => Math.max(box.right - box.left, box.bottom - box.top)));
  return longest * Math.abs(scale.x * printer.x - scale.y * printer.y);
}

describe.each(cases)('a printer that prints 98.5 % × 101 %, $sheet $orientation', ({ units, ...paper }) => {
  const project = projectWith({ units, paper, leg: { length: 'knee' } });

  test('its test page says by how much, and corrected the squares are true again', async () => {
    const bars = printerTest(project.paper, units);
    const page = openPdf(writePrinterTestPdf({ project }, options));
    const seen = findBars(page.picture(1, PRINTER));
    page.close();
    expect(Math.abs(seen.across - bars.across * PRINTER.x)).toBeLessThan(0.15);
    expect(Math.abs(seen.along - bars.along * PRINTER.y)).toBeLessThan(0.15);
    const read = (bar: number) => Math.round(bar / READ) * READ;
    const corrected = {
      correctX: correctionFor(bars.across, read(seen.across)),
      correctY: correctionFor(bars.along, read(seen.along)),
    };

    const draft = draftWith({ units, paper: { ...paper, ...corrected }, leg: { length: 'knee' } });
    const pdf = openPdf(await writePdf(draft, options));
    const squares = findSquares(pdf.picture(1, PRINTER));
    const off = squares.flatMap(({ width, height }, i) => [width, height].map((side) => side - (SIDES[i] ?? 0)));
    if (every) console.log(`${paper.sheet} ${paper.orientation}: squares off by ${off.map((mm) => mm.toFixed(3))} mm`);
    expect(off).toHaveLength(4);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(TRUE_AGAIN);
    // The correction stands on every sheet, and the marks of sheets that lie across meet as well.
    const printer = paper.orientation === 'landscape' ? TURNED : PRINTER;
    const pages = printedPages(pdf, printer);
    const plan = sheetsOf(draft);
    expect(joinSheets(printedParts(pages, plan, printer)).worst).toBeLessThan(MARKS_MEET + turnedOff(plan, printer));
    for (const { words, label } of pages)
      expect(words.map(({ text }) => text).join(' '), label).toContain('printer corrected × ');
    pdf.close();
  }, 60_000);

  test('without the correction they are not', async () => {
    const pdf = openPdf(await writePdf(draftWith({ units, paper, leg: { length: 'knee' } }), options));
    const squares = findSquares(pdf.picture(1, PRINTER));
    pdf.close();
    const off = squares.flatMap(({ width, height }, i) => [width, height].map((side) => side - (SIDES[i] ?? 0)));
    expect(Math.min(...off.map(Math.abs))).toBeGreaterThan(4 * TRUE_AGAIN);
  });
});

test.each(['cm', 'inch'] as const)('the test page’s lines stand at their margins on all four edges, %s', (units) => {
  const page = openPdf(writePrinterTestPdf({ project: projectWith({ units }) }, options));
  const picture = page.picture(1);
  page.close();
  const { width, height } = picture;
  const [first] = edgeLines(units);
  const margin = first?.margin ?? 0;
  const inked = inkedPixels(picture).map((pixel) => ({ x: (pixel % width) + 0.5, y: Math.floor(pixel / width) + 0.5 }));
  const nearest = [
    ({ x }: Place) => x,
    ({ y }: Place) => y,
    ({ x }: Place) => width - x,
    ({ y }: Place) => height - y,
  ].map((away) => inked.reduce((least, p) => Math.min(least, away(p)), Infinity) / PIXELS_PER_MM);
  for (const away of nearest) expect(Math.abs(away - margin)).toBeLessThan(EDGE_TRUE);
});

test('on a sheet that lies across, the correction of the printer’s short side is the one down the sheet', async () => {
  const draft = draftWith({
    leg: { length: 'knee' },
    paper: { orientation: 'landscape', correctX: 1 / PRINTER.x, correctY: 1 / PRINTER.y },
  });
  const pdf = openPdf(await writePdf(draft, options));
  const plan = sheetsOf(draft);
  const parts = printedParts(printedPages(pdf, TURNED), plan, TURNED);
  pdf.close();
  const sheet = plan.sheets.find(
    (one) => joinLine(one, 'right') !== undefined && joinLine(one, 'bottom') !== undefined,
  );
  const seen = parts.find(({ label }) => label === sheet?.label);
  if (!sheet || !seen) throw new Error('no sheet has a neighbour at its right and below');
  const shown = { x: joinLine(sheet, 'right') ?? 0, y: joinLine(sheet, 'bottom') ?? 0 };
  const base = (towards: 'left' | 'up', along: 'x' | 'y') =>
    seen.marks.filter((mark) => mark.towards === towards).map((mark) => mark.base[along])[0] ?? Number.NaN;
  // From the drawing's corner on the paper, which the printer moves too, to the join: true on the table.
  expect(Math.abs(base('left', 'x') - 10 * TURNED.x - (shown.x - sheet.window.left))).toBeLessThan(0.1);
  expect(Math.abs(base('up', 'y') - 10 * TURNED.y - (shown.y - sheet.window.top))).toBeLessThan(0.1);
});
