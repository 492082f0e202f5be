import { drawingInk, type PiecePlace, placedDrawings } from '../drawing';
import { isSamePiece, type Piece } from '../edges';
import type { Mm } from '../length';
import { type Box, boxRound, point } from '../plane';
import { coveringCells } from './cover';
import { bordered, type Cell, cellKey, type Grid, gridFrom, gridWindow } from './grid';
import { type Join, type MarkedJoin, markedJoins } from './joins';
import { sheetLabel } from './label';
import { layoutParts } from './layout';
import { linesMoved, sameWords } from './moved';
import { isTaken, packPieces } from './pack';
import { type PieceInk, pieceInk, stretchesBox, stretchesPlaced } from './piece-ink';
import { drawnLines, drawnWords, type PrintedSheet, type PrintedSheets } from './printed';
import { filledRaster } from './raster';
import { type PaperWay, paperWays } from './settings';
import { squareSide } from './starts';
import { planOn } from './tile';
import type { PaperSettings, SheetPlan } from './types';

/** What is drawn now, on the sheets that were printed of it before. */
export interface Reprint {
  /** The whole pattern: sheets that still hold, changed ones, and ones that came to it. */
  readonly plan: SheetPlan;
  /** Labels of the sheets to print, in reading order. */
  readonly anew: readonly string[];
  /** Labels of the printed sheets to throw away, in reading order: they changed, or nothing is left on them. */
  readonly away: readonly string[];
  /** By how much a line on a sheet that still holds has moved at most, on the paper. */
  readonly moved: Mm;
}

/** A sheet still holds if no line on it has moved by more than this on the paper: as much as a careful cut is off. */
export const MOST_MOVED: Mm = 0.5;

/** A line that has moved by less than this hasn't moved: no printer and no eye tells it. */
export const STILL: Mm = 0.05;

/** What lies closer to another piece than when it was laid may stay, as long as it can still be cut. */
const LEAST_GAP: Mm = 3;

/**
 * Lays what is drawn now on the sheets as they were printed, and tells which of them must be printed anew.
 *
 * Pieces stay where they lay; one that came to them, or has grown into another, is laid beside. The grid goes on to all
 * sides. A sheet still holds where none of its lines has moved, the same is written on it, and it bears the marks of all
 * its neighbours; between it and a neighbour the marks stay where they are.
 *
 * @param pieces as for `tilePieces`
 * @param settings the project's paper
 * @param before what was printed
 * @returns undefined where nothing can be kept: other paper, another scale, another main piece, or a roll
 */
export function reprint(pieces: readonly Piece[], settings: PaperSettings, before: PrintedSheets): Reprint | undefined {
  const way = paperWays(settings).find((one) => isPrintedOn(one, before));
  const inks = pieces.map(pieceInk);
  const places = way && !way.roll ? placesKept(way, inks, before) : undefined;
  if (!way || !places) return undefined;
  const placed = inks.map((ink, i) => inkAt(ink, places[i] as PiecePlace));
  const { grid, first } = gridRound(way, placed, before);
  const cellOf = ({ row, column }: Cell): Cell => ({ row: row + first.row, column: column + first.column });
  const labelOf = ({ row, column }: Cell) => sheetLabel(row - first.row, column - first.column);
  const old = new Map(before.sheets.map((sheet) => [cellKey(cellOf(sheet)), sheet]));

  const cells = coveringCells(grid, placed, before.sheets.map(cellOf));
  const drawings = placedDrawings(pieces, places);
  const moves = sheetMoves(grid, cells, before, {
    lines: drawnLines(drawings),
    words: drawnWords(drawings),
    wasPrinted: (cell) => old.has(cellKey(cell)),
  });
  const holds = (cell: Cell) => moves.has(cellKey(cell));
  const joins = markedJoins(grid, layoutParts({ grid, cells, tips: [] }), drawingInk(drawings), {
    marksOf: (join) => (holds(join.first) || holds(join.second) ? marksShared(join, old) : []),
    last: Math.max(0, ...before.sheets.flatMap(({ marks }) => marks.map(({ number }) => number))),
  });
  return {
    plan: planOn({ grid, cells, tips: [], places }, joins, pieces, first),
    anew: cells.filter((cell) => !holds(cell)).map(labelOf),
    away: before.sheets.filter((sheet) => !holds(cellOf(sheet))).map(({ row, column }) => sheetLabel(row, column)),
    moved: Math.max(0, ...moves.values()) * Math.max(way.scale.x, way.scale.y),
  };
}

const isPrintedOn = (way: PaperWay, { paper, margin, overlap, scale }: PrintedSheets): boolean =>
  way.paper.width === paper.width &&
  way.paper.height === paper.height &&
  way.margin === margin &&
  way.overlap === overlap &&
  way.scale.x === scale.x &&
  way.scale.y === scale.y;

const inkAt = ({ stretches }: PieceInk, { turn, shift }: PiecePlace): Float64Array =>
  stretchesPlaced(stretches, turn, shift.x, shift.y);

/** Where the pieces lay, and room for those that came to them; undefined where the main one was not printed. */
function placesKept(
  way: PaperWay,
  inks: readonly PieceInk[],
  before: PrintedSheets,
): readonly PiecePlace[] | undefined {
  const placeOf = ({ ref }: PieceInk) => before.places.find(({ piece }) => isSamePiece(piece, ref));
  const [main, ...others] = inks;
  const own = main && placeOf(main);
  if (!own) return undefined;
  const laid = inkAt(main, own);
  const box = bordered(stretchesBox(laid), way);
  const outline = stretchesPlaced(main.outline, own.turn, own.shift.x, own.shift.y);
  const filled = filledRaster(outline, box, squareSide(way));
  const kept = new Map<PieceInk, PiecePlace>();
  const taken: Box[] = [];
  for (const ink of others) {
    const place = placeOf(ink);
    const at = place && stretchesBox(inkAt(ink, place));
    if (!at || isTaken({ way, filled, taken }, at, LEAST_GAP)) continue;
    kept.set(ink, place);
    taken.push(at);
  }
  const come = others.filter((ink) => !kept.has(ink));
  const { grid } = gridRound(way, [laid, ...[...kept].map(([ink, place]) => inkAt(ink, place))], before);
  const cells = coveringCells(grid, [laid]);
  const ground = { way, left: grid.left, top: grid.top, cells, filled, taken, box: boxRound([box, ...taken]) };
  const found = packPieces(ground, come);
  return inks.map((ink) => (ink === main ? own : (kept.get(ink) ?? (found[come.indexOf(ink)] as PiecePlace))));
}

/** As much of the printed grid, gone on to all sides, as holds what is drawn now, and its cell that is called A1. */
function gridRound(
  way: PaperWay,
  placed: readonly Float64Array[],
  { corner }: PrintedSheets,
): { readonly grid: Grid; readonly first: Cell } {
  const box = boxRound(placed.map((ink) => bordered(stretchesBox(ink), way)));
  const [left, top] = [lastBefore(box.left, corner.x, way.pitch.x), lastBefore(box.top, corner.y, way.pitch.y)];
  const first = {
    row: Math.round((corner.y - top) / way.pitch.y),
    column: Math.round((corner.x - left) / way.pitch.x),
  };
  return { grid: gridFrom(way, left, top, box), first };
}

/** The last corner of a row of windows that lies before a place, or on it. */
const lastBefore = (place: Mm, corner: Mm, pitch: Mm): Mm => corner + Math.floor((place - corner) / pitch) * pitch;

/** How far the lines of each sheet that still holds have moved, by its cell. */
function sheetMoves(
  grid: Grid,
  cells: readonly Cell[],
  before: PrintedSheets,
  now: Pick<PrintedSheets, 'lines' | 'words'> & { readonly wasPrinted: (cell: Cell) => boolean },
): ReadonlyMap<string, Mm> {
  const within = MOST_MOVED / Math.max(grid.way.scale.x, grid.way.scale.y);
  const moves = new Map<string, Mm>();
  for (const cell of cells) {
    const window = gridWindow(grid, cell);
    // A sheet without marks for a neighbour can't be joined to it.
    const marked = cells.filter((other) => areNeighbours(cell, other)).every(now.wasPrinted);
    if (!now.wasPrinted(cell) || !marked || !sameWords(before.words, now.words, window)) continue;
    const moved = linesMoved(before.lines, now.lines, window, within);
    if (moved <= within) moves.set(cellKey(cell), moved);
  }
  return moves;
}

const areNeighbours = (a: Cell, b: Cell): boolean => Math.abs(a.row - b.row) + Math.abs(a.column - b.column) === 1;

/** The marks that both sheets of a join bear already. */
function marksShared({ first, second }: Join, old: ReadonlyMap<string, PrintedSheet>): MarkedJoin['marks'] {
  const others = new Set(old.get(cellKey(second))?.marks.map(({ number }) => number));
  return (old.get(cellKey(first))?.marks ?? [])
    .filter(({ number }) => others.has(number))
    .map(({ number, at, size }) => ({ number, at: point(at.x, at.y), size }));
}
