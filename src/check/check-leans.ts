import { type Curve, pathEnd, pathStart, subtract } from '../plane';
import { degrees, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixStraightenTo, withFix } from './fixes';
import { seamCurves } from './measuring';

/**
 * Steepest leans inwards that a cutter draws, degrees. Centre front stands upright, for each degree that it
 * leans takes one off the waist's tilt; a block that was brought along may have been drawn otherwise.
 *
 * @source practice; geometry
 */
const INWARDS = { back: 8, front: 0.5, tracedFront: 4 } as const;
/** Over a belly centre front runs out above the hip, so far at most. @source practice */
const OUTWARDS = 8;
/** The block is drawn up to these angles exactly. */
const ROUNDING = 0.05;

/** One centre line, and how far its lean is beyond what a cutter draws. */
interface Lean {
  readonly lean: number;
  readonly most: number;
  readonly beyond: number;
}

/** The centre lines lean no more than a cutter would draw them, inwards and outwards. */
export function checkLeans({ finished: { sewn }, leg, traced }: Subject): Check {
  const front = leanJudged(leanOf(seamCurves(sewn, 'centreFront')), traced ? INWARDS.tracedFront : INWARDS.front);
  const back = leanJudged(leanOf(seamCurves(sewn, 'centreBack')), INWARDS.back);
  const worst = front.beyond > back.beyond ? front : back;
  const good = worst.beyond <= ROUNDING;
  const inwards = worst.lean >= 0;
  const asDrawn = worst.lean / Math.max(1e-9, 1 - leg.straighten);
  return {
    id: 'leans',
    name: say`Centres lean gently`,
    verdict: good ? 'good' : 'doubtful',
    measured: Math.abs(worst.lean),
    wanted: inwards ? worst.most : OUTWARDS,
    tolerance: ROUNDING,
    unit: 'degrees',
    reason: say`Centre back ${leaning(back)}, centre front ${leaning(front)}; inwards ${degrees(back.most)} and ${degrees(front.most)} are the most, outwards ${degrees(OUTWARDS)}.`,
    remedy: good
      ? UNSAID
      : inwards
        ? say`Straighten the centre lines.`
        : say`Measure waist and hip again, or trace the blocks anew: no centre line runs out so far.`,
    ...withFix(good || !inwards ? undefined : fixStraightenTo(1 - (worst.most - ROUNDING) / asDrawn)),
  };
}

const leanJudged = (lean: number, most: number): Lean => ({
  lean,
  most,
  beyond: Math.max(lean - most, -lean - OUTWARDS),
});

function leaning({ lean }: Lean): Phrase {
  if (Math.abs(lean) < ROUNDING) return say`stands upright`;
  return lean < 0 ? say`leans ${degrees(-lean)} outwards` : say`leans ${degrees(lean)} inwards`;
}

/** How far a centre line leans inwards above, degrees; negative where it leans outwards. */
function leanOf(curves: readonly Curve[]): number {
  const [a, b] = [pathStart(curves), pathEnd(curves)];
  const [upper, lower] = a.y < b.y ? [a, b] : [b, a];
  const way = subtract(lower, upper);
  return (Math.atan2(Math.sign(lower.x) * way.x, way.y) * 180) / Math.PI;
}
