import { type Ink, inkCrosses, lineHeight, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, boxesMeet } from '../../plane';
import { type SheetPart, type SheetPlan, sheetCell } from '../../sheets';

/** One line of a sheet's own words. */
export interface NoteLine {
  readonly text: string;
  readonly pt: number;
  readonly quiet: boolean;
}

/** A sheet's own words: its label first, in a place of their own. */
export interface SheetNote {
  readonly lines: readonly NoteLine[];
  /** On the drawing. */
  readonly box: Box;
}

export const LABEL_PT = 15;
/** A tip’s own label is smaller than the one of the sheet that bears it. */
export const TIP_LABEL_PT = 10;
const WORDS_PT = 6.5;
/** White round the words, on the paper. */
const CLEAR: Mm = 2.5;
/** From one tried place to the next, on the paper. */
const STEP: Mm = 3;
/** Wider than this a line of the note is shortened. */
const WIDEST: Mm = 70;

/**
 * Where a sheet says what it is: the first free place in reading order, off every line, mark and word; where no place
 * is large enough, the label alone, and at the worst over a line rather than nowhere.
 *
 * @param ink what is drawn in the sheet's window
 * @param taken boxes of marks and words that are already there
 * @param says how large the label is, and the lines under it: those that must stand there, and others, most needed first
 */
export function placeNote(
  plan: SheetPlan,
  sheet: SheetPart,
  ink: Ink,
  taken: readonly Box[],
  says: { readonly labelPt: number; readonly must: readonly string[]; readonly may: readonly string[] },
  widthOf: WidthOf,
): SheetNote {
  const all: readonly NoteLine[] = [
    { text: sheet.label, pt: says.labelPt, quiet: false },
    ...says.must.map((text) => ({ text, pt: WORDS_PT, quiet: false })),
    ...says.may.map((text, i) => ({ text: shortened(text, widthOf), pt: WORDS_PT, quiet: i > 0 })),
  ];
  const least = 1 + says.must.length;
  for (let count = all.length; count >= least; count -= 1) {
    const lines = all.slice(0, count);
    const size = noteSize(lines, widthOf);
    for (const box of places(plan, sheet, size)) {
      if (!inkCrosses(ink, box) && !taken.some((other) => boxesMeet(other, box))) return { lines, box };
    }
  }
  const lines = all.slice(0, least);
  const tries = [...places(plan, sheet, noteSize(lines, widthOf))];
  const box = tries.find((tried) => !taken.some((other) => boxesMeet(other, tried))) ?? tries[0] ?? sheet.window;
  return { lines, box };
}

/** The height of a note's line from the top of the one to the top of the next. */
export const noteLineHeight = ({ pt }: NoteLine): Mm => lineHeight(pt);

/** White inside a note's box, on the paper. */
export const NOTE_CLEAR = CLEAR;

function noteSize(lines: readonly NoteLine[], widthOf: WidthOf): { readonly width: Mm; readonly height: Mm } {
  return {
    width: Math.max(...lines.map((line) => widthOf(line.text, line.pt))) + 2 * CLEAR,
    height: lines.reduce((sum, line) => sum + noteLineHeight(line), 0) + 2 * CLEAR,
  };
}

/** Boxes of that size all over what stays in sight of the sheet, row by row. */
function* places(
  { scale }: SheetPlan,
  sheet: SheetPart,
  size: { readonly width: Mm; readonly height: Mm },
): Generator<Box> {
  const cell = sheetCell(sheet);
  const width = size.width / scale.x;
  const height = size.height / scale.y;
  for (let top = cell.top; top + height <= cell.bottom; top += STEP / scale.y) {
    for (let left = cell.left; left + width <= cell.right; left += STEP / scale.x) {
      yield { left, top, right: left + width, bottom: top + height };
    }
  }
}

function shortened(text: string, widthOf: WidthOf): string {
  if (widthOf(text, WORDS_PT) <= WIDEST) return text;
  const letters = [...text];
  while (letters.length > 1 && widthOf(`${letters.join('')}…`, WORDS_PT) > WIDEST) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}
