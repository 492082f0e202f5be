import { lineHeight, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, point } from '../../plane';
import type { ClearPlaces, SheetPlan } from '../../sheets';
import { wrapText } from '../pen/wrap-text';

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
/** To these widths lines that must stand there are broken where they have no room. */
const NARROWER: readonly Mm[] = [40, 26, 18];

/** What a sheet says under its label: lines that must stand there, and others, most needed first. */
export interface SheetSays {
  readonly must: readonly string[];
  readonly may: readonly string[];
}

/**
 * Where a sheet says what it is: as near to its label as there is white room. Where there is little, what need not stand
 * there is left out, the least needed first, and what must is broken into shorter lines; undefined where even those have
 * no room.
 *
 * @param label the box of the sheet's label
 * @param says the lines: those that must stand there, and others, most needed first
 */
export function placeNote(
  { scale }: Pick<SheetPlan, 'scale'>,
  label: Box,
  clear: ClearPlaces,
  { must, may }: SheetSays,
  widthOf: WidthOf,
): SheetNote | undefined {
  const under = point((label.left + label.right) / 2, label.bottom);
  const placed = (lines: readonly string[]): readonly SheetNote[] => {
    const { width, height } = noteSize(lines, widthOf);
    const box = lines.length > 0 ? clear(width / scale.x, height / scale.y, under) : undefined;
    return box ? [{ lines, box }] : [];
  };
  const all = [...must, ...may].map((text) => shortened(text, widthOf));
  for (let count = all.length; count >= Math.max(1, must.length); count -= 1) {
    const [note] = placed(all.slice(0, count));
    if (note) return note;
  }
  return NARROWER.flatMap((width) => placed(must.flatMap((text) => wrapText(text, width, NOTE_PT, widthOf))))[0];
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
