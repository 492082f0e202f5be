import { mm, say } from '../length';
import { distance, pathEnd, pathLength, pathStart } from '../plane';
import type { Check, Subject } from './check';
import { fixHemTo, fixSpreadTo, withFix } from './fixes';
import { drawnCurves, estimatedWord, knownMeasure, LEAST_ROOM, leastWidthAt } from './measuring';
import { notMeasured } from './not-measured';

/** A knee must bend in it (practice; NMSU C-209, quoted: at least 1 in, fitted). */
const LEAST = 60;
/** Of what a narrowed leg's hem is widened, the share that surely arrives at the knee. */
const AT_KNEE = 0.4;

/** The leg is wider than the knee; left out where it ends above the knee. */
export function checkKneeEase({ body, leg, choices: { shape }, finished }: Subject): Check | undefined {
  const line = drawnCurves(finished.sewn, 'knee');
  if (!line) return undefined;
  const width = pathLength(line);
  const about = { id: 'knee-ease', name: 'Ease at the knee', tolerance: 0, unit: 'mm' } as const;
  const knee = knownMeasure(body, 'kneeGirth');
  if (knee === undefined)
    return notMeasured({ ...about, measured: width }, say`The leg is ${mm(width)} round at the knee`, 'the knee');
  const bent = (leastWidthAt({ body, leg, finished }, body.waistToKnee) ?? width) - knee;
  const ease = bent < LEAST_ROOM ? bent : width - knee;
  const verdict = ease >= LEAST ? 'good' : ease >= LEAST_ROOM ? 'mind' : 'wrong';
  const missing = LEAST - ease;
  const narrowed = typeof shape === 'object' || shape === 'pyjama';
  const spread = leg.spread + missing;
  const hem = distance(pathStart(leg.hem), pathEnd(leg.hem)) + missing / AT_KNEE;
  return {
    ...about,
    verdict,
    measured: ease,
    wanted: LEAST,
    reason: say`The leg is ${mm(knee + ease)} round at the knee, the knee ${mm(knee)}${estimatedWord(body, 'kneeGirth')}.`,
    remedy: verdict === 'good' ? [] : narrowed ? say`Make the hem ${mm(hem)} round.` : say`Spread by ${mm(spread)}.`,
    ...withFix(verdict === 'good' ? undefined : narrowed ? fixHemTo(hem) : fixSpreadTo(spread)),
  };
}
