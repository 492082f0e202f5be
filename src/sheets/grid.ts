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
  /** How far each row stands to the left of the grid's corner, brick fashion; rows beyond those named stand as the nearest one, all at 0 where none is. */
  readonly shifts: readonly Mm[];
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

/**
 * The grid with that corner that just holds a box to the right of and below it.
 *
 * @param shifts how far each row stands to the left of the corner, 0 or more; rows beyond the last stand as it does
 */
export function gridFrom(way: PaperWay, left: Mm, top: Mm, box: Box, shifts: readonly Mm[] = []): Grid {
  const count = (length: Mm, window: Mm, pitch: Mm) => Math.max(1, Math.ceil((length - window - ROUNDING) / pitch) + 1);
  return {
    way,
    left,
    top,
    columns: count(box.right - left + Math.max(0, ...shifts), way.window.width, way.pitch.x),
    rows: count(box.bottom - top, way.window.height, way.pitch.y),
    shifts,
  };
}

/** How far a row stands to the left. */
export const rowShift = ({ shifts }: Pick<Grid, 'shifts'>, row: number): Mm =>
  shifts[Math.max(0, Math.min(shifts.length - 1, row))] ?? 0;

/** The windows that reach into a box, by their numbers in reading order. */
export function windowsMeeting(grid: Grid, box: Box): readonly number[] {
  const { way, left, top, columns, rows } = grid;
  const { window, pitch } = way;
  const found: number[] = [];
  const firstRow = Math.max(0, Math.ceil((box.top - top - window.height) / pitch.y));
  const lastRow = Math.min(rows - 1, Math.floor((box.bottom - top) / pitch.y));
  for (let row = firstRow; row <= lastRow; row += 1) {
    const start = left - rowShift(grid, row);
    const first = Math.max(0, Math.ceil((box.left - start - window.width) / pitch.x));
    const last = Math.min(columns - 1, Math.floor((box.right - start) / pitch.x));
    for (let column = first; column <= last; column += 1) found.push(row * columns + column);
  }
  return found;
}

/** The one window, by its number, that reaches into a box in its own midst, where no neighbour shows anything of it; −1 where there may be several. */
export function windowAlone(grid: Grid): (box: Box) => number {
  const { way, left, top, columns, rows } = grid;
  const { window, pitch } = way;
  const overlap = { x: window.width - pitch.x, y: window.height - pitch.y };
  const starts = Array.from({ length: rows }, (_, row) => left - rowShift(grid, row));
  return (box) => {
    const row = Math.floor((box.top - top) / pitch.y);
    const y = box.top - top - row * pitch.y;
    if (row < 0 || row >= rows || y <= overlap.y || y + box.bottom - box.top >= pitch.y) return -1;
    const at = box.left - (starts[row] as number);
    const column = Math.floor(at / pitch.x);
    const x = at - column * pitch.x;
    if (column < 0 || column >= columns || x <= overlap.x || x + box.right - box.left >= pitch.x) return -1;
    return row * columns + column;
  };
}

/** What a sheet shows, overlap included. */
export function gridWindow(grid: Grid, { column, row }: Cell): Box {
  const { way, left, top } = grid;
  const x = left - rowShift(grid, row) + column * way.pitch.x;
  const y = top + row * way.pitch.y;
  return { left: x, top: y, right: x + way.window.width, bottom: y + way.window.height };
}

/** The grid cut down to the rows and columns that cells fill, and which of its cells is the first then. */
export function gridTrimmed(grid: Grid, cells: readonly Cell[]): { readonly grid: Grid; readonly first: Cell } {
  const rows = cells.map((cell) => cell.row);
  const columns = cells.map((cell) => cell.column);
  const first = { row: Math.min(...rows), column: Math.min(...columns) };
  return {
    grid: {
      ...grid,
      left: grid.left + first.column * grid.way.pitch.x,
      top: grid.top + first.row * grid.way.pitch.y,
      columns: Math.max(...columns) - first.column + 1,
      rows: Math.max(...rows) - first.row + 1,
      shifts: Array.from({ length: Math.max(...rows) - first.row + 1 }, (_, row) => rowShift(grid, row + first.row)),
    },
    first,
  };
}

export const cellKey = ({ row, column }: Cell): string => `${row}/${column}`;

export const isSameCell = (a: Cell, b: Cell): boolean => a.row === b.row && a.column === b.column;

/** A cell's number in reading order. */
export const cellIndex = ({ columns }: Pick<Grid, 'columns'>, { row, column }: Cell): number => row * columns + column;
