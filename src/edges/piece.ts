import type { Mm } from '../length';
import type { Curve, Edge, Outline, Point } from '../plane';
import type { EdgeName } from './edge-names';
import type { FoldName, PieceLine } from './line-names';
import type { PieceRef } from './piece-names';

/** One edge of the cut line: the parallel of the stitching line at the edge's own allowance. */
export interface CutEdge extends Edge<EdgeName> {
  readonly allowance: Mm;
}

/** A matching mark: short ticks across the allowance. */
export interface Notch {
  readonly edge: EdgeName;
  /** On the stitching line. */
  readonly at: Point;
  /** Unit vector from the stitching line towards the cut line. */
  readonly outward: Point;
  /** The length of the tick, from `at` outwards: the edge's allowance. */
  readonly length: Mm;
  readonly count: 1 | 2;
}

/**
 * What a text on a piece says: whose pattern it is; which piece, and how many are cut; the body's label; which half of a leg,
 * whose leg; what there is at its side; or something to take care of.
 */
export type TextMeaning = 'title' | 'piece' | 'label' | 'half' | 'whose' | 'side' | 'note';

/** A word on the piece. `at` is the middle of its baseline. */
export interface PieceText {
  readonly at: Point;
  readonly text: string;
  /** Height of the capitals' line, millimetres. */
  readonly size: Mm;
  /** Degrees, clockwise as seen; 0 reads left to right, −90 reads upwards. */
  readonly turn: number;
  readonly says: TextMeaning;
}

/** A finished pattern piece: everything that is printed on it and everything that a cutter, a checker or a layer needs. */
export interface Piece extends PieceRef {
  /** How many to cut. */
  readonly cut: number;
  /** True where half of them are cut mirrored. */
  readonly mirrored: boolean;
  /** Closed, clockwise; net, turnings included. */
  readonly stitchLine: Outline<EdgeName>;
  /** Closed, clockwise, an edge for an edge of the stitching line. */
  readonly cutLine: readonly CutEdge[];
  readonly lines: readonly PieceLine[];
  readonly folds: readonly Edge<FoldName>[];
  readonly notches: readonly Notch[];
  /** From the upper to the lower arrowhead. */
  readonly grainline: readonly [Point, Point];
  readonly texts: readonly PieceText[];
}

/** All curves of a cut line as one closed run. */
export function cutCurves(piece: Piece): readonly Curve[] {
  return piece.cutLine.flatMap((edge) => edge.curves);
}
