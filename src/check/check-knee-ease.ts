import { distance, pathEnd, pathLength, pathStart } from '../plane';
import { mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixHemTo, fixSpreadTo, withFix } from './fixes';
import {
  doubtOf,
  drawnCurves,
  estimatedWord,
  LEAST_ROOM,
  leastWidthAt,
  orMeasure,
  roomVerdict,
  roomWanted,
} from './measuring';

/** A knee must bend in it. @source practice; NMSU C-209, quoted: at least 1 in, fitted */
const LEAST = 60;
/** Of what a narrowed leg's hem is widened, the share that surely arrives at the knee. */
const AT_KNEE = 0.4;

/** The leg is wider than the knee; left out where it ends above the knee. */
export function checkKneeEase({ body, leg, choices: { shape }, finished }: Subject): Check | undefined {
  const line = drawnCurves(finished.sewn, 'knee');
  if (!line) return undefined;
  const width = pathLength(line);
  const knee = body.kneeGirth;
  const doubt = doubtOf(body, 'kneeGirth');
  const bent = (leastWidthAt({ body, leg, finished }, body.waistToKnee) ?? width) - knee;
  const ease = bent < LEAST_ROOM ? bent : width - knee;
  const verdict = roomVerdict(ease, LEAST, doubt);
  const wanted = roomWanted(LEAST, doubt);
  const missing = wanted - ease;
  const narrowed = typeof shape === 'object' || shape === 'pyjama';
  const spread = leg.spread + missing;
  const hem = distance(pathStart(leg.hem), pathEnd(leg.hem)) + missing / AT_KNEE;
  return {
    id: 'knee-ease',
    name: say`Ease at the knee`,
    verdict,
    measured: ease,
    wanted,
    tolerance: 0,
    unit: 'mm',
    reason: say`The leg is ${mm(knee + ease)} round at the knee, the knee ${mm(knee)}${estimatedWord(body, 'kneeGirth')}.`,
    remedy:
      verdict === 'good'
        ? UNSAID
        : narrowed
          ? say`Make the hem ${mm(hem)} round${orMeasure(doubt, say`the knee`)}.`
          : say`Spread by ${mm(spread)}${orMeasure(doubt, say`the knee`)}.`,
    ...withFix(verdict === 'good' ? undefined : narrowed ? fixHemTo(hem) : fixSpreadTo(spread)),
  };
}
