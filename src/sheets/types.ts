import type { Mm } from '../length';
import type { Point } from '../plane';

/** A rectangle on the drawing. */
export interface Box {
  readonly left: Mm;
  readonly top: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
}

/** Half of a matching mark on one sheet: a filled half-diamond whose base lies on the join, completed by the neighbour's half. */
export interface JoinMark {
  /** The number that both halves bear. */
  readonly number: number;
  /** The middle of the base, on the drawing. */
  readonly at: Point;
  /** To which side of the base this sheet's half points: towards its own middle. */
  readonly towards: 'left' | 'right' | 'up' | 'down';
}

/** One sheet of paper: a window on the drawing. */
export interface Sheet {
  /** Row letter and column number, e.g. `B3`. */
  readonly label: string;
  readonly row: number;
  readonly column: number;
  /** What of the drawing this sheet shows, overlap included. */
  readonly window: Box;
  /** Where the neighbours join: on the drawing; a side without neighbour is absent. */
  readonly joins: { readonly left?: Mm; readonly right?: Mm; readonly top?: Mm; readonly bottom?: Mm };
  readonly marks: readonly JoinMark[];
}

/** How the pieces are spread over sheets of one size. */
export interface SheetPlan {
  readonly paper: { readonly name: string; readonly width: Mm; readonly height: Mm };
  readonly margin: Mm;
  readonly overlap: Mm;
  readonly columns: number;
  readonly rows: number;
  /** Printed sheets only, in reading order; blank ones are dropped. */
  readonly sheets: readonly Sheet[];
  /** No plan can need fewer: area of the pieces over the area that a sheet adds. */
  readonly lowerBound: number;
}
