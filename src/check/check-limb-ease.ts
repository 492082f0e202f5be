import { limbGirth, limbPlaces } from '../body';
import { hemHeight } from '../edges';
import type { Mm } from '../length';
import { distance, pathEnd, pathStart } from '../plane';
import { mm, say, UNSAID } from '../words';
import { type Check, type Subject, usableStretch } from './check';
import { fixHemTo, withFix } from './fixes';
import { doubtOf, drawnCurves, LEAST_ROOM, leastWidthAt } from './measuring';

/** Of what a hem is widened, the share that surely arrives at the calf. */
const AT_CALF = 0.6;

/** One level of the leg against the limb that it lies on. */
interface Level {
  readonly at: keyof typeof NAMES;
  readonly leg: Mm;
  readonly limb: Mm;
}

/** The knee and the thigh have checks of their own. */
const NAMES = { ankleGirth: say`ankle`, calfGirth: say`calf`, hem: say`hem` } as const;

/**
 * The leg is nowhere narrower than the calf and the ankle that it covers, nor its hem than the limb on which it lies. A
 * girth that was only inferred counts as slim as it may be: what no body can wear is wrong.
 */
export function checkLimbEase(subject: Subject): Check | undefined {
  const { body, cloth, leg } = subject;
  const give = 1 + usableStretch(cloth);
  const levels = [...coveredLevels(subject), ...hemLevel(subject)];
  const room = ({ leg: width, limb }: Level): Mm => width * give - limb;
  const [first, ...others] = levels;
  if (!first) return undefined;
  const worst = others.reduce((a, b) => (room(b) < room(a) ? b : a), first);
  const verdict = room(worst) >= LEAST_ROOM ? 'good' : 'wrong';
  const missing = (worst.limb + LEAST_ROOM) / give - worst.leg;
  const hem = distance(pathStart(leg.hem), pathEnd(leg.hem)) + missing / (worst.at === 'calfGirth' ? AT_CALF : 1);
  const estimated = body.estimates.some(({ key }) => key === 'calfGirth' || key === 'ankleGirth');
  return {
    id: 'limb-ease',
    name: say`Room at calf and hem`,
    verdict,
    measured: room(worst),
    wanted: LEAST_ROOM,
    tolerance: 0,
    unit: 'mm',
    reason: estimated
      ? say`At the ${NAMES[worst.at]} the leg is ${mm(worst.leg)} round, and what it lies on ${mm(worst.limb)} (estimated).`
      : say`At the ${NAMES[worst.at]} the leg is ${mm(worst.leg)} round, and what it lies on ${mm(worst.limb)}.`,
    remedy: verdict === 'good' ? UNSAID : say`Make the hem at least ${mm(hem)} round.`,
    ...withFix(verdict === 'good' ? undefined : fixHemTo(hem)),
  };
}

function coveredLevels(subject: Subject): readonly Level[] {
  const { body } = subject;
  return limbPlaces(body).flatMap(({ key, height, girth }): readonly Level[] => {
    if (key !== 'ankleGirth' && key !== 'calfGirth') return [];
    const width = leastWidthAt(subject, body.bodyRise + body.insideLeg - height);
    return width === undefined ? [] : [{ at: key, leg: width, limb: girth - doubtOf(body, key) }];
  });
}

function hemLevel({ body, leg, finished }: Subject): readonly Level[] {
  const fold = drawnCurves(finished.sewn, 'hemFold') ?? leg.hem;
  const slim = { ...body, kneeGirth: body.kneeGirth - doubtOf(body, 'kneeGirth') };
  const limb = limbGirth(slim, hemHeight(leg, finished.hemPlan, body));
  return [{ at: 'hem', leg: distance(pathStart(fold), pathEnd(fold)), limb }];
}
