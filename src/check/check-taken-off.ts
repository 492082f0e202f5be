import { mm, say } from '../length';
import { distance, pathEnd, pathStart } from '../plane';
import type { Check, Subject } from './check';
import { fixHemTo, withFix } from './fixes';

/** Beyond this the inseams are bent so much that the leg twists (practice). */
const MOST = 60;

/** The leg is narrowed on its inseams only; too much taken off there twists it. */
export function checkTakenOff({ leg }: Subject): Check {
  const off = leg.takenOffEachSide;
  const over = off - MOST;
  const good = over <= 0;
  const hem = distance(pathStart(leg.hem), pathEnd(leg.hem)) + 2 * over;
  return {
    id: 'taken-off',
    name: 'Taken off the inseams',
    verdict: good ? 'good' : 'mind',
    measured: off,
    wanted: good ? off : MOST,
    tolerance: 0,
    unit: 'mm',
    reason:
      off >= 0
        ? say`At the ankle ${mm(off)} is taken off each side; ${mm(MOST)} is the most.`
        : say`At the ankle ${mm(-off)} is added on each side.`,
    remedy: good ? [] : say`Make the hem ${mm(hem)} round, or spread less.`,
    ...withFix(good ? undefined : fixHemTo(hem)),
  };
}
