import type { Notch } from '../edges';
import type { Mm } from '../length';
import {
  add,
  type Curve,
  distance,
  leftOf,
  moved,
  type Point,
  pathAt,
  pathEnd,
  pathEndWay,
  pathLength,
  pathStart,
  pathStartWay,
  pathThrough,
  scale,
  straight,
  subtract,
  unit,
} from '../plane';

/** How large the drawn signs are, in millimetres on the drawing. */
const SIGN = {
  arrowLength: 7,
  arrowHalfWidth: 1.8,
  triangleHeight: 2.6,
  triangleHalfBase: 1.8,
  /** From one fold triangle to the next. */
  trianglePitch: 70,
  /** Between the two ticks of a double notch, as scissors' points can still tell them apart. */
  notchPair: 5,
  openingHalfBar: 1.5,
} as const;

/** A closed run of straight lines. */
const polygon = (...points: readonly Point[]): readonly Curve[] => pathThrough(...points, points[0] as Point);

/** The grainline's two arrowheads, each pointing outwards. */
export function arrowheads(from: Point, to: Point): readonly (readonly Curve[])[] {
  const head = (tip: Point, other: Point) => {
    const back = unit(subtract(other, tip));
    const foot = moved(tip, back, SIGN.arrowLength);
    const aside = scale(leftOf(back), SIGN.arrowHalfWidth);
    return polygon(tip, add(foot, aside), subtract(foot, aside));
  };
  return distance(from, to) > 2 * SIGN.arrowLength ? [head(from, to), head(to, from)] : [];
}

/** The small triangles that sit on a fold line, on its left as it runs, evenly spread and clear of its ends. */
export function foldTriangles(fold: readonly Curve[]): readonly (readonly Curve[])[] {
  const length = pathLength(fold);
  const count = Math.max(1, Math.round(length / SIGN.trianglePitch));
  return Array.from({ length: count }, (_, i) => {
    const { at, way } = pathAt(fold, (length * (i + 0.5)) / count);
    const tip = moved(at, leftOf(way), SIGN.triangleHeight);
    return polygon(moved(at, way, -SIGN.triangleHalfBase), tip, moved(at, way, SIGN.triangleHalfBase));
  });
}

/** The bars across both ends of a buttonhole, by which it is known from the lines that it lies on. */
export function openingBars(opening: readonly Curve[]): readonly Curve[] {
  const bar = (at: Point, way: Point): Curve =>
    straight(moved(at, leftOf(way), SIGN.openingHalfBar), moved(at, leftOf(way), -SIGN.openingHalfBar));
  return [bar(pathStart(opening), pathStartWay(opening)), bar(pathEnd(opening), pathEndWay(opening))];
}

/** A notch's ticks across the allowance: one, or two side by side. */
export function notchTicks(notch: Notch): readonly (readonly Curve[])[] {
  const along = leftOf(notch.outward);
  const asides: readonly Mm[] = notch.count === 1 ? [0] : [-SIGN.notchPair / 2, SIGN.notchPair / 2];
  return asides.map((aside) => {
    const start = moved(notch.at, along, aside);
    return [straight(start, moved(start, notch.outward, notch.length))];
  });
}
