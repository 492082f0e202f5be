import { placer } from '../drawing';
import type { Mm } from '../length';
import { type Box, point } from '../plane';
import { MARK } from './marks';
import type { SheetPart, SheetPlan, Side, Tip } from './types';

/** Everything that is joined: the sheets, and the tips that are cut out of them. */
export const planParts = ({ sheets }: Pick<SheetPlan, 'sheets'>): readonly SheetPart[] =>
  sheets.flatMap((sheet) => [sheet, ...sheet.tips]);

/** The same in the order in which they are taped: row by row, each from the left, as strips that are then joined from the top. */
export const partsInOrder = (plan: Pick<SheetPlan, 'sheets'>): readonly SheetPart[] =>
  planParts(plan).toSorted((a, b) => a.row - b.row || a.column - b.column);

/** The line on which a part's neighbours of one side join, on the drawing; undefined where it has none there. */
export const joinLine = ({ joins }: SheetPart, side: Side): Mm | undefined =>
  joins.find((join) => join.side === side)?.at;

/** What stays in sight of a part whatever of its neighbours lies on its overlaps. */
export const sheetCell = (part: SheetPart): Box => ({
  ...part.window,
  right: joinLine(part, 'right') ?? part.window.right,
  bottom: joinLine(part, 'bottom') ?? part.window.bottom,
});

/** Where a tip lies in the window of the sheet that bears it, on that sheet's stretch of the drawing. */
export function tipBox({ window, place }: Pick<Tip, 'window' | 'place'>): Box {
  const placed = placer(place);
  const [a, b] = [placed(point(window.left, window.top)), placed(point(window.right, window.bottom))];
  return { left: Math.min(a.x, b.x), right: Math.max(a.x, b.x), top: Math.min(a.y, b.y), bottom: Math.max(a.y, b.y) };
}

/** What a part's own marks and their numbers cover, on the drawing. */
export function markBoxes({ marks }: SheetPart, { scale }: Pick<SheetPlan, 'scale'>): readonly Box[] {
  const reach = MARK.depth + MARK.numberRoom;
  return marks.map(({ at, towards }) => {
    const across = towards === 'left' || towards === 'right';
    const x = (across ? reach : MARK.halfBase) / scale.x;
    const y = (across ? MARK.halfBase : reach) / scale.y;
    return { left: at.x - x, right: at.x + x, top: at.y - y, bottom: at.y + y };
  });
}
