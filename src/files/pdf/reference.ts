import { baseline, INK, type LineStyle, lineHeight } from '../../drawing';
import { MM_PER_INCH, type Mm, plain } from '../../length';
import { add, type Curve, mapTuple, type Point, point, straight } from '../../plane';
import type { Draft } from '../../project';
import { CHECK_SQUARE, referenceSheet } from '../../sheets';
import { CELLS, cellsOfMark, MARK_SHEET, MOST_SHEETS, marksOfSheet } from '../../trace';
import { number, own, type Phrase, type PhraseValue, said, say, words } from '../../words';
import type { PdfOptions } from '../pen/options';
import { type Pen, startPdf } from '../pen/pen';
import { wrapText } from '../pen/wrap-text';

const FINE: LineStyle = { width: 0.2, colour: INK.cut, dash: [] };
const TITLE_PT = 15;
const WORDS_PT = 10.5;
const LETTER_PT = 12;
/** From a mark to the words beside it: a cell stays white round it, and a little more. */
const CLEAR: Mm = 8;
/** Cells are printed into each other by so much of a cell: else a reader shows hairlines between them. */
const OVERLAP = 0.02;

/**
 * The sheets of marks to photograph beside a paper block, corrected for the printer like the pattern: how to use them, and
 * then each sheet on a page of its own, with a square to check its print by.
 *
 * @param draft its project's paper and units are used; Letter where its paper is measured in inches, else A4
 */
export function writeReferencePdf({ project }: Pick<Draft, 'project'>, options: PdfOptions): Uint8Array {
  const { paper: settings, units } = project;
  const { paper, left, top } = referenceSheet(settings, units);
  const { correctX, correctY } = settings;
  const pen = startPdf(paper.width, paper.height, options.font, {
    title: words`Mark sheets`,
    subject: words`Numbered marks to photograph beside a paper block`,
    date: options.date,
    oneSided: true,
  });
  const place = ({ x, y }: Point): Point => point(left + x * correctX, top + y * correctY);
  const set = setter(pen, place);
  const below = set(words`Mark sheets`, point(0, 0), MARK_SHEET.width, TITLE_PT);
  SENTENCES.reduce((y, sentence) => set(said(sentence), point(0, y), MARK_SHEET.width, WORDS_PT), below);
  for (let sheet = 1; sheet <= MOST_SHEETS; sheet += 1) {
    pen.newPage(paper.width, paper.height);
    drawSheet(pen, place, sheet);
  }
  return pen.bytes();
}

/** Sets a text down from a place of the sheet, so wide, and says where the next one begins. */
const setter = (pen: Pen, place: (p: Point) => Point) => (text: string, from: Point, width: Mm, pt: number) => {
  let { y } = from;
  for (const line of wrapText(text, width, pt, pen.widthOf)) {
    pen.words(line, place(point(from.x, baseline(y, pt))), { pt, colour: INK.words });
    y += lineHeight(pt);
  }
  return y + 2.5;
};

function drawSheet(pen: Pen, place: (p: Point) => Point, sheet: number): void {
  const marks = marksOfSheet(sheet);
  for (const { number: mark, corners } of marks) drawMark(pen, place, mark, corners[0]);
  const { side, width, height } = MARK_SHEET;
  const [from, wide] = [side + CLEAR, width - 2 * (side + CLEAR)];
  const letters = [point(from, 4), point(width - from, 4), point(width - from, height - 1), point(from, height - 1)];
  letters.forEach((at, i) => {
    pen.words('ABCD'.charAt(i), place(at), { pt: LETTER_PT, colour: INK.cut, align: i % 3 === 0 ? 'left' : 'right' });
  });
  const set = setter(pen, place);
  const below = set(words`Mark sheet ${number(sheet, 0)} of ${number(MOST_SHEETS, 0)}`, point(from, 9), wide, TITLE_PT);
  set(words`Lay it flat beside the block, any way round.`, point(from, below), wide, WORDS_PT);
  const corner = point((width - CHECK_SQUARE) / 2, (height - CHECK_SQUARE) / 2);
  const [a, b, c, d] = squareFrom(corner, CHECK_SQUARE);
  pen.stroke([straight(a, b), straight(b, c), straight(c, d), straight(d, a)], place, FINE, { closed: true });
  for (const [letter, end] of [
    ['E', a],
    ['F', d],
  ] as const)
    pen.words(letter, place(add(end, point(-4, 1.5))), { pt: LETTER_PT, colour: INK.cut, align: 'middle' });
  set(said(SQUARE_TOLD), add(corner, point(5, 4)), CHECK_SQUARE - 10, WORDS_PT);
  set(said(BY_HAND), point(from, height - side + 4), wide, WORDS_PT);
}

/** A square's corners, clockwise from its upper left. */
const squareFrom = ({ x, y }: Point, side: Mm): readonly [Point, Point, Point, Point] => [
  point(x, y),
  point(x + side, y),
  point(x + side, y + side),
  point(x, y + side),
];

function drawMark(pen: Pen, place: (p: Point) => Point, mark: number, corner: Point): void {
  const cell = MARK_SHEET.side / CELLS;
  const fill = (at: Point, width: Mm, height: Mm) => {
    const box = [at, add(at, point(width, 0)), add(at, point(width, height)), add(at, point(0, height))] as const;
    const round = mapTuple(box, (from, i): Curve => straight(from, box[(i + 1) % 4] as Point));
    pen.fill(round, place, INK.cut);
  };
  const inner = CELLS - 2;
  // The frame as four bars, then each run of black cells of a row.
  for (const across of [0, CELLS - 1]) fill(add(corner, point(across * cell, 0)), cell, MARK_SHEET.side);
  for (const down of [0, CELLS - 1]) fill(add(corner, point(0, down * cell)), MARK_SHEET.side, cell);
  cellsOfMark(mark).forEach((white, i) => {
    if (white) return;
    const [column, row] = [i % inner, Math.floor(i / inner)];
    const at = add(corner, point((column + 1 - OVERLAP) * cell, (row + 1 - OVERLAP) * cell));
    fill(at, (1 + 2 * OVERLAP) * cell, (1 + 2 * OVERLAP) * cell);
  });
}

/** Exact in both units: these are typed, not read off a tape. */
const both = (value: Mm): PhraseValue => own(`${value} mm (${plain(value / MM_PER_INCH, 2)} in)`);

const SQUARE_TOLD = say`This square measures ${both(CHECK_SQUARE)} each way, or it was not printed at 100 %.`;
const BY_HAND = say`To mark by hand: the outer corners of the marks. A to B is ${both(MARK_SHEET.width)}, A to D ${both(MARK_SHEET.height)}.`;

const SENTENCES: readonly Phrase[] = [
  say`They are photographed beside a block on paper, so that Legwork can flatten the picture and draw the block at its true size.`,
  say`1. Print them at 100 %, without fit to page, on plain white paper. Four sheets do for one photograph, pages 2 to 5. No sheet may lie there twice, which is why each has its number.`,
  say`2. Measure the square on one of them: ${both(CHECK_SQUARE)} each way. If it is off, print the test page and type what its bars measure, and the sheets are corrected, too.`,
  say`3. Lay the block flat on an even floor, and a sheet close to each of its corners, outside it and any way round; on a long block two more halfway down. Nothing between the sheets has to be measured. They lie flat, without a curl.`,
  say`4. Measure one length on the block itself, its grainline perhaps, and write it down to check by.`,
  say`5. Photograph it from as straight above as you can, with everything on the picture, sharp, in even light. Front and back may lie on one photograph.`,
  say`6. Or take up to six photographs that overlap, with every sheet left where it lies. A sheet that shows on two photographs joins them, and two join them better.`,
  say`7. At Blocks choose the photograph. The marks are found on it by their numbers, and you mark the places of the block.`,
  say`8. Where no mark is found, mark by hand the outer corners A, B, C and D of one sheet, or of any rectangle whose sides you measured.`,
];
