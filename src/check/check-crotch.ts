import type { EdgeName } from '../edges';
import { type Curve, curveCurvature, outlineEdge, type Point, pathEndWay, pathStartWay } from '../plane';
import { degrees, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixPyjamaShape, withFix } from './fixes';

const TOLERANCE = 2;
const SAMPLES = 60;

/** With the inseam sewn, the crotch seam runs on smoothly from front to back: 180° ± 2°, curving one way only. */
export function checkCrotch({ finished, choices, traced }: Subject): Check {
  const outline = finished.sewn.stitchLine;
  const curves = (name: EdgeName) => outlineEdge(outline, name).curves;
  const front = angleAtCrotch(pathEndWay(curves('crotchFront')), pathStartWay(curves('inseamFront')));
  const back = angleAtCrotch(pathEndWay(curves('inseamBack')), pathStartWay(curves('crotchBack')));
  const angle = front + back;
  const oneWay = curvesOneWay(curves('crotchFront')) && curvesOneWay(curves('crotchBack'));
  const smooth = Math.abs(angle - 180) <= TOLERANCE;
  const good = smooth && oneWay;
  const own = typeof choices.shape !== 'string';
  return {
    id: 'crotch-smooth',
    name: say`Crotch runs smooth`,
    verdict: good ? 'good' : 'wrong',
    measured: angle,
    wanted: 180,
    tolerance: TOLERANCE,
    unit: 'degrees',
    reason: oneWay
      ? say`The two corners at the crotch point add up to ${degrees(angle)}.`
      : say`A crotch curve bends both ways; the corners at the crotch point add up to ${degrees(angle)}.`,
    remedy: good
      ? UNSAID
      : own
        ? say`Choose the pyjama shape: this hem slants the inseams so that no good crotch curve meets them.`
        : traced && oneWay
          ? say`Redraw the lower end of the back crotch curve, so that it meets its inseam at ${degrees(180 - front)} and not at ${degrees(back)}.`
          : say`Check body rise, hip depth and crotch length: the curve has too little height for its width.`,
    ...withFix(good || !own ? undefined : fixPyjamaShape()),
  };
}

/** The angle inside the outline between the edge that arrives and the edge that leaves, degrees. */
function angleAtCrotch(arrives: Point, leaves: Point): number {
  const turn = Math.atan2(arrives.x * leaves.y - arrives.y * leaves.x, arrives.x * leaves.x + arrives.y * leaves.y);
  return 180 - (turn * 180) / Math.PI;
}

/** Whether a run of curves bends to one side only. Flat stretches count for both. */
export function curvesOneWay(curves: readonly Curve[]): boolean {
  const bends = curves.flatMap((curve) =>
    Array.from({ length: SAMPLES + 1 }, (_, i) => curveCurvature(curve, i / SAMPLES)),
  );
  const flat = 1e-7; // a radius of ten kilometres
  return !(bends.some((k) => k > flat) && bends.some((k) => k < -flat));
}
