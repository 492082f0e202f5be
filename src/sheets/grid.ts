import type { Mm } from '../length';
import { boxHolds, type Ink, inkBounds, inkCrosses } from './ink';
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

/** Guards a row of sheets that fits exactly from needing one more by rounding. */
const ROUNDING: Mm = 1e-6;

/** The grid whose corner is the corner of the drawing's box. */
export function cornerGrid(ink: Ink, way: PaperWay): Grid {
  const box = inkBounds(ink);
  const border = { x: BORDER / way.scale.x, y: BORDER / way.scale.y };
  const count = (length: Mm, window: Mm, pitch: Mm) => Math.max(1, Math.ceil((length - window - ROUNDING) / pitch) + 1);
  return {
    way,
    left: box.left - border.x,
    top: box.top - border.y,
    columns: count(box.right - box.left + 2 * border.x, way.window.width, way.pitch.x),
    rows: count(box.bottom - box.top + 2 * border.y, way.window.height, way.pitch.y),
  };
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
 * The sheets that must be printed, in reading order: those with ink in their own cell.
 *
 * A sheet inside a piece may hold a bit of a line and yet touch no other printed sheet; the blank ones to its left are
 * then printed too, for without their marks nobody could place it.
 */
export function printedCells(grid: Grid, ink: Ink): readonly Cell[] {
  const all: Cell[] = [];
  for (let row = 0; row < grid.rows; row += 1)
    for (let column = 0; column < grid.columns; column += 1) all.push({ row, column });
  const inked = all.filter((cell) => {
    const box = gridCell(grid, cell);
    return inkCrosses(ink, box) || ink.words.some((word) => boxHolds(box, word));
  });
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
  return all.filter((cell) => printed.has(cellKey(cell)));
}

export const cellKey = ({ row, column }: Cell): string => `${row}/${column}`;

const neighbours = ({ row, column }: Cell): readonly Cell[] => [
  { row, column: column - 1 },
  { row, column: column + 1 },
  { row: row - 1, column },
  { row: row + 1, column },
];
