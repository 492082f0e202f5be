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
  /** The strip round every sheet that is left white. */
  readonly margin: Mm;
  /** The strip that the printer can't reach, as its test page showed; `auto` where nobody looked. */
  readonly printerMargin: Mm | 'auto';
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

/** A side of a part, seen as it lies under the drawing. */
export type Side = 'left' | 'right' | 'top' | 'bottom';

/** A stretch of a part's edge on which a neighbour joins. Joins of one side stand on one line. */
export interface SheetJoin {
  readonly side: Side;
  /** The neighbour's label: a sheet’s or a tip’s. */
  readonly neighbour: string;
  /** Where the line stands, on the drawing: x at the left and right, y at the top and bottom. */
  readonly at: Mm;
  /** The stretch that both share: y at the left and right, x at the top and bottom. */
  readonly from: Mm;
  readonly to: Mm;
}

/** What is joined to its neighbours as one: a sheet, or a tip that is cut out of one. */
export interface SheetPart {
  /** Row letter and column number, e.g. `B3`. */
  readonly label: string;
  /** Counted from A1; below 0 where sheets came to a plan that was printed without them. */
  readonly row: number;
  readonly column: number;
  /** What of the drawing this part shows, overlap included. */
  readonly window: Box;
  /** In the order left, right, top, bottom, and along each side. */
  readonly joins: readonly SheetJoin[];
  readonly marks: readonly JoinMark[];
}

/** A place of the grid with so little on it that it is printed in an empty corner of another sheet, to be cut out along its window. */
export interface Tip extends SheetPart {
  /** The move that brings it from its place on the drawing to where it lies in the window of the sheet that bears it. */
  readonly place: Pick<PiecePlace, 'turn' | 'shift'>;
}

/** One sheet of paper: a window on the drawing, and the tips that it bears for others. */
export interface Sheet extends SheetPart {
  readonly tips: readonly Tip[];
}

/** A row whose columns don't stand below those of row A. */
export interface RowShift {
  /** Counted from A. */
  readonly row: number;
  /** How far to the left it stands: less than a pitch either way. */
  readonly by: Mm;
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
  /** Rows that are shifted against row A, brick fashion; none in a plain grid. */
  readonly shifts: readonly RowShift[];
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
