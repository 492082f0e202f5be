import type { Mm } from '../../length';
import {
  type Curve,
  curveLength,
  curvePart,
  curvePoint,
  curveTimeAt,
  distance,
  type Point,
  pathReverse,
} from '../../plane';

/** A closed outline, and how far round it each of its curves ends. Places on it are told by how far round they lie. */
export interface WayRound {
  readonly curves: readonly Curve[];
  readonly ends: readonly Mm[];
  readonly length: Mm;
}

/** @param curves closed, one after another */
export function wayRound(curves: readonly Curve[]): WayRound {
  let length = 0;
  const ends = curves.map((curve) => {
    length += curveLength(curve);
    return length;
  });
  return { curves, ends, length };
}

/** A length round an outline, between 0 and its whole. */
export const roundTo = ({ length }: WayRound, at: Mm): Mm => ((at % length) + length) % length;

/** Finer than this, millimetres, no place on an outline is told from the end of a curve. @source tolerance */
const SAME = 1e-6;

/** Where on which curve a place lies. */
function partAt({ curves, ends }: WayRound, at: Mm): { readonly index: number; readonly t: number } {
  const found = ends.findIndex((end) => end >= at - SAME);
  const index = found < 0 ? curves.length - 1 : found;
  const before = index === 0 ? 0 : (ends[index - 1] as Mm);
  return { index, t: curveTimeAt(curves[index] as Curve, at - before) };
}

/** The place so far round an outline. */
export function pointRound(way: WayRound, at: Mm): Point {
  const { index, t } = partAt(way, roundTo(way, at));
  return curvePoint(way.curves[index] as Curve, t);
}

/** The curves from one place round to another, in the outline’s own direction. */
function curvesRound(way: WayRound, from: Mm, to: Mm): readonly Curve[] {
  const [a, b] = [partAt(way, roundTo(way, from)), partAt(way, roundTo(way, to))];
  const count = way.curves.length;
  const part = (index: number, start: number, end: number): readonly Curve[] =>
    end - start > 1e-9 ? [curvePart(way.curves[index % count] as Curve, start, end)] : [];
  if (a.index === b.index && b.t > a.t) return part(a.index, a.t, b.t);
  const last = b.index > a.index ? b.index : b.index + count;
  return [
    ...part(a.index, a.t, 1),
    ...Array.from({ length: last - a.index - 1 }, (_, i) => way.curves[(a.index + 1 + i) % count] as Curve),
    ...part(last, 0, b.t),
  ];
}

/** The curves from one place to another, in either direction. */
export const curvesBetween = (way: WayRound, from: Mm, to: Mm, forward: boolean): readonly Curve[] =>
  forward ? curvesRound(way, from, to) : pathReverse(curvesRound(way, to, from));

/** How far round an outline the place is that lies nearest to a point. */
export function nearestRound(way: WayRound, p: Point): Mm {
  let [best, least] = [0, Infinity];
  way.curves.forEach((curve, i) => {
    const before = i === 0 ? 0 : (way.ends[i - 1] as Mm);
    const own = (way.ends[i] as Mm) - before;
    for (let step = 0; step <= STEPS; step += 1) {
      const t = step / STEPS;
      const away = distance(curvePoint(curve, t), p);
      if (away < least) [best, least] = [before + curveLengthUpTo(curve, t, own), away];
    }
  });
  return roundTo(way, best);
}

/** A press is told apart so finely along one curve. @source tolerance */
const STEPS = 32;
const curveLengthUpTo = (curve: Curve, t: number, whole: Mm): Mm => (t === 1 ? whole : curveLength(curve, t));
