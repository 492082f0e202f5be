import { mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';

/** A pencil line's trouble on two tracings. */
const TOLERANCE = 5;

/** The hip levels of both tracings agree. */
export function checkTracedHips({ traced, joined: { hipDifference } }: Subject): Check | undefined {
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
      : say`Look where the hip lines were marked; the blocks are joined with their hip lines level.`,
  };
}
