import { type Leg, legFrom } from '../leg';
import type { Mm } from '../length';
import { type Curve, distance, pathEnd, pathStart } from '../plane';
import { degrees, mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixHemTo, fixPyjamaShape, withFix } from './fixes';
import { seamCurves } from './measuring';

/** From crotch to ankle an inseam slants no more than this, and both nearly alike, or the leg twists. @source practice */
const STEEPEST = 16.5;
const APART = 6;
/** Near the crotch an inseam slants more than on its whole way; a leg cut short ends there. @source practice, tried on the survey */
const STEEPER_ABOVE = 3.2;
const ROUNDING = 0.05;

/** How both inseams slant, and the worse of what a cutter finds doubtful about it. */
interface Slants {
  readonly front: number;
  readonly back: number;
  /** Whether it is the difference between them. */
  readonly twisted: boolean;
  readonly measured: number;
  readonly wanted: number;
}

/** Both inseams slant alike, and not too much, from the crotch point to the hem. */
export function checkInseamSlants(subject: Subject): Check {
  const { finished, leg, choices } = subject;
  const { sewn } = finished;
  const cropped = Math.max(0, 1 - choices.inseam / choices.ankleInseam);
  const steepest = STEEPEST + STEEPER_ABOVE * cropped;
  const slants = slantsOf(seamCurves(sewn, 'inseamFront'), seamCurves(sewn, 'inseamBack'), steepest);
  const { front, back, twisted, measured, wanted } = slants;
  const good = beyond(slants) <= ROUNDING;
  const hem = distance(pathStart(leg.hem), pathEnd(leg.hem)) + 2 * hemChange(leg, slants, steepest);
  const pyjama = !good && twisted && pyjamaBeyond(subject, steepest) < beyond(slants);
  return {
    id: 'inseams-slant',
    name: say`Inseams slant alike`,
    verdict: good ? 'good' : 'doubtful',
    measured,
    wanted,
    tolerance: ROUNDING,
    unit: 'degrees',
    reason: say`From crotch to hem the front inseam slants ${degrees(front)}, the back ${degrees(back)}; ${degrees(steepest)} is the most, and ${degrees(APART)} between them.`,
    remedy: good
      ? UNSAID
      : pyjama
        ? say`Choose the pyjama shape, which spreads the narrowing over the leg.`
        : twisted
          ? say`Narrow the leg less: the wider its hem, the more alike its inseams slant.`
          : say`Make the hem ${mm(hem)} round.`,
    ...withFix(good ? undefined : pyjama ? fixPyjamaShape() : twisted ? undefined : fixHemTo(hem)),
  };
}

function slantsOf(frontInseam: readonly Curve[], backInseam: readonly Curve[], steepest: number): Slants {
  const [front, back] = [slantOf(frontInseam), slantOf(backInseam)];
  const [steeper, apart] = [Math.max(Math.abs(front), Math.abs(back)), Math.abs(front - back)];
  const twisted = apart - APART > steeper - steepest;
  const [measured, wanted] = twisted ? [apart, APART] : [steeper, steepest];
  return { front, back, twisted, measured, wanted };
}

const beyond = ({ measured, wanted }: Slants): number => measured - wanted;

/** What a pyjama leg of the same blocks would have too much. */
function pyjamaBeyond({ joined, choices }: Subject, steepest: number): number {
  if (choices.shape === 'pyjama') return Number.POSITIVE_INFINITY;
  const { front, back } = legFrom(joined, { ...choices, shape: 'pyjama' });
  return beyond(slantsOf(front.inseam, back.inseam, steepest));
}

/** What each side of the hem must be let out, or taken in, so that the steeper inseam slants no more than it may. */
function hemChange({ front: { inseam, crotchPoint } }: Leg, { front, back }: Slants, steepest: number): Mm {
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
