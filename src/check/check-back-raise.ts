import { LEAST_BACK_RAISE } from '../block';
import { mm, say } from '../length';
import { pathStart, TOLERANCE } from '../plane';
import type { Check, Subject } from './check';
import { fixSittingPullTo, withFix } from './fixes';
import { drawnCurves } from './measuring';

/** Centre back stands above the waist level at the side, whatever the whole waist was raised or lowered by. */
export function checkBackRaise({ finished: { sewn }, leg, choices, corrections }: Subject): Check {
  const edge = drawnCurves(sewn, 'waist edge') ?? leg.waistEdge;
  const moved = choices.raiseWaist * Math.cos((leg.back.lean * Math.PI) / 180);
  const raise = -pathStart(edge).y - moved;
  const good = raise >= LEAST_BACK_RAISE - TOLERANCE.samePoint;
  return {
    id: 'back-raise',
    name: 'Back is raised',
    verdict: good ? 'good' : 'mind',
    measured: raise,
    wanted: LEAST_BACK_RAISE,
    tolerance: 0,
    unit: 'mm',
    reason: say`Centre back stands ${mm(Math.abs(raise))} ${raise < 0 ? 'below' : 'above'} the waist level at the side; ${mm(LEAST_BACK_RAISE)} at least is wanted.`,
    remedy: good ? [] : say`Raise the centre back waist, as for a pair that pulls down when sitting.`,
    ...withFix(good ? undefined : fixSittingPullTo(corrections.sittingPull + LEAST_BACK_RAISE - raise)),
  };
}
