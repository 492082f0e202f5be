import { mm, say } from '../length';
import { pathStart } from '../plane';
import type { Check, Subject } from './check';
import { drawnCurves } from './measuring';

/** Without it the back pulls down when sitting (practice). */
const LEAST = 15;

/** Centre back stands above the waist level at the side, whatever the whole waist was raised or lowered by. */
export function checkBackRaise({ finished: { sewn }, leg, choices }: Subject): Check {
  const edge = drawnCurves(sewn, 'waist edge') ?? leg.waistEdge;
  const moved = choices.raiseWaist * Math.cos((leg.back.lean * Math.PI) / 180);
  const raise = -pathStart(edge).y - moved;
  const good = raise >= LEAST;
  return {
    id: 'back-raise',
    name: 'Back is raised',
    verdict: good ? 'good' : 'mind',
    measured: raise,
    wanted: LEAST,
    tolerance: 0,
    unit: 'mm',
    reason: say`Centre back stands ${mm(Math.abs(raise))} ${raise < 0 ? 'below' : 'above'} the waist level at the side; ${mm(LEAST)} at least is wanted.`,
    remedy: good ? [] : say`Raise the centre back waist, as for a pair that pulls down when sitting.`,
  };
}
