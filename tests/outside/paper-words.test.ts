import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Check } from '../../src/check';
import { placedDrawings } from '../../src/drawing';
import { bodyRows, cutRows } from '../../src/files/content/rows';
import { drawFirst, otherWords } from '../../src/files/pdf/first-page';
import { firstPage } from '../../src/files/pdf/first-paper';
import { firstWords } from '../../src/files/pdf/first-words';
import { writeLargePdf } from '../../src/files/pdf/large';
import { writePrinterTestPdf } from '../../src/files/pdf/printer-test';
import { startPdf } from '../../src/files/pen/pen';
import { checksOf, type Draft, sheetsOf } from '../../src/project';
import { joinLine, partsInOrder } from '../../src/sheets';
import { mm, number, say } from '../../src/words';
import { draftWith, projectWith } from '../files/drafts';
import { printFont } from '../files/print-font';
import { writePdf } from '../files/written';
import { coverPages } from './paper/printed';
import { type OpenPdf, openPdf, type Word } from './paper/render';

const DATE = new Date('2026-11-24T12:00:00Z');
const pdfOf = (draft: Draft) => writePdf(draft, { font: printFont(), date: DATE });

/** The first sheet alone, saying what these checks say. */
function firstOf(draft: Draft, checks: readonly Check[]): Uint8Array {
  const plan = sheetsOf(draft);
  const page = firstPage(plan, draft.project.units === 'inch');
  const pen = startPdf(page.width, page.height, printFont(), { title: '', subject: '', date: DATE });
  const told = firstWords(draft, DATE, 'first.pdf', { checks });
  const drawings = placedDrawings(draft.printed, plan.places);
  drawFirst(pen, page, told, [otherWords(page, told, drawings)], draft, drawings);
  return pen.bytes();
}

const wrong = (i: number): Check => ({
  id: `made-up-${i}`,
  name: say`Check number ${number(i)}`,
  verdict: i % 2 === 0 ? 'wrong' : 'doubtful',
  measured: 1,
  wanted: 0,
  tolerance: 0,
  unit: 'mm',
  reason: say`It came out at ${mm(123.4)} where ${mm(100)} were wanted, which is a long sentence that takes a line or two.`,
  remedy: say`Change this, that or the other by ${mm(23.4)} and look again.`,
});

const inches = draftWith({ units: 'inch', body: { hipDepth: 206.375, ageYears: 34 }, paper: { sheet: 'Letter' } });
const long = draftWith({
  name: `A very long name for a pair of flannel bottoms ${'that somebody typed without stopping '.repeat(4)}`,
  body: { label: 'Unbreakablelabelofabodywhoseownernevertypesblanks'.repeat(2) },
  paper: { sheet: 'A4', margin: 25 },
});
const complaining = (count: number) => Array.from({ length: count }, (_, i) => wrong(i));

/** A small piece’s join may be too short for words beside its marks. */
const SHORT_JOIN = 60;
/** The capitals’ height in parts of the box that Poppler gives a word of the print font. */
const CAPITALS_OF_BOX = 0.729 / 1.164;
/** Letters may hang over their own box by less than this; boxes that share more lie on each other. */
const HAIR = 0.4;
const overlap = (a: Word, b: Word) =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > HAIR &&
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 2 * HAIR;

describe.each([
  { name: 'inches on Letter', draft: inches, checks: checksOf(inches), margin: 10, pages: 2 },
  { name: 'a long name and a wide margin', draft: long, checks: checksOf(long), margin: 15, pages: 2 },
  { name: 'sixteen checks that complain', draft: inches, checks: complaining(16), margin: 10, pages: 3 },
  { name: 'so many checks that they need another page', draft: inches, checks: complaining(45), margin: 10, pages: 4 },
])('the first pages: $name', ({ draft, checks, margin, pages }) => {
  let pdf: OpenPdf;
  beforeAll(() => {
    pdf = openPdf(firstOf(draft, checks));
  });
  afterAll(() => pdf.close());
  const paper = sheetsOf(draft).paper;

  test('are two, or as many more as the words need', () => {
    expect(pdf.pages).toBe(pages);
  });

  test('have no words that lie on each other or reach out of the margin', () => {
    const width = Math.min(paper.width, paper.height);
    const height = Math.max(paper.width, paper.height);
    for (let page = 1; page <= pages; page += 1) {
      const words = pdf.words(page);
      expect(words.length).toBeGreaterThan(50);
      for (const word of words) {
        expect(word.left, word.text).toBeGreaterThan(margin - HAIR);
        expect(word.right, word.text).toBeLessThan(width - margin + HAIR);
        expect(word.top, word.text).toBeGreaterThan(margin - 1);
        expect(word.bottom, word.text).toBeLessThan(height - margin + 1);
      }
      const clashes = words.flatMap((a, i) =>
        words
          .slice(i + 1)
          .filter((b) => overlap(a, b))
          .map((b) => `${a.text} / ${b.text}`),
      );
      expect(clashes).toEqual([]);
    }
  });
});

describe.each([
  { name: 'inches on Letter', draft: inches },
  { name: 'a long name and a wide margin', draft: long },
])('the sheets: $name', ({ draft }) => {
  let pdf: OpenPdf;
  beforeAll(async () => {
    pdf = openPdf(await pdfOf(draft));
  });
  afterAll(() => pdf.close());
  const paper = sheetsOf(draft).paper;

  test('come after the first two pages, which lie on each other’s back where a printer prints on both sides', () => {
    expect(coverPages(pdf)).toBe(2);
    expect(pdf.pages).toBe(sheetsOf(draft).sheets.length + 2);
  });

  test('no word of a sheet is cut by its window or hidden under a neighbour, or lies on another', () => {
    const { margin: edge } = sheetsOf(draft);
    for (const [i, sheet] of sheetsOf(draft).sheets.entries()) {
      const words = pdf.words(i + 3);
      const seen = {
        right: edge + ((joinLine(sheet, 'right') ?? sheet.window.right) - sheet.window.left),
        bottom: edge + ((joinLine(sheet, 'bottom') ?? sheet.window.bottom) - sheet.window.top),
      };
      for (const word of words) {
        expect(word.left, `${sheet.label} ${word.text}`).toBeGreaterThan(edge - HAIR);
        expect(word.right, `${sheet.label} ${word.text}`).toBeLessThan(paper.width - edge + HAIR);
        expect(word.top, `${sheet.label} ${word.text}`).toBeGreaterThan(edge - HAIR);
        expect(word.bottom, `${sheet.label} ${word.text}`).toBeLessThan(paper.height - edge + HAIR);
        // Across the join: half seen, half covered.
        const across =
          (word.left < seen.right - HAIR && word.right > seen.right + 2) ||
          (word.top < seen.bottom - HAIR && word.bottom > seen.bottom + 2);
        expect(across, `${sheet.label} ${word.text}`).toBe(false);
      }
      const clashes = words.flatMap((a, k) =>
        words
          .slice(k + 1)
          .filter((b) => overlap(a, b))
          .map((b) => `${sheet.label}: ${a.text} / ${b.text}`),
      );
      expect(clashes).toEqual([]);
    }
  });
});

describe('somebody at the table', () => {
  const draft = inches;
  const { sheets, margin } = sheetsOf(draft);
  const order = partsInOrder(sheetsOf(draft)).map(({ label }) => label);
  let pdf: OpenPdf;
  beforeAll(async () => {
    pdf = openPdf(await pdfOf(draft));
  });
  afterAll(() => pdf.close());
  const textOf = (i: number) =>
    pdf
      .words(i + 3)
      .map(({ text }) => text)
      .join(' ');

  test('reads each sheet’s label from above: capitals of 20 mm wherever there is white for them, never of less than 4 mm', () => {
    const heights = sheets.map(({ label }, i) => {
      const [height = 0] = pdf
        .words(i + 3)
        .filter(({ text }) => text === label)
        .map(({ top, bottom }) => bottom - top)
        .sort((a, b) => b - a);
      return height * CAPITALS_OF_BOX;
    });
    expect(Math.min(...heights)).toBeGreaterThan(4);
    expect(heights.filter((height) => height > 20).length / heights.length).toBeGreaterThan(0.7);
  });

  test('reads at each edge which sheet goes there, and on each sheet its place in the order of taping', () => {
    for (const [i, { label, joins }] of sheets.entries()) {
      for (const { side, neighbour } of joins.filter(({ from, to }) => to - from > SHORT_JOIN))
        expect(textOf(i), `${label} ${side}`).toMatch(
          side === 'left' || side === 'top'
            ? new RegExp(`\\b${neighbour} ↑`)
            : new RegExp(`\\b${neighbour} (goes here )?↓`),
        );
      expect(textOf(i)).toContain(`Number ${order.indexOf(label) + 1} of ${order.length} in the order of taping`);
    }
  });

  test('finds nothing of the pattern on the back of the squares, and the printer is asked for one side', async () => {
    expect(Buffer.from(await pdfOf(draft)).toString('latin1')).toContain('/Duplex /Simplex');
    expect(
      pdf
        .words(2)
        .map(({ text }) => text)
        .join(' '),
    ).toContain('Is anything printed on the back of this page?');
    expect(margin).toBeGreaterThan(0);
  });

  test('reads on the first two pages how the sheets are joined to strips, and the strips to one', () => {
    const text = pdf
      .text()
      .replace(/\s*\+\s*/g, ' + ')
      .replace(/\s+/g, ' ');
    const letters = [...new Set(order.map((label) => label.replace(/\d+$/, '')))];
    for (const letter of letters) {
      const strip = order.filter((label) => label.startsWith(letter));
      expect(text).toContain(strip.join(' + '));
    }
    expect(text).toContain(letters.join(' + '));
    for (const words of ['1 Cut', '2 Lay', '3 Tape', 'What the lines mean', 'one side of the paper only'])
      expect(text).toContain(words);
  });
});

describe('what the first pages say, as Poppler reads it', () => {
  let text = '';
  beforeAll(async () => {
    const pdf = openPdf(await pdfOf(inches));
    text = pdf.text().split('\f').slice(0, coverPages(pdf)).join(' ').replace(/\s+/g, ' ');
    pdf.close();
  });

  test.each([
    'Flannel bottoms, first pair',
    'Body 1',
    '8⅛ in',
    '34 years',
    '24 November 2026',
    'Flannel-bottoms-first-pair.pdf',
    'Print at 100 %',
    'fit to page',
    '100 mm',
    '4 in',
    'Finished measures',
    'half-diamonds',
    'Checks',
  ])('“%s”', (words) => {
    expect(text).toContain(words);
  });

  test('no value in millimetres or centimetres slips into an inch project', () => {
    // The square's own label and the margin are millimetres for everybody.
    expect(text.replaceAll('100 mm', '')).not.toMatch(/\d (mm|cm)\b/);
  });
});

describe('the document', () => {
  test('says what it is, asks for no scaling, is small, and is the same every time', async () => {
    const bytes = await pdfOf(inches);
    expect(bytes.length).toBeLessThan(150_000);
    expect(await pdfOf(inches)).toEqual(bytes);
    const raw = Buffer.from(bytes).toString('latin1');
    expect(raw).toContain('/PrintScaling /None');
    const pdf = openPdf(bytes);
    expect(pdf.info()).toMatch(/Title:\s+Flannel bottoms, first pair/);
    expect(pdf.info()).toMatch(/Author:\s+Legwork/);
    expect(pdf.info()).toMatch(/Subject:\s+\S/);
    expect(pdf.info()).toMatch(/CreationDate:.*2026/);
    pdf.close();
  });

  test('another date gives other bytes, and a date beyond the writer’s own limit still gives a file', async () => {
    const early = await writePdf(inches, { font: printFont(), date: DATE });
    const late = await writePdf(inches, { font: printFont(), date: new Date('2045-01-01T00:00:00Z') });
    expect(late).not.toEqual(early);
  });

  test('prints a sign for what the font does not have, and never fails on it', async () => {
    const pdf = openPdf(await pdfOf(draftWith({ name: 'Schlafanzug ½ 🩳 睡衣 \u0000 b' })));
    expect(pdf.text()).toContain('Schlafanzug ½ ? ??');
    pdf.close();
  });
});

test('the printer’s test page says everything on the smallest paper, on as many pages as it takes', async () => {
  const paper = { sheet: 'own', ownWidth: 150, ownHeight: 150, correctX: 1.04, correctY: 0.96 };
  const pdf = openPdf(writePrinterTestPdf({ project: projectWith({ paper }) }, { font: printFont(), date: DATE }));
  const words = Array.from({ length: pdf.pages }, (_, i) => pdf.words(i + 1)).flat();
  expect(words.map(({ text }) => text).join(' ')).toMatch(/Printer test .* 100 mm with the correction × 1.04, × 0.96/);
  for (const { text, left, right, top, bottom } of words)
    expect(left > 8 && right < 142 && top > 8 && bottom < 142, text).toBe(true);
  expect(pdf.pages).toBe(3);
  pdf.close();
});

describe('one large sheet', () => {
  test('is as large as the leg, at true size, with no join', async () => {
    const draft = draftWith();
    const pdf = openPdf(writeLargePdf(draft, { font: printFont(), date: DATE }));
    expect(pdf.pages).toBe(1);
    expect(pdf.check()).toContain('No syntax or stream encoding errors found');
    const [, width, height] = /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(pdf.info()) ?? [];
    const xs = draft.pieces.flatMap((piece) => piece.cutLine.flatMap((edge) => edge.curves.flatMap(([a]) => [a.x])));
    expect((Number(width) * 25.4) / 72).toBeCloseTo(Math.max(...xs) - Math.min(...xs) + 30, 0);
    expect(Number(height)).toBeGreaterThan(Number(width));
    expect(pdf.text()).toContain('100 mm');
    pdf.close();
  });

  test('says all it has to say, however long that is, and within the page', async () => {
    const pdf = openPdf(writeLargePdf(long, { font: printFont(), date: DATE }));
    const text = pdf.text().replace(/\s+/g, '');
    for (const { name, value } of [...bodyRows(long), ...cutRows(long)])
      expect(text).toContain(`${name}${value}`.replace(/\s+/g, ''));
    expect(text).toContain(long.project.body.label);
    const [, width, height] = (/Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(pdf.info()) ?? []).map(Number);
    for (const word of pdf.words(1)) {
      expect(word.right, word.text).toBeLessThan(((width ?? 0) * 25.4) / 72);
      expect(word.bottom, word.text).toBeLessThan(((height ?? 0) * 25.4) / 72);
    }
    pdf.close();
  });

  test('is refused where a PDF page can not be as large', async () => {
    const draft = draftWith();
    const [piece] = draft.pieces;
    if (!piece) throw new Error('no piece');
    const far = (p: { x: number; y: number }) => ({ x: p.x, y: p.y * 6 });
    const tall = {
      ...piece,
      cutLine: piece.cutLine.map((edge) => ({
        ...edge,
        curves: edge.curves.map(([a, b, c, d]) => [far(a), far(b), far(c), far(d)] as const),
      })),
    };
    expect(() => writeLargePdf({ ...draft, printed: [tall] }, { font: printFont(), date: DATE })).toThrow(/508 cm/);
  });
});
