import { INK, type LineStyle } from '../../drawing';
import { type Point, pathThrough, point } from '../../plane';
import type { Pen } from '../pen/pen';

const LINE: LineStyle = { width: 0.5, colour: INK.cut, dash: [] };
const HEAD = { long: 2.6, half: 1.3 } as const;

/** An arrow from one place of the page to another. */
export function drawArrow(pen: Pen, from: Point, to: Point): void {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const way = point((to.x - from.x) / long, (to.y - from.y) / long);
  const foot = point(to.x - way.x * HEAD.long, to.y - way.y * HEAD.long);
  pen.line(from, foot, LINE);
  const corner = (side: 1 | -1) => point(foot.x + way.y * side * HEAD.half, foot.y - way.x * side * HEAD.half);
  pen.fill(pathThrough(to, corner(1), corner(-1), to), (p) => p, INK.cut);
}
