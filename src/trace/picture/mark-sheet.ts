import type { Mm } from '../../length';
import { type Point, point } from '../../plane';

/** How many cells a mark has each way: a black frame of one cell, and the cells that say its number within. @source tolerance */
export const CELLS = 7;
/** @source geometry */
const INNER = CELLS - 2;

/** A sheet bears so many marks, and so many sheets are told apart. @source practice: a sheet at each corner, and as many between */
export const MARKS_A_SHEET = 5;
/** @source practice */
export const MOST_SHEETS = 8;
const MOST_NUMBER = MARKS_A_SHEET * MOST_SHEETS;

/**
 * The sheet of marks that is laid beside a block: five squares, each with its number in it, four at the corners of a
 * rectangle and one in its middle; A4 and Letter hold it within what printers reach.
 *
 * @source practice: 4 cm is seen with 60 pixels and more where a whole block is on the picture
 */
export const MARK_SHEET: { readonly side: Mm; readonly width: Mm; readonly height: Mm } = {
  side: 40,
  width: 180,
  height: 240,
};

/** The upper left corner of each mark on its sheet, from the first one's: round the sheet, then the middle. @source geometry */
const PLACES: readonly Point[] = (() => {
  const [right, bottom] = [MARK_SHEET.width - MARK_SHEET.side, MARK_SHEET.height - MARK_SHEET.side];
  return [point(0, 0), point(right, 0), point(right, bottom), point(0, bottom), point(right / 2, bottom / 2)];
})();

/** A mark as it is printed: its number, and its corners on its sheet, clockwise from its own upper left. */
export interface PrintedMark {
  readonly number: number;
  readonly corners: readonly [Point, Point, Point, Point];
}

/** The marks of a sheet, 1 to {@link MOST_SHEETS}, in millimetres from the first mark's corner. */
export const marksOfSheet = (sheet: number): readonly PrintedMark[] =>
  PLACES.map(({ x, y }, i) => {
    const { side } = MARK_SHEET;
    return {
      number: MARKS_A_SHEET * (sheet - 1) + i + 1,
      corners: [point(x, y), point(x + side, y), point(x + side, y + side), point(x, y + side)],
    };
  });

/** The sheet on which a mark stands. */
export const sheetOfMark = (number: number): number => Math.ceil(number / MARKS_A_SHEET);

/** The inner cells in their order, but for the four at the corners, which say which way up the mark lies. */
const SAYING: readonly number[] = Array.from({ length: INNER * INNER }, (_, i) => i).filter((i) => !isCorner(i));

function isCorner(cell: number): boolean {
  const [column, row] = [cell % INNER, Math.floor(cell / INNER)];
  return column % (INNER - 1) === 0 && row % (INNER - 1) === 0;
}

/**
 * What is added to a number so that any two differ in seven cells at least: the remainder by this polynomial, 15 bits.
 *
 * @source R. C. Bose & D. K. Ray-Chaudhuri, *On a class of error correcting binary group codes*, 1960: the code of 31 bits
 *   with 16 of them free, shortened, from memory; a test counts the seven cells
 */
const POLYNOMIAL = 0b1000111110101111;
const ADDED = 15;
/** Cells alternate where a number has few bits, so that no mark is all black. @source tolerance */
const MIXED = 0b101100101001101011001;
/** Of seven cells that differ, so many may be misread without one number passing for another. @source tolerance */
const MOST_MISREAD = 1;

/** The cells of each number, as bits. @source geometry: the remainder of a division of polynomials over two elements */
const WORDS: readonly number[] = Array.from({ length: MOST_NUMBER + 1 }, (_, number) => {
  let rest = number << ADDED;
  for (let bit = SAYING.length - 1; bit >= ADDED; bit -= 1) if (rest & (1 << bit)) rest ^= POLYNOMIAL << (bit - ADDED);
  return ((number << ADDED) | rest) ^ MIXED;
});

/**
 * The inner cells of a mark, row by row: true where white.
 *
 * @param number 1 to 40
 */
export function cellsOfMark(number: number): readonly boolean[] {
  const word = WORDS[number] ?? 0;
  const cells = Array.from({ length: INNER * INNER }, (_, i) => i === 0);
  SAYING.forEach((cell, i) => {
    cells[cell] = (word & (1 << i)) !== 0;
  });
  return cells;
}

/** What a reading of the inner cells says: which mark, and by how many quarters of a turn it lies. */
export interface CellsRead {
  readonly number: number;
  /** So often the reading is turned clockwise until the mark stands upright: 0 to 3. */
  readonly turns: number;
}

/** The mark whose cells these are, however it lies; undefined where they are those of none. */
export function markOfCells(cells: readonly boolean[]): CellsRead | undefined {
  let upright = cells;
  for (let turns = 0; turns < 4; turns += 1) {
    const number = numberUpright(upright);
    if (number !== undefined) return { number, turns };
    upright = turnedClockwise(upright);
  }
  return undefined;
}

function numberUpright(cells: readonly boolean[]): number | undefined {
  // The upper left one alone is white.
  if (cells.some((white, i) => isCorner(i) && white !== (i === 0))) return undefined;
  const word = SAYING.reduce((sum, cell, i) => (cells[cell] ? sum | (1 << i) : sum), 0);
  const found = WORDS.findIndex((own, number) => number > 0 && differing(own, word) <= MOST_MISREAD);
  return found < 0 ? undefined : found;
}

const turnedClockwise = (cells: readonly boolean[]): readonly boolean[] =>
  cells.map((_, i) => {
    const [column, row] = [i % INNER, Math.floor(i / INNER)];
    return cells[(INNER - 1 - column) * INNER + row] as boolean;
  });

/** In how many bits two words differ. */
export function differing(a: number, b: number): number {
  let count = 0;
  for (let rest = a ^ b; rest !== 0; rest &= rest - 1) count += 1;
  return count;
}
