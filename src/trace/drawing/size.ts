import type { Mm } from '../../length';
import { curvesBounds } from '../../plane';
import type { Drawing, DrawnOutline } from './drawn';

/** The widest gap that is closed between the ends of lines: what a hand misses on a screen, millimetres. @source practice */
const WIDEST_GAP: Mm = 0.5;
/** Where a drawing tells no unit, a gap is this share of the whole drawing: half a millimetre on a metre. @source practice */
const GAP_SHARE = 1 / 2000;
/** A block is as high as this, millimetres: from the shortest shorts of a child to the longest legs. @source practice */
const HEIGHTS: readonly [Mm, Mm] = [200, 1600];

/** The widest gap to close in a drawing, in its own units. */
export function widestGap({ unit, runs }: Drawing): number {
  if (unit !== undefined) return WIDEST_GAP / unit;
  const { left, right, top, bottom } = curvesBounds(runs.flatMap(({ curves }) => curves));
  return Math.max(right - left, bottom - top) * GAP_SHARE;
}

/** How large an outline is, whichever way it lies: the longer side of its box, in its own units. */
export function outlineReach({ curves }: DrawnOutline): number {
  const { left, right, top, bottom } = curvesBounds(curves);
  return Math.max(right - left, bottom - top);
}

/** Whether a block may be as large as that, millimetres. */
export const isBlockSize = (reach: Mm): boolean => reach >= HEIGHTS[0] && reach <= HEIGHTS[1];
