import { mm, say } from '../length';
import { pathEnd, pathStart } from '../plane';
import type { Check, Subject } from './check';
import { fixSpreadTo, withFix } from './fixes';
import { estimatedWord, knownMeasure, LEAST_ROOM, seamCurves } from './measuring';
import { notMeasured } from './not-measured';

/** A loose leg clears the thigh by this (practice; *Measurements for Fitting Pants*, NMSU C-209, quoted: 1–2 in fitted). */
const LEAST = 60;

/** The leg is wider than the thigh, measured level from crotch point to crotch point. */
export function checkThighEase({ body, leg, finished }: Subject): Check {
  const width =
    pathEnd(seamCurves(finished.sewn, 'crotchFront')).x - pathStart(seamCurves(finished.sewn, 'crotchBack')).x;
  const about = { id: 'thigh-ease', name: 'Ease at the thigh', tolerance: 0, unit: 'mm' } as const;
  const thigh = knownMeasure(body, 'thighGirth');
  if (thigh === undefined)
    return notMeasured({ ...about, measured: width }, say`The leg is ${mm(width)} round at the crotch`, 'the thigh');
  const ease = width - thigh;
  const verdict = ease >= LEAST ? 'good' : ease >= LEAST_ROOM ? 'mind' : 'wrong';
  const spread = leg.spread + LEAST - ease;
  return {
    ...about,
    verdict,
    measured: ease,
    wanted: LEAST,
    reason: say`The leg is ${mm(width)} round at the crotch, the thigh ${mm(thigh)}${estimatedWord(body, 'thighGirth')}.`,
    remedy: verdict === 'good' ? [] : say`Spread by ${mm(spread)}; at least ${mm(LEAST)} of ease is wanted.`,
    ...withFix(verdict === 'good' ? undefined : fixSpreadTo(spread)),
  };
}
