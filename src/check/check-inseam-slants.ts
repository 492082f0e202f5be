import type { Leg } from '../leg';
import { degrees, type Mm, mm, say } from '../length';
import { type Curve, distance, pathEnd, pathStart } from '../plane';
import type { Check, Subject } from './check';
import { fixHemTo, fixPyjamaShape, withFix } from './fixes';
import { seamCurves } from './measuring';

/** From crotch to ankle an inseam slants no more than this, and both nearly alike, or the leg twists (practice). */
const STEEPEST = 16.5;
const APART = 6;
/** Near the crotch an inseam slants more than on its whole way; a leg cut short ends there (practice, tried on the survey). */
const STEEPER_ABOVE = 3.2;
const ROUNDING = 0.05;

/** Both inseams slant alike, and not too much, from the crotch point to the hem. */
export function checkInseamSlants({ finished: { sewn }, leg, choices }: Subject): Check {
  const front = slantOf(seamCurves(sewn, 'inseamFront'));
  const back = slantOf(seamCurves(sewn, 'inseamBack'));
  const cropped = Math.max(0, 1 - choices.inseam / choices.ankleInseam);
  const steepest = STEEPEST + STEEPER_ABOVE * cropped;
  const [steeper, apart] = [Math.max(Math.abs(front), Math.abs(back)), Math.abs(front - back)];
  const twisted = apart - APART > steeper - steepest;
  const [measured, wanted] = twisted ? [apart, APART] : [steeper, steepest];
  const good = measured <= wanted + ROUNDING;
  const hem = distance(pathStart(leg.hem), pathEnd(leg.hem)) + 2 * hemChange(leg, front, back, steepest);
  return {
    id: 'inseams-slant',
    name: 'Inseams slant alike',
    verdict: good ? 'good' : 'mind',
    measured,
    wanted,
    tolerance: ROUNDING,
    unit: 'degrees',
    reason: say`From crotch to hem the front inseam slants ${degrees(front)}, the back ${degrees(back)}; ${degrees(steepest)} is the most, and ${degrees(APART)} between them.`,
    remedy: good
      ? []
      : twisted
        ? say`Choose the pyjama shape, which shares out what is narrowed.`
        : say`Make the hem ${mm(hem)} round.`,
    ...withFix(good ? undefined : twisted ? fixPyjamaShape() : fixHemTo(hem)),
  };
}

/** What each side of the hem must be let out, or taken in, so that the steeper inseam slants no more than it may. */
function hemChange({ front: { inseam, crotchPoint } }: Leg, front: number, back: number, steepest: number): Mm {
  const steeper = Math.abs(front) > Math.abs(back) ? front : back;
  const tangent = (angle: number) => Math.tan((angle * Math.PI) / 180);
  return (tangent(steeper) - Math.sign(steeper) * tangent(steepest)) * (pathEnd(inseam).y - crotchPoint.y);
}

/** Degrees off the upright from the crotch point to the hem, positive towards the side line. */
function slantOf(curves: readonly Curve[]): number {
  const [a, b] = [pathStart(curves), pathEnd(curves)];
  const [upper, lower] = a.y < b.y ? [a, b] : [b, a];
  return (Math.atan2(Math.sign(upper.x) * (upper.x - lower.x), lower.y - upper.y) * 180) / Math.PI;
}
