import type { Mm } from '../length';
import { curveLength, curvePart, curvePoint, curveReverse, curveTangent, curveTimeAt, straight } from './curve';
import { moved, size } from './point';
import { TOLERANCE } from './tolerances';
import type { Box, Curve, Edge, Outline, Point } from './types';

/** The first point of a run of curves. Throws on an empty run. */
export function pathStart(path: readonly Curve[]): Point {
  const first = path[0];
  if (!first) throw new RangeError('an empty path has no start');
  return first[0];
}

/** The last point of a run of curves. Throws on an empty run. */
export function pathEnd(path: readonly Curve[]): Point {
  const last = path.at(-1);
  if (!last) throw new RangeError('an empty path has no end');
  return last[3];
}

/** The direction of travel at the start, length 1. */
export const pathStartWay = (path: readonly Curve[]): Point => curveTangent(path[0] as Curve, 0);

/** The direction of travel at the end, length 1. */
export const pathEndWay = (path: readonly Curve[]): Point => curveTangent(path.at(-1) as Curve, 1);

/** The arc length of a run of curves, millimetres. */
export const pathLength = (path: readonly Curve[]): Mm => path.reduce((sum, curve) => sum + curveLength(curve), 0);

/** A run of curves travelled the other way. */
export const pathReverse = (path: readonly Curve[]): readonly Curve[] => path.map(curveReverse).reverse();

/** A run of straight lines through points. */
export function pathThrough(...points: readonly Point[]): readonly Curve[] {
  return points.slice(1).map((p, i) => straight(points[i] as Point, p));
}

/** The place at an arc length from the start: point and direction of travel; clamped to the ends. */
export function pathAt(path: readonly Curve[], length: Mm): { readonly at: Point; readonly way: Point } {
  let rest = Math.max(0, length);
  for (const curve of path) {
    const own = curveLength(curve);
    if (rest <= own) {
      const t = curveTimeAt(curve, rest);
      return { at: curvePoint(curve, t), way: curveTangent(curve, t) };
    }
    rest -= own;
  }
  return { at: pathEnd(path), way: pathEndWay(path) };
}

/**
 * The first `length` of a run of curves; where that is more than there is, the run goes on straight in its last
 * direction.
 */
export function pathUpTo(path: readonly Curve[], length: Mm): readonly Curve[] {
  const kept: Curve[] = [];
  let rest = length;
  for (const curve of path) {
    const own = curveLength(curve);
    if (rest <= own + TOLERANCE.samePoint) {
      const t = curveTimeAt(curve, rest);
      if (t > 0) kept.push(t < 1 ? curvePart(curve, 0, t) : curve);
      return kept;
    }
    kept.push(curve);
    rest -= own;
  }
  const end = pathEnd(path);
  return [...kept, straight(end, moved(end, pathEndWay(path), rest))];
}

/** What is left of a run of curves after its first `length`. */
export function pathFrom(path: readonly Curve[], length: Mm): readonly Curve[] {
  const whole = pathLength(path);
  return pathReverse(pathUpTo(pathReverse(path), whole - length));
}

/**
 * Points on a run of curves so that no chord leaves its curve by more than `tolerance`; corners and ends are kept.
 *
 * Each curve is cut in equal steps of its parameter; the count comes from the bound ⅛·max|B″|·Δt² on the distance
 * between a cubic and its chord (Filip, Magedson & Markot, *Surface algorithms using bounds on derivatives*, CAGD 1986).
 */
export function flattenCurves(path: readonly Curve[], tolerance: Mm = TOLERANCE.chord): readonly Point[] {
  const points: Point[] = path[0] ? [path[0][0]] : [];
  for (const curve of path) {
    const [a, b, c, d] = curve;
    const bend =
      6 *
      Math.max(
        size({ x: c.x - 2 * b.x + a.x, y: c.y - 2 * b.y + a.y }),
        size({ x: d.x - 2 * c.x + b.x, y: d.y - 2 * c.y + b.y }),
      );
    const steps = Math.max(1, Math.ceil(Math.sqrt(bend / (8 * tolerance)) - 1e-9));
    for (let i = 1; i < steps; i += 1) points.push(curvePoint(curve, i / steps));
    points.push(d);
  }
  return points;
}

/** The edge of that name. Throws where there is none: a name is a promise between rooms. */
export function outlineEdge<Name extends string>(outline: Outline<Name>, name: NoInfer<Name>): Edge<Name> {
  const found = outline.find((edge) => edge.name === name);
  if (!found) throw new RangeError(`there is no edge named ${name}`);
  return found;
}

/** The arc length of an edge, millimetres. */
export const edgeLength = (edge: Edge): Mm => pathLength(edge.curves);

/** All curves of an outline as one closed run. */
export const outlineCurves = (outline: Outline): readonly Curve[] => outline.flatMap((edge) => edge.curves);

/** The least upright box round points. */
export function pointsBounds(points: readonly Point[]): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const p of points) {
    left = Math.min(left, p.x);
    right = Math.max(right, p.x);
    top = Math.min(top, p.y);
    bottom = Math.max(bottom, p.y);
  }
  return { left, top, right, bottom };
}

/** The foot of a perpendicular on a polyline: how far it is, and whether it is one of the line's two ends. */
export interface Foot {
  readonly distance: Mm;
  readonly atEnd: boolean;
  /** The nearest place itself. */
  readonly at: Point;
}

/**
 * Where a polyline is nearest to a point.
 *
 * @param points the polyline; two or more
 * @param p the point
 */
export function pathFoot(points: readonly Point[], p: Point): Foot {
  let least = Infinity;
  let end = false;
  let at = p;
  for (let i = 1; i < points.length; i += 1) {
    const a = points[i - 1] as Point;
    const b = points[i] as Point;
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    const square = dx * dx + dy * dy;
    const t = square === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / square;
    const inside = Math.min(1, Math.max(0, t));
    const [wide, high] = [a.x + dx * inside - p.x, a.y + dy * inside - p.y];
    const away = wide * wide + high * high;
    if (away < least) {
      least = away;
      at = { x: p.x + wide, y: p.y + high };
      end = (i === 1 && t <= 0) || (i === points.length - 1 && t >= 1);
    }
  }
  return { distance: Math.sqrt(least), atEnd: end, at };
}

/** Whether a closed polyline has a point within it, by counting what a line to the right crosses. */
export function pointsHold(points: readonly Point[], { x, y }: Point): boolean {
  let inside = false;
  let a = points.at(-1) as Point;
  for (const b of points) {
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
    a = b;
  }
  return inside;
}
