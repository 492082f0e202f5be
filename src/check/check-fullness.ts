import { number, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { pullOnNeeded } from './check-pull-on';
import { fixSpreadDownTo, withFix } from './fixes';

/** More cloth than this gathers in thick folds at the waist. @source practice */
const MOST = 1.6;
/** Less than this is no improvement worth a click. */
const WORTH = 1;

/** The opening, gathered to the waist, isn't too full. */
export function checkFullness({ body, cloth, leg, opening }: Subject): Check {
  const fullness = opening / body.waistGirth;
  const good = fullness <= MOST;
  const least = Math.max(MOST * body.waistGirth, pullOnNeeded(body, cloth));
  const over = opening - least;
  return {
    id: 'fullness',
    name: say`Fullness at the waist`,
    verdict: good ? 'good' : 'doubtful',
    measured: fullness,
    wanted: MOST,
    tolerance: 0,
    unit: 'share',
    reason: say`The opening is ${number(fullness, 2)} times the waist that it is gathered to.`,
    remedy: good
      ? UNSAID
      : over > WORTH
        ? say`Spread less.`
        : say`It has to stretch to be pulled on: choose a thin, soft cloth.`,
    ...withFix(good || over <= WORTH ? undefined : fixSpreadDownTo(leg.spread - over / 2, leg.spread)),
  };
}
