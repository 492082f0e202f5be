import type { Mm } from '../../length';
import { pathLength } from '../../plane';
import type { TracedPair } from '../marks';
import { cornersAtCrotch } from './crotch-run';
import { hemDepthOf, hipDepthOf, inseamOf, sideAtHip } from './pair-measures';

/** What of a pair is trued, in the order of the work: from the hip line up, down and round the crotch. */
export const TRUINGS = ['hips', 'waist', 'hem', 'inseams', 'crotch'] as const;
export type Truing = (typeof TRUINGS)[number];

/** By how much front and back differ where they are sewn to each other or run on into each other. */
export interface PairDifference {
  readonly truing: Truing;
  /** Of each block: millimetres, at the crotch the corner’s degrees. */
  readonly front: number;
  readonly back: number;
  /** How much more the back has; at the crotch how much the two corners have together beyond 180°. */
  readonly by: number;
  /** `even`: nothing to see; `offered`: a pencil line’s trouble, to be trued; `left`: so much that it was cut so, or a line lies elsewhere. */
  readonly kind: 'even' | 'offered' | 'left';
}

/**
 * Below `least` no tape tells, millimetres and degrees; above `most` the blocks were cut so. Two corners of a few centimetres'
 * curve, marked on a photograph, miss as much as 8° between them, and no seam is the worse for half of it on either block.
 *
 * @source practice
 */
const LIMITS = { length: { least: 1, most: 25 }, angle: { least: 0.5, most: 12 } } as const;

/**
 * All that front and back differ by, in the order of {@link TRUINGS}; what can't be measured on these blocks is left out.
 *
 * @param pair net
 * @source practice
 */
export function pairDifferences({ front, back }: TracedPair): readonly PairDifference[] {
  const made = (truing: Truing, a: number, b: number, by: number): PairDifference => {
    const { least, most } = truing === 'crotch' ? LIMITS.angle : LIMITS.length;
    const off = Math.abs(by);
    return { truing, front: a, back: b, by, kind: off < least ? 'even' : off <= most ? 'offered' : 'left' };
  };
  const lengths = (truing: Truing, a: Mm, b: Mm) => made(truing, a, b, b - a);
  const [frontSide, backSide] = [sideAtHip(front), sideAtHip(back)];
  const corners = cornersAtCrotch({ front, back });
  return [
    lengths('hips', hipDepthOf(front), hipDepthOf(back)),
    ...(frontSide && backSide ? [lengths('waist', pathLength(frontSide.above), pathLength(backSide.above))] : []),
    lengths('hem', hemDepthOf(front), hemDepthOf(back)),
    lengths('inseams', inseamOf(front), inseamOf(back)),
    ...(corners ? [made('crotch', corners.front, corners.back, corners.front + corners.back - 180)] : []),
  ];
}
