import { type Ink, inkGrid, inkNear, type PlacedWord, placeWords, type Wanted, type WidthOf } from '../../drawing';
import { markBoxes, type Sheet, type SheetPart, type SheetPlan, sheetCell } from '../../sheets';
import { placeNumbers } from './mark-numbers';
import { printedSheet } from './part-on-paper';

/**
 * The drawing's words on the sheets that are printed and on the tips in their corners, off the lines, the marks and their
 * numbers.
 *
 * @param sheets those that are printed: what stands once stands on one of them
 * @returns what stands on a sheet or a tip
 */
export function sheetWords(
  wanted: Wanted,
  plan: SheetPlan,
  sheets: readonly Sheet[],
  ink: Ink,
  widthOf: WidthOf,
): (part: SheetPart) => readonly PlacedWord[] {
  const printed = sheets.flatMap((sheet) => printedSheet(plan, sheet));
  const grids = new Map<number, ReturnType<typeof inkGrid>>();
  const rooms = printed.map((one) => {
    const { part, scale, taken } = one;
    const numbers = placeNumbers(one, inkNear(ink, part.window), widthOf);
    const crosses = grids.get(scale.x) ?? inkGrid(ink, scale);
    grids.set(scale.x, crosses);
    return {
      box: sheetCell(part),
      scale,
      crosses,
      taken: [...taken, ...markBoxes(part, { scale }), ...numbers.map(({ box }) => box)],
    };
  });
  const placed = placeWords(wanted, rooms, widthOf);
  return (part) => placed[printed.findIndex((one) => one.part === part)] ?? [];
}
