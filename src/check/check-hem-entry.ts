import { mm, say } from '../length';
import { distance, pathEnd, pathStart } from '../plane';
import type { Check, Subject } from './check';

/** How much wider than the foot a hem should be (practice). */
const ROOM = 20;

/** The foot, heel and instep, passes the hem. */
export function checkHemEntry({ body, cloth, leg }: Subject): Check {
  const hem = distance(pathStart(leg.hem), pathEnd(leg.hem));
  const foot = body.footEntryGirth;
  const room = hem * (1 + (cloth.kind === 'knit' ? 0.7 * cloth.stretch : 0)) - foot;
  const verdict = room >= ROOM ? 'good' : room >= 0 ? 'mind' : 'wrong';
  const estimated = body.estimates.some((e) => e.key === 'footEntryGirth') ? ' (estimated)' : '';
  return {
    id: 'hem-entry',
    name: 'Foot passes the hem',
    verdict,
    measured: hem,
    wanted: foot + ROOM,
    tolerance: 0,
    unit: 'mm',
    reason: say`The hem is ${mm(hem)} round, the foot at heel and instep ${mm(foot)}${estimated}.`,
    remedy: verdict === 'good' ? [] : say`Make the hem at least ${mm(foot + ROOM)} round, or the leg shorter.`,
  };
}
