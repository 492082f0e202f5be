import type { Mm } from '../length';
import {
  type Curve,
  curveMap,
  type Point,
  pathEndWay,
  pathStart,
  pathStartWay,
  point,
  turnBetween,
  turned,
} from '../plane';

/**
 * An inseam made longer or shorter along the grain: every width kept.
 *
 * @param inseam from the crotch point down
 * @param level what stays where it is
 * @param share how much longer; below 1 shorter
 */
export const inseamStretched = (inseam: readonly Curve[], level: Mm, share: number): readonly Curve[] =>
  inseam.map((curve) => curveMap(curve, ({ x, y }) => point(x, level + share * (y - level))));

/**
 * Where and in which direction a crotch curve arrives at another inseam: at the angle at which it met its own.
 *
 * @param crotch the curve that met the inseam it had
 * @param before the inseam it had
 * @param inseam the one it shall meet
 */
export function arrivalAt(
  crotch: readonly Curve[],
  before: readonly Curve[],
  inseam: readonly Curve[],
): { readonly at: Point; readonly way: Point } {
  const swing = turnBetween(pathStartWay(before), pathStartWay(inseam));
  return { at: pathStart(inseam), way: turned(pathEndWay(crotch), { x: 0, y: 0 }, swing) };
}
