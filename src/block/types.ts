import type { Mm } from '../length';
import type { Outline, Point } from '../plane';

export type BlockEdge = 'waist' | 'centre' | 'crotch' | 'inseam' | 'hem' | 'side';

/** A dart from the waist edge: drawn on the block, never sewn in the lounge pant. */
export interface Dart {
  readonly left: Point;
  readonly right: Point;
  readonly tip: Point;
}

/**
 * One fitted block, net, wherever it came from: drafted, traced or typed by its numbers.
 *
 * Its edges run from the side round by the centre: waist (side → centre), centre (waist → the crotch curve's upper
 * end), crotch (→ crotch point), inseam (→ hem), hem (→ side), side (→ waist). The front lies at x > 0 and is
 * clockwise, the back at x < 0 and is anticlockwise.
 */
export interface Block {
  readonly part: 'front' | 'back';
  readonly edges: Outline<BlockEdge>;
  /** Upper and lower end. */
  readonly grainline: readonly [Point, Point];
  readonly hipLevel: Mm;
  readonly crotchLevel: Mm;
  readonly kneeLevel: Mm;
  readonly darts: readonly Dart[];
}

/** The pair, with what the drafting found out on the way. */
export interface Blocks {
  readonly front: Block;
  readonly back: Block;
  /** λ, −3…3: how far along its three stages a measured crotch length was met; 0 where none was measured. */
  readonly crotchFit: number;
  /** What of the crotch length was missed, drafted less wanted, and of its front part; 0 where they were not measured. */
  readonly crotchRest: Mm;
  readonly frontCrotchRest: Mm;
  readonly crotchWanted: Mm | undefined;
  /** How far the back crotch point lies below the front's, so that the inseams are equal. */
  readonly backCrotchDrop: Mm;
  readonly backRaise: Mm;
  readonly riseEase: Mm;
  readonly extensionFront: Mm;
  readonly extensionBack: Mm;
  /** Waist shaping that found no place in leans, side and darts, over the whole waist. */
  readonly shapingLeft: Mm;
}
