import type { PiecePlace } from '../drawing';
import { type Box, boxRound, point } from '../plane';
import { coveringCells } from './cover';
import { bordered, type Cell, type Grid, gridFrom, gridTrimmed, gridWindow } from './grid';
import type { PrintedPart } from './joins';
import { packPieces } from './pack';
import { type PieceInk, stretchesBox, stretchesPlaced } from './piece-ink';
import { filledRaster } from './raster';
import type { PaperWay } from './settings';
import { type Start, squareSide, type TurnedMain } from './starts';
import type { Tip } from './types';

/** A place of the grid that has no sheet of its own, and where on which sheet it is printed. */
export interface LaidTip extends PrintedPart, Pick<Tip, 'place'> {
  readonly host: Cell;
}

/** The pieces laid on a grid, and the sheets that must be printed. */
export interface Layout {
  readonly grid: Grid;
  readonly cells: readonly Cell[];
  /** Printed on those sheets, to be cut out. */
  readonly tips: readonly LaidTip[];
  readonly places: readonly PiecePlace[];
  /** Of everything that is drawn, a little white round it. */
  readonly box: Box;
}

/**
 * What a start comes to: the smaller pieces laid around the main one, and the lines themselves asked which sheets they
 * need.
 */
export function laidOut(start: Start, main: TurnedMain, pieces: readonly PieceInk[]): Layout {
  const [first, ...others] = pieces as readonly [PieceInk, ...PieceInk[]];
  const { way, turn } = start;
  const left = main.box.left - start.x;
  const top = main.box.top - start.y;
  const own: PiecePlace = { piece: first.ref, turn, shift: point(0, 0) };
  const alone = gridFrom(way, left, top, main.box);
  const cells = coveringCells(alone, [main.stretches]);
  if (others.length === 0) return { ...gridTrimmed(alone, cells), tips: [], places: [own], box: main.box };
  const filled = filledRaster(stretchesPlaced(first.outline, turn), main.box, squareSide(way));
  const packed = packPieces({ way, left, top, cells, filled, box: main.box }, others);
  const inks = [
    main.stretches,
    ...packed.map(({ turn: turned, shift }, i) =>
      stretchesPlaced((others[i] as PieceInk).stretches, turned, shift.x, shift.y),
    ),
  ];
  const box = boxRound([main.box, ...inks.slice(1).map((ink) => bordered(stretchesBox(ink), way))]);
  const grid = gridFrom(way, stepsBack(left, box.left, way.pitch.x), stepsBack(top, box.top, way.pitch.y), box);
  return { ...gridTrimmed(grid, coveringCells(grid, inks)), tips: [], places: [own, ...packed], box };
}

/** Everything that is joined: the sheets, and the tips that are cut out of them. */
export const layoutParts = ({ grid, cells, tips }: Pick<Layout, 'grid' | 'cells' | 'tips'>): readonly PrintedPart[] => [
  ...cells.map((cell) => ({ cell, window: gridWindow(grid, cell) })),
  ...tips,
];

/** The grid's corner moved by whole pitches until it lies before the box. */
const stepsBack = (corner: number, box: number, pitch: number): number =>
  box < corner ? corner - Math.ceil((corner - box) / pitch) * pitch : corner;

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
