import { lineHeight, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, type Point, point } from '../../plane';
import type { ClearPlaces, SheetPlan } from '../../sheets';

/** A sheet's own words beside its label, in a place of their own. */
export interface SheetNote {
  readonly lines: readonly string[];
  /** On the drawing. */
  readonly box: Box;
}

export const NOTE_PT = 8;
/** White round the words, on the paper. */
export const NOTE_CLEAR: Mm = 1.5;
/** Wider than this a line of the note is shortened. */
const WIDEST: Mm = 80;

/**
 * Where a sheet says what it is: as near to its label as there is white room; where there is little, what need not
 * stand there is left out, the least needed first, and at the worst it stands over a line rather than nowhere.
 *
 * @param label the box of the sheet's label
 * @param cell what stays in sight of the sheet
 * @param says the lines: those that must stand there, and others, most needed first
 */
export function placeNote(
  { scale }: Pick<SheetPlan, 'scale'>,
  label: Box,
  cell: Box,
  clear: ClearPlaces,
  says: { readonly must: readonly string[]; readonly may: readonly string[] },
  widthOf: WidthOf,
): SheetNote {
  const all = [...says.must, ...says.may].map((text) => shortened(text, widthOf));
  const under = point((label.left + label.right) / 2, label.bottom);
  for (let count = all.length; count >= says.must.length && count > 0; count -= 1) {
    const lines = all.slice(0, count);
    const { width, height } = noteSize(lines, widthOf);
    const box = clear(width / scale.x, height / scale.y, under);
    if (box) return { lines, box };
  }
  return noteAt(all.slice(0, says.must.length), under, cell, scale, widthOf);
}

/** A note that has to stand where there is no white room for it. */
function noteAt(
  lines: readonly string[],
  top: Point,
  cell: Box,
  scale: SheetPlan['scale'],
  widthOf: WidthOf,
): SheetNote {
  const { width, height } = noteSize(lines, widthOf);
  const [wide, high] = [width / scale.x, height / scale.y];
  const left = Math.max(cell.left, Math.min(top.x - wide / 2, cell.right - wide));
  const upper = Math.max(cell.top, Math.min(top.y, cell.bottom - high));
  return { lines, box: { left, right: left + wide, top: upper, bottom: upper + high } };
}

function noteSize(lines: readonly string[], widthOf: WidthOf): { readonly width: Mm; readonly height: Mm } {
  return {
    width: Math.max(0, ...lines.map((line) => widthOf(line, NOTE_PT))) + 2 * NOTE_CLEAR,
    height: lines.length * lineHeight(NOTE_PT) + 2 * NOTE_CLEAR,
  };
}

function shortened(text: string, widthOf: WidthOf): string {
  if (widthOf(text, NOTE_PT) <= WIDEST) return text;
  const letters = [...text];
  while (letters.length > 1 && widthOf(`${letters.join('')}…`, NOTE_PT) > WIDEST) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}
