import type { Mm } from '../length';
import { mm, type Phrase, say, UNSAID } from '../words';
import type { Check, Subject } from './check';

/** A pencil line's trouble on two tracings. */
const TOLERANCE = 5;

/** The hip levels of both tracings agree. */
export function checkTracedHips({ traced, body, blocks, joined: { hipDifference } }: Subject): Check | undefined {
  if (!traced) return undefined;
  const good = Math.abs(hipDifference) <= TOLERANCE;
  return {
    id: 'traced-hips',
    name: say`Hip levels agree`,
    verdict: good ? 'good' : 'doubtful',
    measured: hipDifference,
    wanted: 0,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: say`Below the waist at the side, the hip levels of front and back differ by ${mm(Math.abs(hipDifference))}.`,
    remedy: good
      ? UNSAID
      : say`${hipRedrawn(hipDifference, body.hipDepth, blocks)}; the blocks are joined with their hip lines level.`,
  };
}

/** Which hip line to redraw: the one that lies farther from where the body's hip is. */
function hipRedrawn(lowerBack: Mm, hipDepth: Mm, { front, back }: Subject['blocks']): Phrase {
  const by = mm(Math.abs(lowerBack));
  const off = (level: Mm): Mm => Math.abs(level - hipDepth);
  if (off(front.hipLevel) > off(back.hipLevel))
    return lowerBack > 0
      ? say`Redraw the side end of the front’s hip line ${by} lower`
      : say`Redraw the side end of the front’s hip line ${by} higher`;
  return lowerBack > 0
    ? say`Redraw the side end of the back’s hip line ${by} higher`
    : say`Redraw the side end of the back’s hip line ${by} lower`;
}
