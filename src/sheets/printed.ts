import { drawingInk, type PieceDrawing, type PiecePlace, type Stroke } from '../drawing';
import type { Mm } from '../length';
import { type Point, point } from '../plane';
import type { RowShift, SheetPart, SheetPlan, Tip } from './types';

/** A line as it was printed: its meaning, and its corners on the drawing: x, y, x, y, … */
export interface PrintedLine {
  readonly stroke: Stroke;
  readonly points: readonly Mm[];
}

/** What was written on a piece, and where. */
export interface PrintedWord {
  readonly text: string;
  readonly at: Point;
}

/** A part as it was printed: its place in the grid, counted from A1, and its halves of the marks. */
export type PrintedPart = Pick<SheetPart, 'row' | 'column' | 'marks'>;

/** A tip as it was printed, and where on its sheet. */
export type PrintedTip = PrintedPart & Pick<Tip, 'window' | 'place'>;

/** A sheet as it was printed. */
export interface PrintedSheet extends PrintedPart {
  /** Left out where it bears none. */
  readonly tips?: readonly PrintedTip[] | undefined;
}

/**
 * What lies on somebody's table since the pattern was last printed: enough to lay what is drawn now on the same sheets,
 * and to tell which of them still hold. Plain data, kept with the project.
 */
export interface PrintedSheets extends Pick<SheetPlan, 'paper' | 'margin' | 'overlap' | 'scale' | 'corner'> {
  /** Left out where no row is shifted. */
  readonly shifts?: readonly RowShift[] | undefined;
  readonly places: readonly PiecePlace[];
  readonly sheets: readonly PrintedSheet[];
  readonly lines: readonly PrintedLine[];
  readonly words: readonly PrintedWord[];
}

/** Kept figures are rounded to a hundredth of a millimetre, ten times finer than a printer's dot. */
const rounded = (value: Mm): Mm => Math.round(value * 100) / 100;

/**
 * What to keep of a plan that is printed.
 *
 * @param plan the sheets
 * @param drawings every piece at its place on them
 */
export function printedSheets(plan: SheetPlan, drawings: readonly PieceDrawing[]): PrintedSheets {
  const { paper, margin, overlap, scale, places, sheets, corner, shifts } = plan;
  return {
    paper,
    margin,
    overlap,
    scale,
    corner,
    ...(shifts.length > 0 ? { shifts } : {}),
    places,
    sheets: sheets.map(({ tips, ...sheet }) => ({
      ...printedPart(sheet),
      ...(tips.length > 0
        ? { tips: tips.map((tip) => ({ ...printedPart(tip), window: windowOf(tip.window), place: tip.place })) }
        : {}),
    })),
    lines: drawnLines(drawings).map(({ stroke, points }) => ({ stroke, points: points.map(rounded) })),
    words: drawnWords(drawings).map(({ text, at }) => ({ text, at: point(rounded(at.x), rounded(at.y)) })),
  };
}

const printedPart = ({ row, column, marks }: SheetPart): PrintedPart => ({ row, column, marks });

/** The lines of a drawing as they are kept. */
export const drawnLines = (drawings: readonly PieceDrawing[]): readonly PrintedLine[] =>
  drawingInk(drawings).lines.map(({ stroke, points }) => ({ stroke, points: points.flatMap(({ x, y }) => [x, y]) }));

/** Its words. */
export const drawnWords = (drawings: readonly PieceDrawing[]): readonly PrintedWord[] =>
  drawings.flatMap(({ texts }) => texts.map(({ text, at }) => ({ text, at })));

/** A window's sides in the order in which they are read back, so that what is opened and saved again is the same text. */
const windowOf = ({ left, top, right, bottom }: Tip['window']): Tip['window'] => ({ left, top, right, bottom });
