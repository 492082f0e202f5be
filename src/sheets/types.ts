import type { PiecePlace } from '../drawing';
import type { Mm } from '../length';
import type { Box, Point } from '../plane';

/** What the project says about paper: the same fields as `paper` in the project file. */
export interface PaperSettings {
  /** A name of the table of sizes, e.g. `A4`, or `own`. */
  readonly sheet: string;
  /** The two sides of a sheet of one's own; used where `sheet` is `own`. */
  readonly ownWidth: Mm;
  readonly ownHeight: Mm;
  readonly orientation: 'auto' | 'portrait' | 'landscape';
  /** The strip round every sheet that the printer can't reach. */
  readonly margin: Mm;
  /** How far neighbouring sheets lie on each other; 0 = trimmed and butted. */
  readonly overlap: Mm;
  /** Paper per drawing: 1 true size, 0.5 half. */
  readonly scale: number;
  /** By what the printer's own error is undone, along the short and the long side of its paper: nominal ÷ what its test bar measured. */
  readonly correctX: number;
  readonly correctY: number;
}

/** Half of a matching mark on one sheet: a filled half-diamond whose base lies on the join, completed by the neighbour's half. */
export interface JoinMark {
  /** The number that both halves bear. */
  readonly number: number;
  /** The middle of the base, on the drawing. */
  readonly at: Point;
  /** Of the usual half-diamond: smaller where a large one would cover a line. */
  readonly size: number;
  /** To which side of the base this sheet's half points: towards its own middle. */
  readonly towards: 'left' | 'right' | 'up' | 'down';
}

/** One sheet of paper: a window on the drawing. */
export interface Sheet {
  /** Row letter and column number, e.g. `B3`. */
  readonly label: string;
  /** Counted from A1; below 0 where sheets came to a plan that was printed without them. */
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
  /** As it is put into the printer's way: `width` is the longer one where the plan is landscape; a roll's is as long as it is cut. */
  readonly paper: { readonly name: string; readonly width: Mm; readonly height: Mm };
  readonly margin: Mm;
  readonly overlap: Mm;
  /** Millimetres of paper for a millimetre of drawing, the printer's correction included; both 1 as a rule. */
  readonly scale: { readonly x: number; readonly y: number };
  /** The corner of A1's window, on the drawing, whether A1 is printed or not. */
  readonly corner: Point;
  readonly columns: number;
  readonly rows: number;
  /** One for each piece, in the order of the pieces. */
  readonly places: readonly PiecePlace[];
  /** Printed sheets only, in reading order; blank ones are dropped. */
  readonly sheets: readonly Sheet[];
  /**
   * No plan that shows the same parts can need fewer: the pieces' area, less what lies on blank sheets that were
   * dropped, over the area of one window, rounded up.
   */
  readonly lowerBound: number;
}
