import type { Mm } from '../length';
import type { Box } from '../plane';

/** A straight stretch of a line; a word’s middle is one without length. */
export type Stretch = readonly [ax: Mm, ay: Mm, bx: Mm, by: Mm];

/** From where to where along a stretch something holds, 0 at its start and 1 at its end. */
export type Share = readonly [from: number, to: number];

/** Shares that are nearer to each other than this meet. */
const MEET = 1e-9;

/** Half of the widest line, on the paper: what a sheet must still show of a line that runs along its edge. */
const HALF_LINE: Mm = 0.25;

/** Both rims of a line, half its width to either side of its middle: shown are those that are shown with both. */
export function stretchRims([ax, ay, bx, by]: Stretch, scale: { readonly x: number; readonly y: number }) {
  const half = halfLine(scale);
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return [[ax, ay, bx, by]] as const;
  const [x, y] = [((by - ay) / length) * half, ((ax - bx) / length) * half];
  return [
    [ax + x, ay + y, bx + x, by + y],
    [ax - x, ay - y, bx - x, by - y],
  ] as const;
}

/** Half of the widest line, on the drawing. */
export const halfLine = (scale: { readonly x: number; readonly y: number }): Mm =>
  HALF_LINE / Math.min(scale.x, scale.y);

/** What of a stretch lies in a box; undefined where nothing does. */
export function shareIn([ax, ay, bx, by]: Stretch, { left, right, top, bottom }: Box): Share | undefined {
  let [from, to] = [0, 1];
  if (ax === bx) {
    if (ax < left || ax > right) return undefined;
  } else {
    const [a, b] = [(left - ax) / (bx - ax), (right - ax) / (bx - ax)];
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  }
  if (ay === by) {
    if (ay < top || ay > bottom) return undefined;
  } else {
    const [a, b] = [(top - ay) / (by - ay), (bottom - ay) / (by - ay)];
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  }
  return from <= to ? [from, to] : undefined;
}

/** What is left of a share of a stretch outside all boxes. */
export function sharesOutside(stretch: Stretch, share: Share, boxes: readonly Box[]): readonly Share[] {
  let left: readonly Share[] = [share];
  for (const box of boxes) {
    const inside = shareIn(stretch, box);
    if (!inside) continue;
    const [from, to] = inside;
    const rest: Share[] = [];
    for (const own of left) {
      const [a, b] = own;
      // A point is inside or not; of a longer one what is too short to see is not left.
      if (a === b ? a < from - MEET || a > to + MEET : to <= a || from >= b) rest.push(own);
      else if (a < b) {
        if (from - a > MEET) rest.push([a, from]);
        if (b - to > MEET) rest.push([to, b]);
      }
    }
    if (rest.length === 0) return rest;
    left = rest;
  }
  return left;
}
