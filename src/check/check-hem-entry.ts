import { mm, say } from '../length';
import { distance, pathEnd, pathStart } from '../plane';
import { type Check, type Subject, usableStretch } from './check';
import { fixHemTo, withFix } from './fixes';
import { drawnCurves, estimatedWord, knownMeasure } from './measuring';
import { notMeasured } from './not-measured';

/** How much wider than the foot a hem should be (practice). */
const ROOM = 20;

/** The foot, heel and instep, passes the hem. */
export function checkHemEntry({ body, cloth, leg, finished }: Subject): Check {
  const fold = drawnCurves(finished.sewn, 'hem fold') ?? leg.hem;
  const hem = distance(pathStart(fold), pathEnd(fold));
  const about = { id: 'hem-entry', name: 'Foot passes the hem', measured: hem, tolerance: 0, unit: 'mm' } as const;
  const foot = knownMeasure(body, 'footEntryGirth');
  if (foot === undefined) return notMeasured(about, say`The hem is ${mm(hem)} round`, 'the foot at heel and instep');
  const stretched = hem * (1 + usableStretch(cloth));
  const needed = (foot + ROOM) / (1 + usableStretch(cloth));
  const verdict = stretched >= foot + ROOM ? 'good' : stretched >= foot ? 'mind' : 'wrong';
  return {
    ...about,
    verdict,
    wanted: needed,
    reason: say`The hem is ${mm(hem)} round, the foot at heel and instep ${mm(foot)}${estimatedWord(body, 'footEntryGirth')}.`,
    remedy: verdict === 'good' ? [] : say`Make the hem at least ${mm(needed)} round, or the leg shorter.`,
    ...withFix(verdict === 'good' ? undefined : fixHemTo(needed)),
  };
}
