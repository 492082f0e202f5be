import type { Mm } from '../length';
import { curveBounds } from './curve';
import { TOLERANCE } from './tolerances';
import type { Box, Curve, Point } from './types';

/** The least box round boxes. */
export function boxRound(boxes: readonly Box[]): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const box of boxes) {
    left = Math.min(left, box.left);
    top = Math.min(top, box.top);
    right = Math.max(right, box.right);
    bottom = Math.max(bottom, box.bottom);
  }
  return { left, top, right, bottom };
}

/** The least box round curves. */
export const curvesBounds = (curves: readonly Curve[]): Box => boxRound(curves.map(curveBounds));

/** Whether two boxes share a point. */
export const boxesMeet = (a: Box, b: Box): boolean =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

/** What two boxes have in common; undefined where they don't meet. */
export const boxShared = (a: Box, b: Box): Box | undefined =>
  boxesMeet(a, b)
    ? {
        left: Math.max(a.left, b.left),
        top: Math.max(a.top, b.top),
        right: Math.min(a.right, b.right),
        bottom: Math.min(a.bottom, b.bottom),
      }
    : undefined;

/** Whether a box holds a point, its border included. */
export const boxHolds = (box: Box, p: Point): boolean =>
  p.x >= box.left && p.x <= box.right && p.y >= box.top && p.y <= box.bottom;

/** Whether a box lies within another; one that fills it but for rounding does. */
export const boxInside = (box: Box, room: Box): boolean =>
  box.left >= room.left - TOLERANCE.samePoint &&
  box.right <= room.right + TOLERANCE.samePoint &&
  box.top >= room.top - TOLERANCE.samePoint &&
  box.bottom <= room.bottom + TOLERANCE.samePoint;

/** A box grown on every side. */
export const boxGrown = (box: Box, by: Mm): Box => ({
  left: box.left - by,
  top: box.top - by,
  right: box.right + by,
  bottom: box.bottom + by,
});

/** Whether a straight stretch touches a box. */
export function boxMeetsSegment(box: Box, a: Point, b: Point): boolean {
  // Of the many that are asked most lie wholly beyond one side.
  if ((a.x < box.left && b.x < box.left) || (a.x > box.right && b.x > box.right)) return false;
  if ((a.y < box.top && b.y < box.top) || (a.y > box.bottom && b.y > box.bottom)) return false;
  return segmentWithin(box, a, b) !== undefined;
}

/** The part of a straight stretch that lies in a box. Liang–Barsky: what of it is left after each side of the box has cut it. */
export function segmentWithin(box: Box, a: Point, b: Point): readonly [Point, Point] | undefined {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const ways = [-dx, dx, -dy, dy];
  const rooms = [a.x - box.left, box.right - a.x, a.y - box.top, box.bottom - a.y];
  let from = 0;
  let to = 1;
  for (let side = 0; side < 4; side += 1) {
    const way = ways[side] as number;
    const room = rooms[side] as number;
    if (way === 0 && room < 0) return undefined;
    if (way < 0) from = Math.max(from, room / way);
    if (way > 0) to = Math.min(to, room / way);
  }
  const at = (share: number): Point => ({ x: a.x + share * dx, y: a.y + share * dy });
  return from <= to ? [at(from), at(to)] : undefined;
}
