import type { Mm } from '../length';
import { add, between, cross, distance, dot, scale, size, subtract, unit } from './point';
import { TOLERANCE } from './tolerances';
import type { Box, Curve, Point } from './types';

/** A straight line as a curve: its handles at the thirds of the chord. */
export const straight = (a: Point, b: Point): Curve => [a, between(a, b, 1 / 3), between(a, b, 2 / 3), b];

/** The point at the parameter t (0…1), by the Bernstein form. */
export function curvePoint([a, b, c, d]: Curve, t: number): Point {
  const s = 1 - t;
  const w0 = s * s * s;
  const w1 = 3 * s * s * t;
  const w2 = 3 * s * t * t;
  const w3 = t * t * t;
  return { x: w0 * a.x + w1 * b.x + w2 * c.x + w3 * d.x, y: w0 * a.y + w1 * b.y + w2 * c.y + w3 * d.y };
}

/** The first derivative by t. */
export function curveVelocity([a, b, c, d]: Curve, t: number): Point {
  const s = 1 - t;
  const w0 = 3 * s * s;
  const w1 = 6 * s * t;
  const w2 = 3 * t * t;
  return {
    x: w0 * (b.x - a.x) + w1 * (c.x - b.x) + w2 * (d.x - c.x),
    y: w0 * (b.y - a.y) + w1 * (c.y - b.y) + w2 * (d.y - c.y),
  };
}

function curveAcceleration([a, b, c, d]: Curve, t: number): Point {
  const s = 1 - t;
  return {
    x: 6 * s * (c.x - 2 * b.x + a.x) + 6 * t * (d.x - 2 * c.x + b.x),
    y: 6 * s * (c.y - 2 * b.y + a.y) + 6 * t * (d.y - 2 * c.y + b.y),
  };
}

/** The direction of travel at t, length 1; where a handle has no length, the direction towards the next point that differs. */
export function curveTangent(curve: Curve, t: number): Point {
  const velocity = curveVelocity(curve, t);
  if (size(velocity) > 1e-9) return unit(velocity);
  const [a, b, c, d] = curve;
  if (t < 0.5) return unit(subtract(distance(a, c) > 1e-9 ? c : d, a));
  return unit(subtract(d, distance(d, b) > 1e-9 ? b : a));
}

/**
 * The curvature at t, 1/mm: positive where the curve turns clockwise as seen on the paper (y down).
 * Zero where the curve stands still.
 */
export function curveCurvature(curve: Curve, t: number): number {
  const v = curveVelocity(curve, t);
  const speed = size(v);
  return speed < 1e-9 ? 0 : cross(v, curveAcceleration(curve, t)) / (speed * speed * speed);
}

/** Both parts of a curve cut at t, by de Casteljau. */
export function curveSplit([a, b, c, d]: Curve, t: number): readonly [Curve, Curve] {
  const ab = between(a, b, t);
  const bc = between(b, c, t);
  const cd = between(c, d, t);
  const abc = between(ab, bc, t);
  const bcd = between(bc, cd, t);
  const middle = between(abc, bcd, t);
  return [
    [a, ab, abc, middle],
    [middle, bcd, cd, d],
  ];
}

/** The part of a curve from one parameter to a later one. */
export function curvePart(curve: Curve, from: number, to: number): Curve {
  const head = to < 1 ? curveSplit(curve, to)[0] : curve;
  return from > 0 ? curveSplit(head, from / to)[1] : head;
}

export const curveReverse = ([a, b, c, d]: Curve): Curve => [d, c, b, a];

/** A curve with each of its four points moved by the same rule; exact for turning, moving and mirroring. */
export const curveMap = ([a, b, c, d]: Curve, move: (p: Point) => Point): Curve => [move(a), move(b), move(c), move(d)];

/** Whether a curve is a straight line, its handles on the chord. */
export function curveIsStraight([a, b, c, d]: Curve): boolean {
  const way = unit(subtract(d, a));
  return (
    Math.abs(cross(way, subtract(b, a))) < TOLERANCE.straight &&
    Math.abs(cross(way, subtract(c, a))) < TOLERANCE.straight
  );
}

// Gauss–Legendre, 8 points on −1…1 (Abramowitz & Stegun, Handbook of Mathematical Functions, table 25.4).
const NODES = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363];
const WEIGHTS = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];

function lengthOver(curve: Curve, from: number, to: number): number {
  const half = (to - from) / 2;
  const middle = (to + from) / 2;
  let sum = 0;
  for (let i = 0; i < NODES.length; i += 1) {
    const offset = half * (NODES[i] as number);
    sum +=
      (WEIGHTS[i] as number) *
      (size(curveVelocity(curve, middle - offset)) + size(curveVelocity(curve, middle + offset)));
  }
  return sum * half;
}

function lengthWithin(curve: Curve, from: number, to: number, whole: number, exact: Mm, depth: number): number {
  const middle = (from + to) / 2;
  const left = lengthOver(curve, from, middle);
  const right = lengthOver(curve, middle, to);
  if (depth === 0 || Math.abs(left + right - whole) < exact) return left + right;
  return (
    lengthWithin(curve, from, middle, left, exact, depth - 1) + lengthWithin(curve, middle, to, right, exact, depth - 1)
  );
}

/** Rounding keeps two sums of one length from agreeing more closely than this share of it. */
const ROUNDING = 1e-12;

/**
 * The arc length of a curve, or of its part up to t, in millimetres.
 *
 * Gauss–Legendre quadrature, halved until two estimates agree within {@link TOLERANCE.arcLength} (at most 12 halvings,
 * reached only at a cusp). NaN for a curve that is not finite, at once: halving would go to the bottom everywhere.
 */
export function curveLength(curve: Curve, to = 1): Mm {
  if (to <= 0) return 0;
  if (curveIsStraight(curve) && to === 1) return distance(curve[0], curve[3]);
  const whole = lengthOver(curve, 0, to);
  if (!Number.isFinite(whole)) return Number.NaN;
  return lengthWithin(curve, 0, to, whole, Math.max(TOLERANCE.arcLength, ROUNDING * whole), 12);
}

/** The parameter at which the arc length from the start is `length`; 0 or 1 beyond the ends. Newton's method, bisected. */
export function curveTimeAt(curve: Curve, length: Mm): number {
  const whole = curveLength(curve);
  if (length <= 0) return 0;
  if (length >= whole) return 1;
  let low = 0;
  let high = 1;
  let t = length / whole;
  for (let i = 0; i < 60; i += 1) {
    const miss = curveLength(curve, t) - length;
    if (Math.abs(miss) < TOLERANCE.arcLength) break;
    if (miss > 0) high = t;
    else low = t;
    const step = t - miss / Math.max(size(curveVelocity(curve, t)), 1e-9);
    t = step > low && step < high ? step : (low + high) / 2;
  }
  return t;
}

/** The least upright box round a curve: exact, from the roots of the derivative. */
export function curveBounds(curve: Curve): Box {
  const [a, b, c, d] = curve;
  const [left, right] = extremes(a.x, b.x, c.x, d.x);
  const [top, bottom] = extremes(a.y, b.y, c.y, d.y);
  return { left, top, right, bottom };
}

function extremes(a: number, b: number, c: number, d: number): readonly [number, number] {
  let least = Math.min(a, d);
  let most = Math.max(a, d);
  // Between its ends a cubic passes them only where a handle does.
  if (b >= least && b <= most && c >= least && c <= most) return [least, most];
  for (const t of quadraticRoots(d - 3 * c + 3 * b - a, 2 * (c - 2 * b + a), b - a)) {
    if (t <= 0 || t >= 1) continue;
    const s = 1 - t;
    const value = s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return [least, most];
}

/** Real roots of a·t² + b·t + c. */
function quadraticRoots(a: number, b: number, c: number): readonly number[] {
  if (Math.abs(a) < 1e-12) return Math.abs(b) < 1e-12 ? [] : [-c / b];
  const root = b * b - 4 * a * c;
  if (root < 0) return [];
  const q = -0.5 * (b + (b < 0 ? -1 : 1) * Math.sqrt(root));
  return q === 0 ? [0] : [q / a, c / q];
}

/**
 * The parameters at which a curve meets the straight line through `on` with the direction `way`.
 *
 * Roots of the cubic of signed distances, found by bisection between its own turning points: no root is missed
 * and none is counted twice, but where the curve only touches the line.
 */
export function curveMeetsLine(curve: Curve, on: Point, way: Point): readonly number[] {
  const [a, b, c, d] = curve.map((p) => cross(way, subtract(p, on))) as [number, number, number, number];
  // How far beside the line the curve is: a cubic itself, with the heights of the four points.
  const height = (t: number): number => {
    const s = 1 - t;
    return s * s * (s * a + 3 * t * b) + t * t * (3 * s * c + t * d);
  };
  const cuts = [
    0,
    ...quadraticRoots(d - 3 * c + 3 * b - a, 2 * (c - 2 * b + a), b - a).filter((t) => t > 0 && t < 1),
    1,
  ].sort((p, q) => p - q);
  const found: number[] = [];
  for (let i = 1; i < cuts.length; i += 1) {
    let low = cuts[i - 1] as number;
    let high = cuts[i] as number;
    const start = height(low);
    const end = height(high);
    if (start === 0 && found.at(-1) !== low) found.push(low);
    else if (start * end < 0) {
      for (let n = 0; n < 60; n += 1) {
        const middle = (low + high) / 2;
        if (height(middle) * start > 0) low = middle;
        else high = middle;
      }
      found.push((low + high) / 2);
    }
  }
  if (height(1) === 0 && found.at(-1) !== 1) found.push(1);
  return found;
}

/** A parameter near the point of the curve that is nearest to `p`, improved by Newton's method from `guess`. */
export function curveNearest(curve: Curve, p: Point, guess: number): number {
  let t = guess;
  for (let i = 0; i < 8; i += 1) {
    const away = subtract(curvePoint(curve, t), p);
    const v = curveVelocity(curve, t);
    const slope = dot(v, v) + dot(away, curveAcceleration(curve, t));
    if (Math.abs(slope) < 1e-12) break;
    const step = dot(away, v) / slope;
    t = Math.min(1, Math.max(0, t - step));
    if (Math.abs(step) < 1e-10) break;
  }
  return t;
}

/** A curve by its ends, the directions of travel there and the lengths of its handles. */
export function curveFrom(a: Point, wayA: Point, handleA: Mm, d: Point, wayD: Point, handleD: Mm): Curve {
  return [a, add(a, scale(wayA, handleA)), subtract(d, scale(wayD, handleD)), d];
}
