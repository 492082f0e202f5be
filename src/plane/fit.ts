import type { Mm } from '../length';
import { curveNearest, curvePoint, straight } from './curve';
import { distance, point } from './point';
import { curvesThrough } from './spline';
import type { Curve, Point } from './types';

/** Fewer points than this between the ends say nothing about how far a mark may be off. */
const ENOUGH = 3;
/** How often the places of the points along the curve are found anew. */
const ROUNDS = 12;
/** A handle longer than so many chords belongs to a loop, not to an edge. */
const LONGEST_HANDLE = 1.5;

/**
 * A smooth curve near points that were marked by hand: one cubic where that keeps within `within` of every point, as most
 * edges of a pattern are; else a spline through all of them. One cubic smooths out the tremble of the marks, which would
 * make a spline bend to and fro.
 *
 * Its two handles come from least squares, the points' places along it from their nearest points, in turns.
 *
 * @param points at least two, each away from the one before it; the first and the last are kept exactly
 * @param within in the points' unit
 * @source P. J. Schneider, *An algorithm for automatically fitting digitized curves*, Graphics Gems, 1990, from memory,
 *   with the directions at the ends left free
 */
export function curvesNear(points: readonly Point[], within: Mm): readonly Curve[] {
  const shares = sharesAlong(points);
  const one = points.length >= ENOUGH + 2 ? fittedCurve(points, shares) : undefined;
  const [a, d] = [points[0] as Point, points.at(-1) as Point];
  const longest = LONGEST_HANDLE * distance(a, d);
  const sane = one && distance(a, one[1]) < longest && distance(one[2], d) < longest;
  return sane && points.every((p, i) => miss(one, p, shares[i] as number) <= within) ? [one] : curvesThrough(points);
}

/**
 * As few smooth curves as lie within `within` of every point of a line that somebody’s program had cut into many short
 * straight ones; a straight line where the points lie on one. What a few points can’t be drawn through smoothly stays in
 * straight pieces.
 *
 * @param points at least two, each away from the one before it; the first and the last are kept exactly
 * @param within in the points’ unit
 */
export function curvesAlong(points: readonly Point[], within: Mm): readonly Curve[] {
  const [a, d] = [points[0] as Point, points.at(-1) as Point];
  if (points.every((p) => besideChord(p, a, d) <= within / STRAIGHTER)) return [straight(a, d)];
  if (points.length >= ENOUGH + 2) {
    const shares = sharesAlong(points);
    const one = fittedCurve(points, shares);
    const longest = LONGEST_HANDLE * distance(a, d);
    const sane = one && distance(a, one[1]) < longest && distance(one[2], d) < longest;
    if (sane && points.every((p, i) => miss(one, p, shares[i] as number) <= within)) return [one];
    const half = shares.findIndex((share) => share >= 0.5);
    const cut = Math.min(points.length - 3, Math.max(2, half));
    return [...curvesAlong(points.slice(0, cut + 1), within), ...curvesAlong(points.slice(cut), within)];
  }
  return points.slice(1).map((p, i) => straight(points[i] as Point, p));
}

/** What is taken for straight is so much straighter than a curve has to lie near its points. */
const STRAIGHTER = 4;

/** How far a point lies from the straight line between two others, or from the nearer of them. */
function besideChord(p: Point, a: Point, d: Point): Mm {
  const [dx, dy] = [d.x - a.x, d.y - a.y];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
  return distance(p, point(a.x + t * dx, a.y + t * dy));
}

/** How far a point lies from the curve, looked for from where it lies among the others. */
const miss = (curve: Curve, p: Point, guess: number): Mm =>
  distance(p, curvePoint(curve, curveNearest(curve, p, guess)));

function fittedCurve(points: readonly Point[], shares: readonly number[]): Curve | undefined {
  const [a, d] = [points[0] as Point, points.at(-1) as Point];
  const inner = points.slice(1, -1);
  let places = shares.slice(1, -1);
  let found: Curve | undefined;
  for (let round = 0; round < ROUNDS; round += 1) {
    let [bb, bc, cc] = [0, 0, 0];
    let [bx, by, cx, cy] = [0, 0, 0, 0];
    inner.forEach((p, i) => {
      const t = places[i] as number;
      const s = 1 - t;
      const [w0, w1, w2, w3] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
      const [x, y] = [p.x - w0 * a.x - w3 * d.x, p.y - w0 * a.y - w3 * d.y];
      [bb, bc, cc] = [bb + w1 * w1, bc + w1 * w2, cc + w2 * w2];
      [bx, by, cx, cy] = [bx + w1 * x, by + w1 * y, cx + w2 * x, cy + w2 * y];
    });
    const det = bb * cc - bc * bc;
    if (!(det > 1e-9 * bb * cc)) return undefined;
    const handle = (one: number, other: number, mine: number, its: number) => (mine * one - its * other) / det;
    const curve: Curve = [
      a,
      point(handle(cc, bc, bx, cx), handle(cc, bc, by, cy)),
      point(handle(bb, bc, cx, bx), handle(bb, bc, cy, by)),
      d,
    ];
    places = inner.map((p, i) => curveNearest(curve, p, places[i] as number));
    found = curve;
  }
  return found;
}

/** How far along the way through all points each of them lies, 0 … 1. */
function sharesAlong(points: readonly Point[]): readonly number[] {
  const along = [0];
  points.slice(1).forEach((p, i) => {
    along.push((along[i] as number) + distance(points[i] as Point, p));
  });
  return along.map((length) => length / (along.at(-1) as number));
}
