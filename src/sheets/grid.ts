import type { Mm } from '../length';
import { boxGrown, type Ink, inkBounds, segmentMeets } from './ink';
import type { PaperWay } from './settings';
import type { Box } from './types';

/** A grid of sheets laid over the drawing. */
export interface Grid {
  readonly way: PaperWay;
  readonly left: Mm;
  readonly top: Mm;
  readonly columns: number;
  readonly rows: number;
}

/** One place of the grid, counted from 0. */
export interface Cell {
  readonly column: number;
  readonly row: number;
}

/** From the drawing's box to the grid's corner: half the widest line (0.25 mm) and a little white, on the paper. */
const BORDER: Mm = 1.5;

/** Half of the widest line, on the paper: what a sheet must still show of a line that runs along its edge. */
const HALF_LINE: Mm = 0.25;

/** Guards a row of sheets that fits exactly from needing one more by rounding. */
const ROUNDING: Mm = 1e-6;

/**
 * Grids of the fewest columns and rows that hold the drawing's box: first the one whose corner is the box's corner,
 * then others, pushed left and up by shares of the white that its last sheets would leave.
 *
 * @param pushes how many places there are between not pushed and pushed to the end, each way
 */
export function boxGrids(ink: Ink, way: PaperWay, pushes: number): readonly Grid[] {
  const box = inkBounds(ink);
  const border = { x: BORDER / way.scale.x, y: BORDER / way.scale.y };
  const count = (length: Mm, window: Mm, pitch: Mm) => Math.max(1, Math.ceil((length - window - ROUNDING) / pitch) + 1);
  const width = box.right - box.left + 2 * border.x;
  const height = box.bottom - box.top + 2 * border.y;
  const columns = count(width, way.window.width, way.pitch.x);
  const rows = count(height, way.window.height, way.pitch.y);
  const white = {
    x: Math.max(0, (columns - 1) * way.pitch.x + way.window.width - width),
    y: Math.max(0, (rows - 1) * way.pitch.y + way.window.height - height),
  };
  const shares = Array.from({ length: pushes }, (_, i) => i / (pushes - 1));
  return shares.flatMap((x) =>
    shares.map((y) => ({
      way,
      left: box.left - border.x - x * white.x,
      top: box.top - border.y - y * white.y,
      columns,
      rows,
    })),
  );
}

/** What a sheet shows, overlap included. */
export function gridWindow({ way, left, top }: Grid, { column, row }: Cell): Box {
  const x = left + column * way.pitch.x;
  const y = top + row * way.pitch.y;
  return { left: x, top: y, right: x + way.window.width, bottom: y + way.window.height };
}

/** What stays in sight of a sheet once its neighbours lie on its overlaps. */
export function gridCell(grid: Grid, cell: Cell): Box {
  const window = gridWindow(grid, cell);
  return {
    ...window,
    right: cell.column < grid.columns - 1 ? window.left + grid.way.pitch.x : window.right,
    bottom: cell.row < grid.rows - 1 ? window.top + grid.way.pitch.y : window.bottom,
  };
}

/**
 * The sheets that must be printed, in reading order: those with ink in their own cell; the grid is cut down to the rows
 * and columns that they fill.
 *
 * A sheet inside a piece may hold a bit of a line and yet touch no other printed sheet; the blank ones to its left are
 * then printed too, for without their marks nobody could place it.
 *
 * @param inked from {@link inkedCells}
 */
export function printedCells(
  grid: Grid,
  inked: readonly Cell[],
): { readonly grid: Grid; readonly cells: readonly Cell[] } {
  const printed = new Set(inked.map(cellKey));
  for (const cell of inked) {
    if (neighbours(cell).some((next) => printed.has(cellKey(next)))) continue;
    const bridge: Cell[] = [];
    for (let column = cell.column - 1; column >= 0; column -= 1) {
      const next = { row: cell.row, column };
      if (printed.has(cellKey(next))) {
        for (const blank of bridge) printed.add(cellKey(blank));
        break;
      }
      bridge.push(next);
    }
  }
  return trimmed(
    grid,
    allCells(grid).filter((cell) => printed.has(cellKey(cell))),
  );
}

function trimmed(grid: Grid, cells: readonly Cell[]): { readonly grid: Grid; readonly cells: readonly Cell[] } {
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
    },
    cells: cells.map(({ row, column }) => ({ row: row - first.row, column: column - first.column })),
  };
}

/**
 * The cells that a line, with half its width, or the middle of a word touches, in reading order.
 *
 * The search asks this of hundreds of grids, so a stretch that lies within one cell is told by its ends alone, and only
 * one that reaches further is held against the cells near it.
 */
export function inkedCells(grid: Grid, ink: Ink): readonly Cell[] {
  const half = HALF_LINE / Math.min(grid.way.scale.x, grid.way.scale.y);
  const { left, top, columns, rows } = grid;
  const { pitch } = grid.way;
  const inked = new Uint8Array(rows * columns);
  // The last sheets show more than a pitch: what lies beyond it is still theirs.
  const column = (x: Mm) => Math.min(columns - 1, Math.max(0, Math.floor((x - left) / pitch.x)));
  const row = (y: Mm) => Math.min(rows - 1, Math.max(0, Math.floor((y - top) / pitch.y)));
  const { stretches } = ink;
  for (let i = 0; i < stretches.length; i += 4) {
    const ax = stretches[i] as number;
    const ay = stretches[i + 1] as number;
    const bx = stretches[i + 2] as number;
    const by = stretches[i + 3] as number;
    const firstColumn = column(Math.min(ax, bx) - half);
    const lastColumn = column(Math.max(ax, bx) + half);
    const firstRow = row(Math.min(ay, by) - half);
    const lastRow = row(Math.max(ay, by) + half);
    if (firstColumn === lastColumn && firstRow === lastRow) {
      inked[firstRow * columns + firstColumn] = 1;
      continue;
    }
    for (let r = firstRow; r <= lastRow; r += 1) {
      for (let c = firstColumn; c <= lastColumn; c += 1) {
        if (inked[r * columns + c]) continue;
        const box = boxGrown(gridCell(grid, { row: r, column: c }), half);
        if (segmentMeets({ x: ax, y: ay }, { x: bx, y: by }, box)) inked[r * columns + c] = 1;
      }
    }
  }
  return allCells(grid).filter((cell) => inked[cell.row * columns + cell.column]);
}

/** All places of a grid, in reading order. */
const allCells = ({ columns, rows }: Grid): readonly Cell[] =>
  Array.from({ length: rows * columns }, (_, i) => ({ row: Math.floor(i / columns), column: i % columns }));

export const cellKey = ({ row, column }: Cell): string => `${row}/${column}`;

const neighbours = ({ row, column }: Cell): readonly Cell[] => [
  { row, column: column - 1 },
  { row, column: column + 1 },
  { row: row - 1, column },
  { row: row + 1, column },
];
