import { describe, expect, test } from 'vitest';
import { writeReferencePdf } from '../../../src/files/pdf/reference';
import { REFERENCE, referenceSheet } from '../../../src/sheets';
import { openPdf, PIXELS_PER_MM, type Picture } from '../../outside/paper/render';
import { projectWith } from '../drafts';
import { printFont } from '../print-font';

const options = { font: printFont(), date: new Date(0) };
const PRINTER = { x: 0.985, y: 1.01 };
/** Half the line that crosses a mark, and what a pixel rounds, millimetres. */
const MARKED = 0.3;

/** Whether a place of the page is dark, millimetres. */
const dark = ({ data, width }: Picture, x: number, y: number): boolean =>
  (data[3 * (Math.round(y * PIXELS_PER_MM) * width + Math.round(x * PIXELS_PER_MM))] ?? 255) < 128;

/** The middle of a mark near a place: where its filled quarters touch, found as where dark turns to light both ways. */
function middleNear(picture: Picture, x: number, y: number): { x: number; y: number } {
  const turnAlong = (at: (s: number) => boolean): number => {
    let best = Number.NaN;
    for (let s = -2; s < 2; s += 0.02) if (at(s) && !at(s + 0.02)) best = s + 0.01;
    return best;
  };
  // Right of the middle the lower quarter is dark, left of it the upper one.
  const across = turnAlong((s) => dark(picture, x - s, y + 1.5));
  const down = turnAlong((s) => dark(picture, x + 1.5, y - s));
  return { x: x - across, y: y - down };
}

describe.each([
  { sheet: 'A4', units: 'cm', pts: '595' },
  { sheet: 'Letter', units: 'inch', pts: '612' },
  { sheet: 'A0', units: 'cm', pts: '595' },
] as const)('the reference sheet of $sheet, $units', ({ sheet, units, pts }) => {
  test('has its marks where it says, on one page that any printer holds', async () => {
    const project = projectWith({ units, paper: { sheet } });
    const pdf = openPdf(writeReferencePdf({ project }, options));
    expect(pdf.pages).toBe(1);
    expect(pdf.info()).toMatch(new RegExp(`Page size:\\s+${pts}`));
    expect(pdf.check()).toContain('No syntax or stream encoding errors');
    const { left, top, paper } = referenceSheet(project.paper, units);
    const picture = pdf.picture(1);
    const corners = [
      [0, 0],
      [REFERENCE.width, 0],
      [REFERENCE.width, REFERENCE.height],
      [0, REFERENCE.height],
    ] as const;
    for (const [x, y] of corners) {
      const found = middleNear(picture, left + x, top + y);
      expect(Math.hypot(found.x - left - x, found.y - top - y), `${x}, ${y}`).toBeLessThan(MARKED);
    }
    const words = pdf.words(1);
    for (const { text, right, bottom, left: from } of words) {
      expect(right, text).toBeLessThan(paper.width - 5);
      expect(from, text).toBeGreaterThan(5);
      expect(bottom, text).toBeLessThan(paper.height - 5);
    }
    const said = words.map(({ text }) => text).join(' ');
    expect(said).toContain('A to B measures 170 mm (6.69 in), A to D 240 mm (9.45 in), E to F 200 mm (7.87 in)');
    pdf.close();
  });
});

test('on a printer that prints wrong it is true with the correction, like the pattern', async () => {
  const project = projectWith({ paper: { correctX: 1 / PRINTER.x, correctY: 1 / PRINTER.y } });
  const { left, top } = referenceSheet(project.paper, 'cm');
  const pdf = openPdf(writeReferencePdf({ project }, options));
  const picture = pdf.picture(1, PRINTER);
  pdf.close();
  const at = (x: number, y: number) => middleNear(picture, left * PRINTER.x + x, top * PRINTER.y + y);
  const [a, b, d] = [at(0, 0), at(REFERENCE.width, 0), at(0, REFERENCE.height)];
  expect(Math.abs(b.x - a.x - REFERENCE.width)).toBeLessThan(MARKED);
  expect(Math.abs(d.y - a.y - REFERENCE.height)).toBeLessThan(MARKED);
});
