import { degrees, say } from '../length';
import { type Curve, pathEnd, pathStart, subtract } from '../plane';
import type { Check, Subject } from './check';
import { fixStraightenTo, withFix } from './fixes';
import { seamCurves } from './measuring';

/** Steepest leans that a cutter draws (practice). */
const STEEPEST = { front: 4, back: 8 } as const;
/** The block is drawn up to these angles exactly. */
const ROUNDING = 0.05;

/** The centre lines lean no more than a cutter would draw them: 8° behind, 4° in front. */
export function checkLeans({ finished: { sewn }, leg }: Subject): Check {
  const front = leanOf(seamCurves(sewn, 'centreFront'));
  const back = leanOf(seamCurves(sewn, 'centreBack'));
  const atFront = front - STEEPEST.front > back - STEEPEST.back;
  const [lean, most] = atFront ? [front, STEEPEST.front] : [back, STEEPEST.back];
  const good = lean <= most + ROUNDING;
  const asDrawn = lean / Math.max(1e-9, 1 - leg.straighten);
  return {
    id: 'leans',
    name: 'Centres lean gently',
    verdict: good ? 'good' : 'mind',
    measured: lean,
    wanted: most,
    tolerance: ROUNDING,
    unit: 'degrees',
    reason: say`Centre back leans ${degrees(back)}, centre front ${degrees(front)}; ${degrees(STEEPEST.back)} and ${degrees(STEEPEST.front)} are the most.`,
    remedy: good ? [] : say`Straighten the centre lines.`,
    ...withFix(good ? undefined : fixStraightenTo(1 - (most - ROUNDING) / asDrawn)),
  };
}

/** How far a centre line leans inwards above, degrees; negative where it leans outwards. */
function leanOf(curves: readonly Curve[]): number {
  const [a, b] = [pathStart(curves), pathEnd(curves)];
  const [upper, lower] = a.y < b.y ? [a, b] : [b, a];
  const way = subtract(lower, upper);
  return (Math.atan2(Math.sign(lower.x) * way.x, way.y) * 180) / Math.PI;
}
