import type { JoinedBlocks } from '../leg';
import type { Mm } from '../length';
import { edgeLength, outlineEdge, pathEnd } from '../plane';
import { mm, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { fixPyjamaShape, withFix } from './fixes';

/** Fitted trousers may have a back inseam a little shorter, to be stretched. @source memory: up to 6–12 mm */
const TOLERANCE = 6;

/** The inseams of both tracings are equally long, as far as a fitted pair's are. */
export function checkTracedInseams({ traced, joined, choices }: Subject): Check | undefined {
  if (!traced) return undefined;
  const length = (part: 'front' | 'back') => edgeLength(outlineEdge(joined[part].edges, 'inseam'));
  const [front, back] = [length('front'), length('back')];
  const good = Math.abs(front - back) <= TOLERANCE;
  return {
    id: 'traced-inseams',
    name: say`Inseams of the blocks agree`,
    verdict: good ? 'good' : 'doubtful',
    measured: front - back,
    wanted: 0,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: say`The blocks’ inseams are ${mm(front)} in front and ${mm(back)} behind.`,
    remedy: good
      ? UNSAID
      : say`${backRedrawn(front - back, hemGap(joined))}, or choose a shape that draws its own inseams: pyjama or straight.`,
    ...withFix(good || choices.shape !== 'block' ? undefined : fixPyjamaShape()),
  };
}

/** How much lower the front inseam ends than the back's, with the hip lines level. */
function hemGap({ front, back }: JoinedBlocks): Mm {
  const endOf = (block: JoinedBlocks['front']) => pathEnd(outlineEdge(block.edges, 'inseam').curves);
  return endOf(front).y - endOf(back).y;
}

/**
 * Which end of the back inseam to redraw: the lower one where the hems lie as far apart as the inseams differ, else the
 * one at the crotch point, which a cutter moves up or down until both are equal.
 *
 * @source practice
 */
function backRedrawn(longerFront: Mm, gap: Mm): Phrase {
  const by = mm(Math.abs(longerFront));
  if (Math.abs(longerFront - gap) <= TOLERANCE)
    return longerFront > 0
      ? say`Redraw the lower end of the back inseam ${by} lower`
      : say`Redraw the lower end of the back inseam ${by} higher`;
  return longerFront > 0
    ? say`Redraw the upper end of the back inseam, the crotch point, ${by} higher`
    : say`Redraw the upper end of the back inseam, the crotch point, ${by} lower`;
}
