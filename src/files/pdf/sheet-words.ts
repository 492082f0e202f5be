import { type Ink, inkGrid, inkNear, type PlacedWord, placeWords, type Wanted, type WidthOf } from '../../drawing';
import { markBoxes, planParts, type Sheet, type SheetPart, type SheetPlan, sheetCell, tipBox } from '../../sheets';
import { placeNumbers } from './mark-numbers';

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
  const { scale } = plan;
  const crosses = inkGrid(ink, scale);
  const parts = planParts({ sheets });
  const tipsOf = new Map<SheetPart, Sheet['tips']>(sheets.map((sheet) => [sheet, sheet.tips]));
  const rooms = parts.map((part) => {
    const numbers = placeNumbers(part, plan, inkNear(ink, part.window), widthOf);
    return {
      box: sheetCell(part),
      scale,
      crosses,
      taken: [...(tipsOf.get(part) ?? []).map(tipBox), ...markBoxes(part, plan), ...numbers.map(({ box }) => box)],
    };
  });
  const placed = placeWords(wanted, rooms, widthOf);
  return (part) => placed[parts.indexOf(part)] ?? [];
}
