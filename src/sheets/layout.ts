import type { PiecePlace } from '../drawing';
import { type Box, boxRound, point } from '../plane';
import { coveringCells } from './cover';
import { bordered, type Cell, type Grid, gridFrom, gridTrimmed, gridWindow } from './grid';
import type { PrintedPart } from './joins';
import { packPieces } from './pack';
import { type PieceInk, stretchesBox, stretchesPlaced } from './piece-ink';
import { rasterCount } from './raster';
import type { PaperWay } from './settings';
import type { Start, TurnedMain } from './starts';
import type { LaidTip, Taken } from './tip-places';
import { withTips } from './tips';

/** The pieces laid on a grid, and the sheets that must be printed. */
export interface Layout {
  readonly grid: Grid;
  readonly cells: readonly Cell[];
  /** Printed on those sheets, to be cut out. */
  readonly tips: readonly LaidTip[];
  readonly places: readonly PiecePlace[];
  /** Of everything that is drawn, a little white round it. */
  readonly box: Box;
  /** Sheets on which next to nothing lies of any piece. */
  readonly slim: number;
}

/**
 * What a start comes to: the smaller pieces laid around the main one, and the lines themselves asked which sheets they
 * need; undefined where that is more sheets than are wanted.
 *
 * @param most the most sheets that are wanted
 */
export function laidOut(start: Start, main: TurnedMain, pieces: readonly PieceInk[], most: number): Layout | undefined {
  const [first, ...others] = pieces as readonly [PieceInk, ...PieceInk[]];
  const { way, turn, shifts } = start;
  const { left } = main.box;
  const top = main.box.top - start.y;
  const own: PiecePlace = { piece: first.ref, turn, shift: point(0, 0) };
  const filled = main.filled();
  const alone = gridFrom(way, left, top, main.box, shifts);
  const cells = coveringCells(alone, [main.stretches]);
  const finished = (grid: Grid, covering: readonly Cell[], places: readonly PiecePlace[], box: Box, taken: Taken) => {
    const laid = tipped(grid, covering, taken, most);
    return laid && { ...trimmed(grid, laid), places, box, slim: slimSheets(grid, laid.cells, taken) };
  };
  if (others.length === 0)
    return finished(alone, cells, [own], main.box, {
      filled,
      boxes: [],
      inks: [main.stretches],
      levelsFrom: [first.levelsFrom],
    });
  const packed = packPieces({ grid: alone, cells, filled, box: main.box }, others);
  const inks = packed.map(({ turn: turned, shift }, i) =>
    stretchesPlaced((others[i] as PieceInk).stretches, turned, shift.x, shift.y),
  );
  const boxes = inks.map((ink) => bordered(stretchesBox(ink), way));
  const box = boxRound([main.box, ...boxes]);
  const grid = gridRound(alone, box);
  const all = [main.stretches, ...inks];
  return finished(grid, coveringCells(grid, all), [own, ...packed], box, {
    filled,
    boxes,
    inks: all,
    levelsFrom: pieces.map((piece) => piece.levelsFrom),
  });
}

/** On a roll a strip more is cut where it is needed. */
const tipped = (
  grid: Grid,
  cells: readonly Cell[],
  taken: Taken,
  most: number,
): Pick<Layout, 'cells' | 'tips'> | undefined =>
  grid.way.roll ? { cells, tips: [] } : withTips(grid, cells, taken, most);

/** A sheet is worth its paper with more than this share of its window on a piece. */
const SLIM = 0.035;

function slimSheets(grid: Grid, cells: readonly Cell[], { filled, boxes }: Taken): number {
  const { width, height } = grid.way.window;
  const pieces = (window: Box) =>
    boxes.reduce((sum, box) => sum + meeting(box, window), rasterCount(filled, window) * filled.side * filled.side);
  return cells.filter((cell) => pieces(gridWindow(grid, cell)) < SLIM * width * height).length;
}

/** The area that two boxes share. */
const meeting = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

/** A grid gone on to all sides until it holds a box. */
function gridRound({ way, left, top, shifts }: Grid, box: Box): Grid {
  const columnsBefore = Math.max(0, Math.ceil((left - Math.min(0, ...shifts) - box.left) / way.pitch.x));
  const rowsBefore = Math.max(0, Math.ceil((top - box.top) / way.pitch.y));
  const first = shifts[0] ?? 0;
  return gridFrom(way, left - columnsBefore * way.pitch.x, top - rowsBefore * way.pitch.y, box, [
    ...Array.from({ length: rowsBefore }, () => first),
    ...shifts,
  ]);
}

/** The grid cut down to what is printed, and that counted in it. */
function trimmed(grid: Grid, { cells, tips }: Pick<Layout, 'cells' | 'tips'>): Pick<Layout, 'grid' | 'cells' | 'tips'> {
  const { grid: least, first } = gridTrimmed(grid, [...cells, ...tips.map(({ cell }) => cell)]);
  const from = ({ row, column }: Cell): Cell => ({ row: row - first.row, column: column - first.column });
  return {
    grid: least,
    cells: cells.map(from),
    tips: tips.map((tip) => ({ ...tip, cell: from(tip.cell), host: from(tip.host) })),
  };
}

/** Everything that is joined: the sheets, and the tips that are cut out of them, in reading order. */
export const layoutParts = ({ grid, cells, tips }: Pick<Layout, 'grid' | 'cells' | 'tips'>): readonly PrintedPart[] =>
  [...cells.map((cell) => ({ cell, window: gridWindow(grid, cell) })), ...tips].toSorted(
    (a, b) => a.cell.row - b.cell.row || a.cell.column - b.cell.column,
  );

/** Sheets cut from a roll are as long as what is drawn on them, not as long as a page can be. */
export function rollCut(way: PaperWay, box: Box, grid: Grid): PaperWay {
  if (!way.roll) return way;
  const { paper, margin, scale } = way;
  if (paper.height >= paper.width) {
    if (grid.rows > 1) return way;
    const height = box.bottom - grid.top;
    return {
      ...way,
      paper: { ...paper, height: height * scale.y + 2 * margin },
      window: { ...way.window, height },
    };
  }
  if (grid.columns > 1) return way;
  const width = box.right - grid.left;
  return { ...way, paper: { ...paper, width: width * scale.x + 2 * margin }, window: { ...way.window, width } };
}
