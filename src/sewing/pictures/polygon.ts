import type { Mm } from '../../length';
import { type Curve, cross, distance, dot, flattenCurves, type Point, subtract, unit } from '../../plane';

/** A chord of a picture may leave its curve by so much: less than a line's width at any scale a picture is seen at. */
const SEEN: Mm = 0.6;

/** Points on a run of curves; where a curve starts elsewhere than the last one ended, the gap is bridged. */
export const polyline = (curves: readonly Curve[]): readonly Point[] =>
  curves.flatMap((curve, i) => {
    const before = curves[i - 1]?.[3];
    const points = flattenCurves([curve], SEEN);
    return before && distance(before, curve[0]) < SEEN ? points.slice(1) : points;
  });

/** A run of curves that comes back to its start, without the start again. */
export function polygon(curves: readonly Curve[]): readonly Point[] {
  const points = polyline(curves);
  const [first, last] = [points[0], points.at(-1)];
  return first && last && distance(first, last) < SEEN ? points.slice(0, -1) : points;
}

/** The part of a polygon on the right of a line as seen when looking along `way` (Sutherland & Hodgman, 1974). */
export function cutOff(points: readonly Point[], on: Point, way: Point): readonly Point[] {
  const height = (p: Point) => cross(way, subtract(p, on));
  return points.flatMap((p, i) => {
    const next = points[(i + 1) % points.length] as Point;
    const [here, there] = [height(p), height(next)];
    const t = here / (here - there);
    const crossing = here * there < 0 ? [{ x: p.x + t * (next.x - p.x), y: p.y + t * (next.y - p.y) }] : [];
    return here >= 0 ? [p, ...crossing] : crossing;
  });
}

/** Parallel strokes across a polygon, at 45° rising or falling; even-odd, so that hollows stay free. */
export function hatching(points: readonly Point[], step: Mm, rises: boolean): readonly (readonly [Point, Point])[] {
  const k = Math.SQRT1_2;
  const along: Point = rises ? { x: k, y: -k } : { x: k, y: k };
  const over: Point = { x: -along.y, y: along.x };
  const heights = points.map((p) => dot(p, over));
  const strokes: (readonly [Point, Point])[] = [];
  const last = Math.floor(Math.max(...heights) / step);
  for (let row = Math.ceil(Math.min(...heights) / step); row <= last; row += 1) {
    // A stroke through a corner would be counted twice or not at all.
    const h = row * step + step * 1e-4;
    const cuts = points
      .flatMap((p, i) => {
        const [a, b] = [heights[i] as number, heights[(i + 1) % points.length] as number];
        if (a < h === b < h) return [];
        const next = points[(i + 1) % points.length] as Point;
        const t = (h - a) / (b - a);
        return [dot(p, along) + t * (dot(next, along) - dot(p, along))];
      })
      .sort((a, b) => a - b);
    const at = (s: number): Point => ({ x: along.x * s + over.x * h, y: along.y * s + over.y * h });
    for (let i = 0; i + 1 < cuts.length; i += 2) strokes.push([at(cuts[i] as number), at(cuts[i + 1] as number)]);
  }
  return strokes;
}

/** Dots in rows within a polygon, every other row between those above: each a stroke so short that it is as wide as long. */
export function dotting(points: readonly Point[], step: Mm): readonly (readonly [Point, Point])[] {
  const [ys, dot] = [points.map(({ y }) => y), step / 10];
  const rows = Math.floor((Math.max(...ys) - Math.min(...ys)) / step);
  return Array.from({ length: rows }, (_, row) => Math.min(...ys) + (row + 0.5) * step).flatMap((y, row) => {
    const cuts = points
      .flatMap((p, i) => {
        const next = points[(i + 1) % points.length] as Point;
        return p.y < y === next.y < y ? [] : [p.x + ((y - p.y) / (next.y - p.y)) * (next.x - p.x)];
      })
      .sort((a, b) => a - b);
    const inside = (x: number): boolean => cuts.filter((cut) => cut < x).length % 2 === 1;
    const first = Math.ceil((cuts[0] ?? 0) / step) * step + (row % 2) * (step / 2);
    const count = Math.max(0, Math.floor(((cuts.at(-1) ?? 0) - first) / step) + 1);
    return Array.from({ length: count }, (_, i) => first + i * step)
      .filter(inside)
      .map((x): readonly [Point, Point] => [
        { x: x - dot, y },
        { x: x + dot, y },
      ]);
  });
}

/** A rectangle by its sides. */
export const rectangle = (left: Mm, top: Mm, right: Mm, bottom: Mm): readonly Point[] => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
];

export type Move = (p: Point) => Point;

/** Moves the line from a towards b onto the line from `to` along `way`; turned over where `over` is true. */
export function laidOn(a: Point, b: Point, to: Point, way: Point, over: boolean): Move {
  const from = unit(subtract(b, a));
  const onto = unit(way);
  const sign = over ? -1 : 1;
  return (p) => {
    const away = subtract(p, a);
    const [s, h] = [dot(away, from), sign * cross(from, away)];
    return { x: to.x + s * onto.x - h * onto.y, y: to.y + s * onto.y + h * onto.x };
  };
}

export const shifted =
  (x: Mm, y: Mm): Move =>
  (p) => ({ x: p.x + x, y: p.y + y });

/** Mirrored in the upright through x. */
export const flipped =
  (x: Mm): Move =>
  (p) => ({ x: 2 * x - p.x, y: p.y });
