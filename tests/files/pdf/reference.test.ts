import { describe, expect, test } from 'vitest';
import { writeReferencePdf } from '../../../src/files/pdf/reference';
import { referenceSheet } from '../../../src/sheets';
import { CELLS, findMarks, type GreyPicture, MARK_SHEET, MOST_SHEETS, marksOfSheet } from '../../../src/trace';
import { openPdf, PIXELS_PER_MM, type Picture } from '../../outside/paper/render';
import { projectWith } from '../drafts';
import { printFont } from '../print-font';

const options = { font: printFont(), date: new Date(0) };
const PRINTER = { x: 0.985, y: 1.01 };
/** What a pixel rounds, millimetres. */
const PRINTED = 0.1;

/** A page as a camera straight above it sees it. */
const grey = ({ data, width }: Picture): GreyPicture => {
  const seen = new Uint8Array(data.length / 3);
  for (let i = 0; i < seen.length; i += 1) seen[i] = data[3 * i] ?? 0;
  return { width, height: seen.length / width, data: seen };
};

/** How far the marks that are found on a page lie beside their places, millimetres; the page must show just those of its sheet. */
function offsOn(picture: Picture, sheet: number, place: (x: number, y: number) => readonly [number, number]) {
  const found = findMarks(grey(picture));
  const printed = marksOfSheet(sheet);
  expect(found.map(({ number }) => number)).toEqual(printed.map(({ number }) => number));
  return found.flatMap(({ corners }, mark) =>
    corners.map((corner, i) => {
      const { x, y } = printed[mark]?.corners[i] ?? { x: 0, y: 0 };
      const [px, py] = place(x, y);
      return Math.hypot(corner.x / PIXELS_PER_MM - px, corner.y / PIXELS_PER_MM - py);
    }),
  );
}

describe.each([
  { sheet: 'A4', units: 'cm', pts: '595', shown: 1 },
  { sheet: 'Letter', units: 'inch', pts: '612', shown: 5 },
  { sheet: 'A0', units: 'cm', pts: '595', shown: MOST_SHEETS },
] as const)('the mark sheets of $sheet, $units', ({ sheet, units, pts, shown }) => {
  test('say how to use them, and show their marks where the finder looks for them, on pages that any printer holds', async () => {
    const project = projectWith({ units, paper: { sheet } });
    const pdf = openPdf(writeReferencePdf({ project }, options));
    expect(pdf.pages).toBe(1 + MOST_SHEETS);
    expect(pdf.info()).toMatch(new RegExp(`Page size:\\s+${pts}`));
    expect(pdf.check()).toContain('No syntax or stream encoding errors');
    const { left, top, paper } = referenceSheet(project.paper, units);
    const offs = offsOn(pdf.picture(1 + shown), shown, (x, y) => [left + x, top + y]);
    expect(Math.max(...offs)).toBeLessThan(PRINTED);
    for (let page = 1; page <= pdf.pages; page += 1)
      for (const { text, right, bottom, left: from } of pdf.words(page)) {
        expect(right, text).toBeLessThan(paper.width - 5);
        expect(from, text).toBeGreaterThan(5);
        expect(bottom, text).toBeLessThan(paper.height - 5);
      }
    const said = (page: number) =>
      pdf
        .words(page)
        .map(({ text }) => text)
        .join(' ');
    expect(said(1)).toContain('Measure the square on one of them: 100 mm (3.94 in) each way.');
    expect(said(4)).toContain('Mark sheet 3 of 8');
    expect(said(4)).toContain('A to B is 180 mm (7.09 in), A to D 240 mm (9.45 in).');
    pdf.close();
  });
});

test('on a printer that prints wrong they are true with the correction, like the pattern', async () => {
  const project = projectWith({ paper: { correctX: 1 / PRINTER.x, correctY: 1 / PRINTER.y } });
  const { left, top } = referenceSheet(project.paper, 'cm');
  const pdf = openPdf(writeReferencePdf({ project }, options));
  const picture = pdf.picture(3, PRINTER);
  pdf.close();
  const offs = offsOn(picture, 2, (x, y) => [left * PRINTER.x + x, top * PRINTER.y + y]);
  expect(Math.max(...offs)).toBeLessThan(PRINTED);
});

test('the words on a sheet leave a cell of white round its marks', async () => {
  const project = projectWith({});
  const pdf = openPdf(writeReferencePdf({ project }, options));
  const { left, top } = referenceSheet(project.paper, 'cm');
  const boxes = marksOfSheet(1).map(({ corners }) => corners[0]);
  for (const { text, left: from, right, top: upper, bottom } of pdf.words(2))
    for (const { x, y } of boxes) {
      const white = MARK_SHEET.side / CELLS;
      const apart =
        right < left + x - white ||
        from > left + x + MARK_SHEET.side + white ||
        bottom < top + y - white ||
        upper > top + y + MARK_SHEET.side + white;
      expect(apart, text).toBe(true);
    }
  pdf.close();
});
