import { mm, say, UNSAID } from '../words';
import type { Check, Subject } from './check';
import { seamOf } from './measuring';

const TOLERANCE = 1;

/** The two inseams are sewn to each other: as they are cut, equally long within 1 mm. */
export function checkInseams({ finished }: Subject): Check {
  const { lengthA: front, lengthB: back } = seamOf([finished.piece], 'inseam');
  const good = Math.abs(front - back) <= TOLERANCE;
  return {
    id: 'inseams-equal',
    name: say`Inseams equal`,
    verdict: good ? 'good' : 'wrong',
    measured: front - back,
    wanted: 0,
    tolerance: TOLERANCE,
    unit: 'mm',
    reason: say`The front inseam is ${mm(front)} long, the back ${mm(back)}.`,
    remedy: good ? UNSAID : say`Move the back crotch point up or down until both are equal.`,
  };
}
