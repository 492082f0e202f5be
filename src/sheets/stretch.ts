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
  for (const [start, way, low, high] of [
    [ax, bx - ax, left, right],
    [ay, by - ay, top, bottom],
  ] as const) {
    if (way === 0) {
      if (start < low || start > high) return undefined;
      continue;
    }
    const [a, b] = [(low - start) / way, (high - start) / way];
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  }
  return from <= to ? [from, to] : undefined;
}

/** What is left of a share of a stretch outside all boxes. */
export function sharesOutside(stretch: Stretch, share: Share, boxes: readonly Box[]): readonly Share[] {
  const inside = boxes.flatMap((box) => shareIn(stretch, box) ?? []);
  let left: Share[] = [share];
  for (let i = 0; i < inside.length; i += 2) {
    const [from, to] = [inside[i] as number, inside[i + 1] as number];
    left = left.flatMap(([a, b]): Share[] => {
      // A point is inside or not; of a longer one what is too short to see is not left.
      if (a === b) return a >= from - MEET && a <= to + MEET ? [] : [[a, b]];
      if (to <= a || from >= b) return [[a, b]];
      const before: Share = [a, from];
      const after: Share = [to, b];
      return [before, after].filter(([c, d]) => d - c > MEET);
    });
  }
  return left;
}
