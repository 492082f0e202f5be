import type { Mm } from '../length';
import { type Curve, curveMeetsLine, curveReaimed, curveSplit, curveTangent, type Point, point } from '../plane';

/**
 * A joint of two curves this near to the knee, up or down, is moved in its stead, mm: the stretch between them
 * would be too short to bend so far and back.
 *
 * @source tolerance
 */
const NEAR_JOINT: Mm = 40;

/**
 * An inseam let out (or in) at the knee, its ends and its direction at the knee kept: for knees that touch.
 *
 * @param inseam from the crotch point down
 * @param kneeLevel the level of the knee; above or below the inseam nothing is changed
 * @param by how far the line moves to the side, mm; positive to the right
 */
export function inseamAtKnee(inseam: readonly Curve[], kneeLevel: Mm, by: Mm): readonly Curve[] {
  if (by === 0) return inseam;
  const away = (curve: Curve): Mm => Math.abs(curve[3].y - kneeLevel);
  const joint = inseam.slice(0, -1).reduce((best, curve, i) => {
    const nearest = inseam[best];
    return away(curve) <= NEAR_JOINT && (!nearest || away(curve) < away(nearest)) ? i : best;
  }, -1);
  if (joint >= 0)
    return withJoint(
      inseam.slice(0, joint),
      inseam[joint] as Curve,
      inseam[joint + 1] as Curve,
      inseam.slice(joint + 2),
      by,
    );
  for (let i = 0; i < inseam.length; i += 1) {
    const curve = inseam[i] as Curve;
    const t = curveMeetsLine(curve, point(0, kneeLevel), point(1, 0))[0];
    if (t === undefined) continue;
    if (t < 1e-6 || t > 1 - 1e-6) return inseam;
    const [upper, lower] = curveSplit(curve, t);
    return withJoint(inseam.slice(0, i), upper, lower, inseam.slice(i + 1), by);
  }
  return inseam;
}

function withJoint(
  before: readonly Curve[],
  upper: Curve,
  lower: Curve,
  after: readonly Curve[],
  by: Mm,
): readonly Curve[] {
  const at: Point = { x: upper[3].x + by, y: upper[3].y };
  const way = curveTangent(upper, 1);
  return [
    ...before,
    curveReaimed(upper, { at: upper[0], way: curveTangent(upper, 0) }, { at, way }),
    curveReaimed(lower, { at, way }, { at: lower[3], way: curveTangent(lower, 1) }),
    ...after,
  ];
}
