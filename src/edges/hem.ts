import { type Mm, mm, Refusal, say } from '../length';
import {
  type Curve,
  curveMap,
  curveMeetsLine,
  curvePart,
  leftOf,
  mirrored,
  moved,
  type Point,
  pathEnd,
  pathReverse,
  pathStart,
  subtract,
  unit,
} from '../plane';

/** A turned hem, as chosen. */
export interface HemChoices {
  readonly depth: Mm;
  readonly turnUnder: Mm;
}

/** What lies below the hem fold on one leg. */
export interface HemTurning {
  /** Both from the fold down to the raw edge: the inseam above the fold, mirrored in it. */
  readonly front: readonly Curve[];
  readonly back: readonly Curve[];
  /** Raw edge, turn-under fold and stitching line, each from front to back. */
  readonly raw: readonly [Point, Point];
  readonly turnUnder: readonly [Point, Point];
  readonly stitching: readonly [Point, Point];
}

/**
 * The turning of a hem: the leg above the fold, mirrored in the straight fold, so that it lies flat when turned up.
 *
 * @param frontInseam from the crotch point to the fold
 * @param backInseam the same, of the back
 * @param hem depth and turn-under
 * @throws Refusal where the hem is deeper than the inseam leaves room for
 */
export function hemTurning(
  frontInseam: readonly Curve[],
  backInseam: readonly Curve[],
  { depth, turnUnder }: HemChoices,
): HemTurning {
  const [front, back] = [pathEnd(frontInseam), pathEnd(backInseam)];
  const way = unit(subtract(back, front));
  const up = { x: -leftOf(way).x, y: -leftOf(way).y };
  const mirror = (p: Point) => mirrored(p, front, back);
  const above = (inseam: readonly Curve[], height: Mm) =>
    stretchAbove(inseam, moved(front, up, height), way, depth + turnUnder);
  const turning = (inseam: readonly Curve[]) =>
    pathReverse(above(inseam, depth + turnUnder)).map((curve) => curveMap(curve, mirror));
  const lineAt = (height: Mm): readonly [Point, Point] =>
    height === 0 ? [front, back] : [pathStart(above(frontInseam, height)), pathStart(above(backInseam, height))];
  const [frontTurning, backTurning] = [turning(frontInseam), turning(backInseam)];
  const under = lineAt(depth);
  return {
    front: frontTurning,
    back: backTurning,
    raw: [pathEnd(frontTurning), pathEnd(backTurning)],
    turnUnder: [mirror(under[0]), mirror(under[1])],
    stitching: under,
  };
}

/** The last stretch of an inseam, from where it crosses a line parallel to the hem. */
function stretchAbove(inseam: readonly Curve[], on: Point, way: Point, height: Mm): readonly Curve[] {
  for (let i = inseam.length - 1; i >= 0; i -= 1) {
    const curve = inseam[i] as Curve;
    const t = curveMeetsLine(curve, on, way).at(-1);
    if (t !== undefined && t < 1) return [curvePart(curve, t, 1), ...inseam.slice(i + 1)];
  }
  const phrase = say`a hem turning of ${mm(height)} is longer than this leg's inseam; a longer leg or a narrower hem would do.`;
  throw new Refusal([{ field: 'hem.depth', value: height, phrase }]);
}
