import { placer } from '../../drawing';
import { type Box, point } from '../../plane';
import { type Sheet, type SheetPlan, type Tip, tipBox } from '../../sheets';
import type { PageMap } from './pen';

/** Where a sheet's window lies on its page. */
export interface PageFrame {
  readonly map: PageMap;
  /** The window on the page, millimetres. */
  readonly box: Box;
}

/** The true-scale frame of one sheet: the window's corner at the corner of the margins. */
export function sheetFrame(plan: SheetPlan, { window }: Sheet): PageFrame {
  return frameAt(plan.margin, plan.margin, window, plan.scale);
}

/** The frame of a tip within that of the sheet that bears it. */
export function tipFrame({ map }: PageFrame, tip: Tip): PageFrame {
  const { left, right, top, bottom } = tipBox(tip);
  const placed = placer(tip.place);
  const [from, to] = [map(point(left, top)), map(point(right, bottom))];
  return { map: (p) => map(placed(p)), box: { left: from.x, right: to.x, top: from.y, bottom: to.y } };
}

/** A frame whose upper left corner lies at `left`, `top` on the page. */
export function frameAt(
  left: number,
  top: number,
  window: Box,
  scale: { readonly x: number; readonly y: number },
): PageFrame {
  const map: PageMap = (p) => point(left + (p.x - window.left) * scale.x, top + (p.y - window.top) * scale.y);
  const end = map(point(window.right, window.bottom));
  return { map, box: { left, top, right: end.x, bottom: end.y } };
}
