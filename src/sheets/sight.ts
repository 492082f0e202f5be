import type { PieceText } from '../edges';
import { type Box, boxHolds } from '../plane';
import { MARK } from './marks';
import type { Sheet, SheetPlan } from './types';

/** What stays in sight of a sheet once its neighbours lie on its overlaps. */
export const sheetCell = ({ window, joins }: Sheet): Box => ({
  ...window,
  right: joins.right ?? window.right,
  bottom: joins.bottom ?? window.bottom,
});

/** The words that belong to one sheet: to the first on which their places are in sight. */
export const sheetTexts = (texts: readonly PieceText[], { sheets }: SheetPlan, sheet: Sheet): readonly PieceText[] =>
  texts.filter(({ at }) => sheets.find((other) => boxHolds(sheetCell(other), at)) === sheet);

/** What a sheet's own marks and their numbers cover, on the drawing. */
export function markBoxes({ marks }: Sheet, { scale }: SheetPlan): readonly Box[] {
  const reach = MARK.depth + MARK.numberRoom;
  return marks.map(({ at, towards }) => {
    const across = towards === 'left' || towards === 'right';
    const x = (across ? reach : MARK.halfBase) / scale.x;
    const y = (across ? MARK.halfBase : reach) / scale.y;
    return { left: at.x - x, right: at.x + x, top: at.y - y, bottom: at.y + y };
  });
}
