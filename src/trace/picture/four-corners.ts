import { cross, distance, type Point, subtract } from '../../plane';

export type FourCorners = readonly [Point, Point, Point, Point];

/** The rim of a square lies as near as this to its four sides: so many pixels, or this share of its side. @source tolerance */
const OFF = { pixels: 3, share: 0.1 } as const;
/** A square seen from 60° off has sides in about this ratio at the most. @source geometry: 1 / cos 60°, and as much again for its depth */
const LONGER = 4;

/**
 * The four corners of a spot that is a square seen from anywhere, clockwise as seen; undefined where it is none.
 *
 * @param rim points of its outline
 */
export function fourCorners(rim: readonly Point[]): FourCorners | undefined {
  const hull = convexHull(rim);
  if (hull.length < 4) return undefined;
  const middle = {
    x: hull.reduce((sum, p) => sum + p.x, 0) / hull.length,
    y: hull.reduce((sum, p) => sum + p.y, 0) / hull.length,
  };
  const a = farthest(hull, (p) => distance(p, middle));
  const c = farthest(hull, (p) => distance(p, a));
  const across = subtract(c, a);
  const b = farthest(hull, (p) => cross(across, subtract(p, a)));
  const d = farthest(hull, (p) => -cross(across, subtract(p, a)));
  // The hull is clockwise on a picture, whose y runs down: b lies to the right of the way from a to c.
  const corners: FourCorners = [a, d, c, b];
  const sides = corners.map((p, i) => distance(p, corners[(i + 1) % 4] as Point));
  const [shortest, longest] = [Math.min(...sides), Math.max(...sides)];
  if (shortest < 4 || longest > LONGER * shortest) return undefined;
  const most = Math.max(OFF.pixels, OFF.share * shortest);
  return hull.every((p) => offSides(p, corners) <= most) ? corners : undefined;
}

function farthest(points: readonly Point[], how: (p: Point) => number): Point {
  return points.reduce((best, p) => (how(p) > how(best) ? p : best), points[0] as Point);
}

/** How far a point lies from the nearest of four lines. */
const offSides = (p: Point, corners: FourCorners): number =>
  Math.min(
    ...corners.map((from, i) => {
      const side = subtract(corners[(i + 1) % 4] as Point, from);
      return Math.abs(cross(side, subtract(p, from))) / Math.hypot(side.x, side.y);
    }),
  );

/** @source A. M. Andrew, *Another efficient algorithm for convex hulls in two dimensions*, 1979, from memory */
function convexHull(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((p, q) => p.x - q.x || p.y - q.y);
  const chain = (run: readonly Point[]) => {
    const hull: Point[] = [];
    for (const p of run) {
      while (hull.length >= 2) {
        const [before, last] = [hull.at(-2) as Point, hull.at(-1) as Point];
        if (cross(subtract(last, before), subtract(p, before)) > 0) break;
        hull.pop();
      }
      hull.push(p);
    }
    return hull.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.toReversed())];
}
