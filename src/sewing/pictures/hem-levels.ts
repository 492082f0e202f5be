import type { Mm } from '../../length';
import { between, distance, type Point } from '../../plane';
import { cutOff } from './polygon';

/** The part of a polygon above a level: what of a leg is left when its hem is turned up there. */
export const upTo = (points: readonly Point[], level: Mm): readonly Point[] =>
  cutOff(points, { x: 0, y: level }, { x: -1, y: 0 });

/** The part of it below a level. */
export const downFrom = (points: readonly Point[], level: Mm): readonly Point[] =>
  cutOff(points, { x: 0, y: level }, { x: 1, y: 0 });

/** How far inside a polygon its width at an end is taken, since the corners of a level end are never quite level. */
const HAIR: Mm = 1e-3;

/** How far parts reach to the left and right at a level; above and below them, as far as at their nearest. */
export function widthAt(parts: readonly (readonly Point[])[], level: Mm): readonly [Mm, Mm] {
  const levels = parts.flatMap((part) => part.map((p) => p.y));
  const y = Math.min(Math.max(level, Math.min(...levels) + HAIR), Math.max(...levels) - HAIR);
  const xs = parts.flatMap((part) =>
    part.flatMap((p, i) => {
      const next = part[(i + 1) % part.length] as Point;
      return p.y < y === next.y < y ? [] : [p.x + ((y - p.y) / (next.y - p.y)) * (next.x - p.x)];
    }),
  );
  return [Math.min(...xs), Math.max(...xs)];
}

/** A chord is no longer than this where a shape is drawn in. */
const FINE: Mm = 8;

/**
 * Draws a leg in towards its hem, as gathers do: smoothly, from a level down to its lower edge.
 *
 * @param points of the shape
 * @param middle stays where it is
 * @param from the level above which nothing changes
 * @param level of the lower edge
 * @param factor what is left of the width there
 */
export function drawnIn(points: readonly Point[], middle: Mm, from: Mm, level: Mm, factor: number): readonly Point[] {
  if (factor >= 1) return points;
  const fine = points.flatMap((p, i) => {
    const next = points[i + 1];
    if (!next) return [p];
    const parts = Math.max(1, Math.ceil(distance(p, next) / FINE));
    return Array.from({ length: parts }, (_, part) => between(p, next, part / parts));
  });
  return fine.map(({ x, y }) => {
    const down = Math.min(1, Math.max(0, (y - from) / (level - from)));
    return { x: middle + (x - middle) * (1 - (1 - factor) * down * down * (3 - 2 * down)), y };
  });
}

/** The same towards a waist, whose middle lies at x = 0: from a level up to its upper edge. */
export function drawnUp(points: readonly Point[], from: Mm, level: Mm, factor: number): readonly Point[] {
  const turned = (run: readonly Point[]) => run.map(({ x, y }): Point => ({ x, y: -y }));
  return turned(drawnIn(turned(points), 0, -from, -level, factor));
}
