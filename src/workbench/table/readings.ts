import type { Leg } from '../../leg';
import type { Mm } from '../../length';

/** How far each centre line leans inwards from its hip point to the waist, as a ruler laid on the drawing reads it. */
export function leans({ front, back }: Leg): { readonly front: Mm; readonly back: Mm } {
  return {
    front: Math.abs(front.curveEnd.x - front.waistPoint.x),
    back: Math.abs(back.curveEnd.x - back.waistPoint.x),
  };
}
