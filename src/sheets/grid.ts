import type { Mm } from '../length';
import type { Box } from '../plane';
import type { PaperWay } from './settings';

/** A grid of sheets laid over the drawing. */
export interface Grid {
  readonly way: PaperWay;
  readonly left: Mm;
  readonly top: Mm;
  readonly columns: number;
  readonly rows: number;
  /** How far each row stands to the left of the grid's corner, brick fashion; 0 for a row that has none. */
  readonly shifts?: readonly Mm[];
}

/** One place of the grid, counted from 0. */
export interface Cell {
  readonly column: number;
  readonly row: number;
}

/** From the drawing's box to the grid's corner: half the widest line (0.25 mm) and a hair, on the paper. */
const BORDER: Mm = 0.3;

/** Guards a row of sheets that fits exactly from needing one more by rounding. */
const ROUNDING: Mm = 1e-6;

/** What a grid must hold: the lines' box and half their width. */
export function bordered(box: Box, { scale }: PaperWay): Box {
  const [x, y] = [BORDER / scale.x, BORDER / scale.y];
  return { left: box.left - x, top: box.top - y, right: box.right + x, bottom: box.bottom + y };
}

/** The grid with that corner that just holds a box to the right of and below it. */
export function gridFrom(way: PaperWay, left: Mm, top: Mm, box: Box): Grid {
  const count = (length: Mm, window: Mm, pitch: Mm) => Math.max(1, Math.ceil((length - window - ROUNDING) / pitch) + 1);
  return {
    way,
    left,
    top,
    columns: count(box.right - left, way.window.width, way.pitch.x),
    rows: count(box.bottom - top, way.window.height, way.pitch.y),
  };
}

/** What a sheet shows, overlap included. */
export function gridWindow({ way, left, top, shifts = [] }: Grid, { column, row }: Cell): Box {
  const x = left - (shifts[row] ?? 0) + column * way.pitch.x;
  const y = top + row * way.pitch.y;
  return { left: x, top: y, right: x + way.window.width, bottom: y + way.window.height };
}

/** The grid cut down to the rows and columns that cells fill, and the cells counted in it. */
export function gridTrimmed(
  grid: Grid,
  cells: readonly Cell[],
): { readonly grid: Grid; readonly cells: readonly Cell[] } {
  const rows = cells.map((cell) => cell.row);
  const columns = cells.map((cell) => cell.column);
  const first = { row: Math.min(...rows), column: Math.min(...columns) };
  return {
    grid: {
      ...grid,
      left: grid.left + first.column * grid.way.pitch.x,
      top: grid.top + first.row * grid.way.pitch.y,
      ...(grid.shifts ? { shifts: grid.shifts.slice(first.row) } : {}),
      columns: Math.max(...columns) - first.column + 1,
      rows: Math.max(...rows) - first.row + 1,
    },
    cells: cells.map(({ row, column }) => ({ row: row - first.row, column: column - first.column })),
  };
}

export const cellKey = ({ row, column }: Cell): string => `${row}/${column}`;

export const isSameCell = (a: Cell, b: Cell): boolean => a.row === b.row && a.column === b.column;
