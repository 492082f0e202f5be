import { type Point, pathThrough, point } from '../../plane';
import type { Pen } from '../pen/pen';

/** The thinnest arrow, in millimetres: its line, and its head's length and half width. */
const THIN = { line: 0.25, long: 1.3, half: 0.65 } as const;

/**
 * An arrow from one place of the page to another.
 *
 * @param style.fat how many times as fat as the thinnest
 */
export function drawArrow(
  pen: Pen,
  from: Point,
  to: Point,
  { fat, colour }: { readonly fat: number; readonly colour: string },
): void {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  if (long === 0) return;
  const way = point((to.x - from.x) / long, (to.y - from.y) / long);
  const foot = point(to.x - way.x * THIN.long * fat, to.y - way.y * THIN.long * fat);
  pen.line(from, foot, { width: THIN.line * fat, colour, dash: [] });
  const corner = (side: 1 | -1) =>
    point(foot.x + way.y * side * THIN.half * fat, foot.y - way.x * side * THIN.half * fat);
  pen.fill(pathThrough(to, corner(1), corner(-1), to), (p) => p, colour);
}
