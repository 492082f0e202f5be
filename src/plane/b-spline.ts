import { curvePoint } from './curve';
import { add, distance, point, scale, subtract } from './point';
import type { Curve, Point } from './types';

/** A B-spline curve, rational where its points have weights. */
export interface BSpline {
  readonly degree: number;
  /** In ascending order, as many as points and degree and one more. */
  readonly knots: readonly number[];
  readonly points: readonly Point[];
  /** One for each point, above 0. */
  readonly weights?: readonly number[];
}

/** How often a span is halved until cubics are near enough. */
const DEEPEST = 10;

/** A point in the plane with its weight: x and y are multiplied with it. */
type Weighted = readonly [x: number, y: number, w: number];

/**
 * A B-spline as cubics: exact where it is of degree three or less and has no weights, else as near as `within`.
 *
 * Between two knots it is drawn by its points and directions at both ends; where that leaves the curve, the span is halved.
 *
 * @param within in the points' unit
 * @returns undefined where knots, points and degree don't belong together
 * @source L. Piegl & W. Tiller, *The NURBS Book*, 1997, chapters 3 and 4, from memory
 */
export function splineCurves(
  { degree, knots, points, weights }: BSpline,
  within: number,
): readonly Curve[] | undefined {
  const whole =
    Number.isInteger(degree) &&
    degree >= 1 &&
    points.length > degree &&
    knots.length === points.length + degree + 1 &&
    knots.every((knot, i) => Number.isFinite(knot) && (i === 0 || knot >= (knots[i - 1] as number))) &&
    (weights === undefined || (weights.length === points.length && weights.every((w) => w > 0)));
  if (!whole) return undefined;
  const poles = points.map(({ x, y }, i): Weighted => {
    const w = weights?.[i] ?? 1;
    return [x * w, y * w, w];
  });
  const slopes = poles.slice(1).map((pole, i): Weighted => {
    const span = (knots[i + degree + 1] as number) - (knots[i + 1] as number);
    const rate = span > 0 ? degree / span : 0;
    return mapThree((k) => rate * (pole[k] - (poles[i] as Weighted)[k]));
  });
  const inner = knots.slice(1, -1);
  const curves: Curve[] = [];
  for (let span = degree; span < points.length; span += 1) {
    const [from, to] = [knots[span] as number, knots[span + 1] as number];
    if (!(to > from)) continue;
    const at = (u: number): Point => flat(boor(poles, knots, degree, span, u));
    const wayAt = (u: number): Point => {
      const [x, y, w] = boor(poles, knots, degree, span, u);
      const [dx, dy, dw] = boor(slopes, inner, degree - 1, span - 1, u);
      return point((dx - (x / w) * dw) / w, (dy - (y / w) * dw) / w);
    };
    curves.push(...spanCurves(at, wayAt, from, to, within, DEEPEST));
  }
  return curves;
}

/** A span of any smooth curve as cubics by its points and its derivatives. */
function spanCurves(
  at: (u: number) => Point,
  wayAt: (u: number) => Point,
  from: number,
  to: number,
  within: number,
  depth: number,
): readonly Curve[] {
  const third = (to - from) / 3;
  const [a, d] = [at(from), at(to)];
  const curve: Curve = [a, add(a, scale(wayAt(from), third)), subtract(d, scale(wayAt(to), third)), d];
  const near = [1, 2, 3, 5, 6, 7].every((i) => {
    const t = i / 8;
    return distance(curvePoint(curve, t), at(from + t * (to - from))) <= within;
  });
  if (near || depth === 0) return [curve];
  const middle = (from + to) / 2;
  return [
    ...spanCurves(at, wayAt, from, middle, within, depth - 1),
    ...spanCurves(at, wayAt, middle, to, within, depth - 1),
  ];
}

/** De Boor's triangle: the point at u, which lies between the knots `span` and the next. */
function boor(poles: readonly Weighted[], knots: readonly number[], degree: number, span: number, u: number): Weighted {
  const row = Array.from({ length: degree + 1 }, (_, j) => poles[span - degree + j] as Weighted);
  for (let level = 1; level <= degree; level += 1)
    for (let j = degree; j >= level; j -= 1) {
      const low = knots[span - degree + j] as number;
      const t = (u - low) / ((knots[span + 1 + j - level] as number) - low);
      row[j] = mapThree((k) => (1 - t) * (row[j - 1] as Weighted)[k] + t * (row[j] as Weighted)[k]);
    }
  return row[degree] as Weighted;
}

const mapThree = (of: (k: 0 | 1 | 2) => number): Weighted => [of(0), of(1), of(2)];
const flat = ([x, y, w]: Weighted): Point => point(x / w, y / w);
