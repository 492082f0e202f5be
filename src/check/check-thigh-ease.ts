import { pathEnd, pathStart } from '../plane';
import { mm, type Phrase, say, UNSAID } from '../words';
import type { Check, Fix, Subject } from './check';
import { fixSpreadDownTo, fixSpreadTo, withFix } from './fixes';
import { doubtOf, estimatedWord, orMeasure, roomVerdict, roomWanted, seamCurves } from './measuring';

/**
 * A loose leg clears the thigh by this and
 * hangs in no more than that.
 *
 * @source practice; *Measurements for Fitting Pants*, NMSU C-209, quoted: 1–2 in fitted; practice: nine of ten of the
 *   6,068 adults of ANSUR II, 2014, get 97–172 mm
 */
const LEAST = 60;
const MOST = 220;

/** The leg is wider than the thigh and no sack, measured level from crotch point to crotch point. */
export function checkThighEase({ body, leg, finished }: Subject): Check {
  const width =
    pathEnd(seamCurves(finished.sewn, 'crotchFront')).x - pathStart(seamCurves(finished.sewn, 'crotchBack')).x;
  const doubt = doubtOf(body, 'thighGirth');
  const ease = width - body.thighGirth;
  const least = roomWanted(LEAST, doubt);
  const wide = ease > MOST;
  const verdict = wide ? 'doubtful' : roomVerdict(ease, LEAST, doubt);
  const change = thighChange(leg.spread, ease, least);
  return {
    id: 'thigh-ease',
    name: say`Ease at the thigh`,
    verdict,
    measured: ease,
    wanted: wide ? MOST : least,
    tolerance: 0,
    unit: 'mm',
    reason: say`The leg is ${mm(width)} round at the crotch, the thigh ${mm(body.thighGirth)}${estimatedWord(body, 'thighGirth')}; ${mm(least)} to ${mm(MOST)} of ease is wanted.`,
    remedy: verdict === 'good' ? UNSAID : change.remedy(orMeasure(doubt, say`the thigh`)),
    ...withFix(verdict === 'good' ? undefined : change.fix),
  };
}

/** What spread would do: it widens the thigh by as much. */
function thighChange(
  spread: number,
  ease: number,
  least: number,
): { readonly remedy: (or: Phrase) => Phrase; readonly fix: Fix | undefined } {
  if (ease <= MOST) {
    const to = spread + least - ease;
    return { remedy: (or) => say`Spread by ${mm(to)}${or}.`, fix: fixSpreadTo(to) };
  }
  const to = Math.max(0, spread - (ease - MOST));
  return {
    remedy: () => say`Spread by only ${mm(to)}; the rest is the blocks’ own.`,
    fix: fixSpreadDownTo(to, spread),
  };
}
