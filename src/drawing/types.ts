import type { PieceRef } from '../edges';
import type { Point } from '../plane';

/** Where a piece lies on the drawing beside the others. */
export interface PiecePlace {
  readonly piece: PieceRef;
  /** Degrees, clockwise as seen: it is turned about the origin first, then shifted. */
  readonly turn: number;
  readonly shift: Point;
}

/** Millimetres of paper for a millimetre of drawing, across and down. */
export interface PaperScale {
  readonly x: number;
  readonly y: number;
}
