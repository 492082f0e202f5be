import { capitalsOfPt, DESCENT, mmOfPt, ptOfCapitals, type WidthOf } from '../../drawing';
import type { Mm } from '../../length';
import { type Box, type Point, point } from '../../plane';
import { type ClearPlaces, type SheetPart, type SheetPlan, sheetCell } from '../../sheets';

/** A sheet's label, to be read from above while the sheets lie on the floor. */
export interface SheetLabel {
  readonly pt: number;
  /** The middle of its capitals, on the drawing. */
  readonly at: Point;
  readonly box: Box;
}

/** Tried heights of its capitals, on the paper: as large as there is white room for. */
const CAPITALS: readonly Mm[] = [22, 20, 18, 16, 14, 12, 10, 8, 6, 5, 4, 3, 2.1];
export const LARGEST_LABEL: Mm = 22;
/** The heights below one. */
export const labelHeights = (below: Mm): readonly Mm[] => CAPITALS.filter((height) => height < below - 0.01);
/** White round it, on the paper. */
const CLEAR: Mm = 1.5;
/** Where nothing is left but a crowded piece. */
const LEAST_CLEAR: Mm = 0.3;
/** How finely white is looked for there, on the paper. */
export const FINE: Mm = 0.4;

/** The white of a part, looked for coarsely and finely. */
export interface LabelRoom {
  readonly clear: ClearPlaces;
  readonly fine: () => ClearPlaces;
}

/**
 * Where a sheet's label stands: as large as it finds room in what stays in sight of the sheet, as near to the middle as
 * it does; at the worst small and over a line rather than nowhere.
 *
 * @param largest the height of its capitals at most: a small piece has words beside its label
 */
export function placeLabel(
  { scale }: Pick<SheetPlan, 'scale'>,
  sheet: SheetPart,
  { clear, fine }: LabelRoom,
  widthOf: WidthOf,
  largest: Mm = LARGEST_LABEL,
): SheetLabel {
  const cell = sheetCell(sheet);
  const middle = point((cell.left + cell.right) / 2, (cell.top + cell.bottom) / 2);
  for (const capitals of CAPITALS.filter((height) => height <= largest)) {
    const pt = ptOfCapitals(capitals);
    const { width, height } = labelSize(sheet.label, pt, widthOf);
    const box = clear(width / scale.x, height / scale.y, middle);
    if (box) return labelIn(box, pt);
  }
  const pt = ptOfCapitals(CAPITALS.at(-1) as Mm);
  const { width, height } = labelSize(sheet.label, pt, widthOf, LEAST_CLEAR);
  const last = fine()(width / scale.x, height / scale.y, middle);
  if (last) return labelIn(last, pt);
  const half = { x: width / 2 / scale.x, y: height / 2 / scale.y };
  return labelIn(
    { left: middle.x - half.x, right: middle.x + half.x, top: middle.y - half.y, bottom: middle.y + half.y },
    pt,
  );
}

const labelSize = (
  label: string,
  pt: number,
  widthOf: WidthOf,
  clear = CLEAR,
): { readonly width: Mm; readonly height: Mm } => ({
  width: widthOf(label, pt) + 2 * clear,
  // The room of its line, of which capitals fill the middle: above and below them it is white already.
  height: capitalsOfPt(pt) + 2 * DESCENT * mmOfPt(pt) + clear,
});

const labelIn = (box: Box, pt: number): SheetLabel => ({
  pt,
  at: point((box.left + box.right) / 2, (box.top + box.bottom) / 2),
  box,
});
