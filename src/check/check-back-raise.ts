import { mm, say } from '../length';
import { pathStart } from '../plane';
import type { Check, Subject } from './check';
import { fixSittingPullTo, withFix } from './fixes';
import { drawnCurves, smallBody } from './measuring';

/** Without it the back pulls down when sitting (practice); less on a small body, where the same slope rises less. */
const LEAST = 15;

/** Centre back stands above the waist level at the side, whatever the whole waist was raised or lowered by. */
export function checkBackRaise({ body, finished: { sewn }, leg, choices, corrections }: Subject): Check {
  const edge = drawnCurves(sewn, 'waist edge') ?? leg.waistEdge;
  const moved = choices.raiseWaist * Math.cos((leg.back.lean * Math.PI) / 180);
  const raise = -pathStart(edge).y - moved;
  const least = LEAST * smallBody(body);
  const good = raise >= least;
  return {
    id: 'back-raise',
    name: 'Back is raised',
    verdict: good ? 'good' : 'mind',
    measured: raise,
    wanted: least,
    tolerance: 0,
    unit: 'mm',
    reason: say`Centre back stands ${mm(Math.abs(raise))} ${raise < 0 ? 'below' : 'above'} the waist level at the side; ${mm(least)} at least is wanted.`,
    remedy: good ? [] : say`Raise the centre back waist, as for a pair that pulls down when sitting.`,
    ...withFix(good ? undefined : fixSittingPullTo(corrections.sittingPull + least - raise)),
  };
}
