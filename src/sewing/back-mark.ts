import type { Mm } from '../length';
import { mm, type Phrase, say } from '../words';
import type { Garment } from './garment';

/** A loop of tape, before it is folded in half. @source practice */
const LOOP: Mm = 80;
/** What is caught of loop or label. @source practice */
const CAUGHT: Mm = 10;

/** Where it is caught: under the edge that the next stitching holds down, or in the seam that sews a ring on. */
type Where = 'casing' | 'facing' | 'seam';

/**
 * What tells back from front inside, caught by the stitching that comes next: the label of nightwear where rules ask for
 * one, else a loop of tape.
 */
export function backMark({ nightwearLabel }: Garment, where: Where): Phrase {
  if (where === 'seam')
    return nightwearLabel
      ? say`Pin the nightwear label to the wrong side of the waist at centre back, words up, its upper edge on the raw edge: caught in this seam, it tells back from front, too.`
      : say`Fold ${mm(LOOP)} of tape in half and pin it to the wrong side of the waist at centre back, its ends on the raw edge: caught in this seam, the loop tells back from front.`;
  const edge = where === 'casing' ? say`casing’s edge` : say`facing’s edge`;
  return nightwearLabel
    ? say`Inside, at centre back, slip ${mm(CAUGHT)} of the nightwear label under the ${edge}, words up, and pin it: the next stitching catches it, and it tells back from front, too.`
    : say`Fold ${mm(LOOP)} of tape in half. Inside, at centre back, slip ${mm(CAUGHT)} of both its ends under the ${edge} and pin them: the next stitching catches them, and the loop tells back from front.`;
}
