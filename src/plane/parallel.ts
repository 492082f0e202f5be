import type { Mm } from '../length';
import {
  curveCurvature,
  curveFrom,
  curveIsStraight,
  curveMap,
  curveNearest,
  curvePart,
  curvePoint,
  curveTangent,
} from './curve';
import { add, cross, distance, dot, leftOf, moved, scale, subtract } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Point } from './types';

/** Halvings at the most: 2⁻¹⁰ of a metre-long curve is a millimetre, well below any feature that a cutter sees. */
const DEEPEST = 10;

/** Exact parallel points that a fitted piece is drawn through, and those at which it is judged (staggered). */
const FIT_POINTS = 13;
const TEST_POINTS = 12;

/** A stretch of a curve's parallel, and the parameters of the curve from and to which it runs. */
export interface ParallelRun {
  readonly from: number;
  readonly to: number;
  readonly curves: readonly Curve[];
}

/**
 * The parallel of one curve at distance `away` on its left (the outside of a clockwise outline), as few cubics.
 *
 * The exact parallel of a cubic is no cubic (it is algebraic of degree 10: R. Levien, *Parallel curves of cubic
 * Béziers*, 2022). A piece keeps the exact ends and end directions, and its two handle lengths come from least
 * squares over exact parallel points; where it leaves the exact parallel by more than {@link TOLERANCE.parallel} the
 * curve is halved. Stretches that would run backwards, where the radius of the curve is smaller than the distance
 * (1 + κ·away < 0), are left out: the runs on both sides then cross, and are cut there by {@link parallelOutline}.
 *
 * @param curve the curve
 * @param away distance in mm; 0 gives the curve itself
 * @returns runs, each continuous; more than one only where a stretch was left out
 */
export function curveParallel(curve: Curve, away: Mm): readonly ParallelRun[] {
  if (away === 0) return [{ from: 0, to: 1, curves: [curve] }];
  if (curveIsStraight(curve)) {
    const shift = scale(leftOf(curveTangent(curve, 0)), away);
    return [{ from: 0, to: 1, curves: [curveMap(curve, (p) => add(p, shift))] }];
  }
  return forwardStretches(curve, away).map(([from, to]) => ({
    from,
    to,
    curves: fitted(curve, away, from, to, DEEPEST),
  }));
}

/** The stretches of the parameter on which the parallel runs forwards. */
function forwardStretches(curve: Curve, away: Mm): readonly (readonly [number, number])[] {
  const forward = (t: number) => 1 + curveCurvature(curve, t) * away;
  const steps = 32;
  const stretches: [number, number][] = [];
  let start = forward(0) > 0 ? 0 : undefined;
  for (let i = 1; i <= steps; i += 1) {
    const here = forward(i / steps) > 0;
    if (here === (start !== undefined)) continue;
    const turn = signChange(forward, (i - 1) / steps, i / steps);
    if (start === undefined) start = turn;
    else {
      stretches.push([start, turn]);
      start = undefined;
    }
  }
  if (start !== undefined) stretches.push([start, 1]);
  return stretches.filter(([from, to]) => to - from > 1e-6);
}

function signChange(f: (t: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  const positive = f(low) > 0;
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    if (f(middle) > 0 === positive) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The exact parallel's point at a parameter of the curve. */
export const parallelPoint = (curve: Curve, away: Mm, t: number): Point =>
  moved(curvePoint(curve, t), leftOf(curveTangent(curve, t)), away);

function fitted(curve: Curve, away: Mm, from: number, to: number, depth: number): readonly Curve[] {
  const fit = fitOnce(curve, away, from, to);
  if (depth === 0 || fitMiss(fit, curve, away, from, to) <= TOLERANCE.parallel) return [fit];
  const middle = (from + to) / 2;
  return [...fitted(curve, away, from, middle, depth - 1), ...fitted(curve, away, middle, to, depth - 1)];
}

function fitOnce(curve: Curve, away: Mm, from: number, to: number): Curve {
  const a = parallelPoint(curve, away, from);
  const d = parallelPoint(curve, away, to);
  const wayA = curveTangent(curve, from);
  const wayD = curveTangent(curve, to);
  const source = curvePart(curve, from, to);
  const stretchAt = (t: number) => Math.max(0.05, 1 + curveCurvature(curve, t) * away);
  let handleA = distance(source[0], source[1]) * stretchAt(from);
  let handleD = distance(source[2], source[3]) * stretchAt(to);
  const samples: { p: Point; t: number }[] = [];
  for (let i = 1; i < FIT_POINTS; i += 1) {
    const t = i / FIT_POINTS;
    samples.push({ p: parallelPoint(curve, away, from + (to - from) * t), t });
  }
  const chord = distance(a, d);
  for (let round = 0; round < 4; round += 1) {
    let [aa, ab, bb, ar, br] = [0, 0, 0, 0, 0];
    for (const { p, t } of samples) {
      const s = 1 - t;
      const [w1, w2] = [3 * s * s * t, 3 * s * t * t];
      const base = {
        x: (s * s * s + w1) * a.x + (w2 + t * t * t) * d.x,
        y: (s * s * s + w1) * a.y + (w2 + t * t * t) * d.y,
      };
      const rest = subtract(p, base);
      const [u, v] = [scale(wayA, w1), scale(wayD, -w2)];
      aa += dot(u, u);
      ab += dot(u, v);
      bb += dot(v, v);
      ar += dot(u, rest);
      br += dot(v, rest);
    }
    const det = aa * bb - ab * ab;
    if (Math.abs(det) < 1e-12 * aa * bb) break;
    const [nextA, nextD] = [(ar * bb - br * ab) / det, (br * aa - ar * ab) / det];
    if (!(nextA > 0 && nextD > 0 && nextA < 3 * chord && nextD < 3 * chord)) break;
    [handleA, handleD] = [nextA, nextD];
    const now = curveFrom(a, wayA, handleA, d, wayD, handleD);
    for (const sample of samples) sample.t = curveNearest(now, sample.p, sample.t);
  }
  return curveFrom(a, wayA, handleA, d, wayD, handleD);
}

function fitMiss(fit: Curve, curve: Curve, away: Mm, from: number, to: number): Mm {
  let worst = 0;
  for (let i = 0; i < TEST_POINTS; i += 1) {
    const t = (i + 0.5) / TEST_POINTS;
    const exact = parallelPoint(curve, away, from + (to - from) * t);
    const near = curvePoint(fit, curveNearest(fit, exact, t));
    worst = Math.max(worst, distance(exact, near));
  }
  return worst;
}

/** Positive where travel turns clockwise from one direction to the next. */
export const turnBetween = (before: Point, after: Point): number =>
  Math.atan2(cross(before, after), dot(before, after));
