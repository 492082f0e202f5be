import type { PieceRef } from '../edges';
import type { Mm } from '../length';
import type { Point } from '../plane';
import type { Phrase } from '../words';

/** How the cloth lies on the table. */
export type Layout = 'single' | 'foldedLengthwise' | 'foldedCrosswise';

/** The cloth, as far as the lay asks for it. */
export interface LayCloth {
  /** From selvedge to selvedge, as it is bought. */
  readonly width: Mm;
  readonly washFirst: boolean;
  /** Fractions lost in the first wash. */
  readonly shrinkLength: number;
  readonly shrinkWidth: number;
  /** Nap, or a print that has an upper end: no piece may be turned end for end. */
  readonly oneWay: boolean;
  /** Of a check or a print, along the grain; 0 where there is none. */
  readonly repeat: Mm;
  /** Of stripes or a check, from selvedge to selvedge; 0 where there is none. */
  readonly repeatAcross: Mm;
  /** Degrees that a piece may lie off the grain. */
  readonly grainTolerance: number;
}

/**
 * Through what a piece is cut: the `single` layer; `both` layers, which gives two, mirrored; the `upper` of two only; or
 * with its middle on the `fold`, which gives one.
 */
export type Layer = 'single' | 'both' | 'upper' | 'fold';

/**
 * One piece on the cloth. A point p of the piece comes to lie at: p, mirrored in the piece's upright axis x = 0 where
 * `mirrored`; turned clockwise about the piece's origin by `turn`; moved by `at`.
 */
export interface Placement {
  readonly piece: PieceRef;
  /** Which of the piece's copies this cut gives, from 1. */
  readonly copies: readonly number[];
  readonly layer: Layer;
  /** Printed side down. */
  readonly mirrored: boolean;
  /** Degrees clockwise as seen: what brings its grain along the cloth, 180 end for end, and what the grain tolerance adds. */
  readonly turn: number;
  /** On the cloth: x from its left edge, y from its upper one, as it lies on the table. */
  readonly at: Point;
}

/**
 * Where every piece lies. The table's coordinates: x across, y along the grain, (0, 0) the upper left corner of the cloth
 * as it lies. Folded lengthwise the fold is the left edge; folded crosswise it is the upper one.
 */
export interface Lay {
  readonly layout: Layout;
  /** Of the cloth as it is bought. */
  readonly width: Mm;
  /** Of the cloth as it lies flat, after its wash. */
  readonly clothWidth: Mm;
  /** As it lies: half of the width where it is folded lengthwise, half of the length where crosswise. */
  readonly table: { readonly width: Mm; readonly length: Mm };
  readonly placements: readonly Placement[];
  /** Of the cloth as it lies, both layers counted. */
  readonly lengthNeeded: Mm;
  /** No lay of this kind is shorter. */
  readonly lowerBound: Mm;
  /** Share of the needed cloth that is no piece. */
  readonly waste: number;
  /** To the millimetre: the needed length, what a repeat adds, both ends straightened, before the wash. */
  readonly toBuy: Mm;
}

/** A lay, or why there is none on this width. */
export type LayAnswer =
  | { readonly fits: true; readonly lay: Lay }
  | {
      readonly fits: false;
      readonly layout: Layout;
      readonly width: Mm;
      /** The widest piece that must lie there, and the room for it. */
      readonly widest: { readonly piece: PieceRef; readonly width: Mm };
      readonly room: Mm;
      /** The least width of cloth, as bought, on which this layout is possible. */
      readonly widthWanted: Mm;
      /** What would fit. */
      readonly instead: readonly Phrase[];
    };
