import { drawingInk, type PiecePlace, placedDrawings } from '../drawing';
import { isSamePiece, type Piece } from '../edges';
import type { Mm } from '../length';
import { type Box, boxInside, boxRound, point } from '../plane';
import { bareInk } from './bare';
import { coveringCells } from './cover';
import { bordered, type Cell, cellKey, type Grid, gridFrom, isSameCell } from './grid';
import { hasRoom, type Join, type MarkedJoin, markedJoins, type PrintedPart, partJoins } from './joins';
import { sheetLabel } from './label';
import { layoutParts } from './layout';
import { linesMoved, sameWords } from './moved';
import { isTaken, packPieces } from './pack';
import { type PieceInk, pieceInk, stretchesBox, stretchesPlaced } from './piece-ink';
import { drawnLines, drawnWords, type PrintedSheet, type PrintedSheets } from './printed';
import { filledRaster, type Raster } from './raster';
import { type PaperWay, paperWays } from './settings';
import { tipBox } from './sight';
import { squareSide } from './starts';
import { planOn } from './tile';
import { hostRoom, isFree, type LaidTip, type Taken } from './tip-places';
import { groupCount, withTips } from './tips';
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
  const old = oldParts(before, first);
  const covering = coveringCells(
    grid,
    placed,
    [...old.values()].map(({ cell }) => cell),
  );
  const [main, ...boxes] = placed.map((ink) => stretchesBox(ink));
  const filled = filledAt(way, inks[0] as PieceInk, places[0] as PiecePlace, main as Box);
  const taken = { filled, boxes, inks: placed, levelsFrom: inks.map(({ levelsFrom }) => levelsFrom) };
  const drawings = placedDrawings(pieces, places);
  const now = { lines: drawnLines(drawings), words: drawnWords(drawings), old };
  const judged = (laid: PartsLaid) => keptParts(grid, laid, (parts) => partMoves(grid, parts, before, now));
  const asPrinted = judged(withPrintedTips(grid, covering, taken, [...old.values()]));
  const moved = judged(withTipsMoved(grid, asPrinted, taken, old));
  const { cells, tips, parts, moves, holds, anew } = moved.anew.length < asPrinted.anew.length ? moved : asPrinted;
  const joins = markedJoins(grid, parts, drawingInk(drawings), {
    marksOf: (join) => (holds(join.first) || holds(join.second) ? marksShared(join, old) : []),
    last: Math.max(0, ...[...old.values()].flatMap(({ marks }) => marks.map(({ number }) => number))),
  });
  const labelOf = ({ row, column }: Cell) => sheetLabel(row - first.row, column - first.column);
  return {
    plan: planOn({ grid, cells, tips, places }, joins, pieces, first),
    anew: anew.map(labelOf),
    away: [...old.values()].filter(({ cell }) => !holds(cell)).map(({ cell }) => labelOf(cell)),
    moved: Math.max(0, ...moves.values()) * Math.max(way.scale.x, way.scale.y),
  };
}

/** Sheets, and the tips that they bear. */
interface PartsLaid {
  readonly cells: readonly Cell[];
  readonly tips: readonly LaidTip[];
}

/** The same, and which of them are kept. */
interface PartsKept extends PartsLaid {
  readonly parts: readonly PrintedPart[];
  /** How far the lines have moved on each part that holds by itself. */
  readonly moves: ReadonlyMap<string, Mm>;
  readonly holds: (cell: Cell) => boolean;
  /** The sheets to print. */
  readonly anew: readonly Cell[];
}

/** Which parts are kept: a sheet and what is cut out of it come from one page, and are kept or printed again together. */
function keptParts(
  grid: Grid,
  { cells, tips }: PartsLaid,
  movesOf: (parts: readonly PrintedPart[]) => ReadonlyMap<string, Mm>,
): PartsKept {
  const parts = layoutParts({ grid, cells, tips });
  const moves = movesOf(parts);
  const onSheet = (cell: Cell) => [cell, ...tips.filter(({ host }) => isSameCell(host, cell)).map((tip) => tip.cell)];
  const kept = cells.filter((cell) => onSheet(cell).every((one) => moves.has(cellKey(one))));
  const bearer = (cell: Cell) => tips.find((tip) => isSameCell(tip.cell, cell))?.host ?? cell;
  const holds = (cell: Cell) => kept.some((sheet) => isSameCell(sheet, bearer(cell)));
  return { cells, tips, parts, moves, holds, anew: cells.filter((cell) => !holds(cell)) };
}

/**
 * The same with what changed laid in empty corners of the sheets that are printed anyway: tips that changed, so that the
 * sheets that bore them may stay, and places that changed or came with little on them.
 */
function withTipsMoved(
  grid: Grid,
  { cells, tips, moves }: PartsKept,
  taken: Taken,
  old: ReadonlyMap<string, OldPart>,
): PartsLaid {
  const holds = (cell: Cell) => moves.has(cellKey(cell));
  const loose = tips.flatMap(({ cell }) => (holds(cell) ? [] : [cell]));
  const sheets = [...cells, ...loose].toSorted((a, b) => a.row - b.row || a.column - b.column);
  const staying = {
    tips: tips.filter(({ cell }) => holds(cell)),
    isPrinted: (cell: Cell) => !holds(cell),
    shown: (cell: Cell) => old.get(cellKey(cell))?.tip?.window,
  };
  return withTips(grid, sheets, taken, Number.POSITIVE_INFINITY, staying) ?? { cells, tips };
}

/** A sheet or a tip as it was printed, its place counted in the grid. */
interface OldPart extends Pick<PrintedSheet, 'marks'> {
  readonly cell: Cell;
  /** Of a tip: what it shows, and where it was cut out of. */
  readonly tip?: LaidTip;
}

/** Everything that was printed, by its cell, each sheet before its tips. */
function oldParts({ sheets }: PrintedSheets, first: Cell): ReadonlyMap<string, OldPart> {
  const cellOf = ({ row, column }: Cell): Cell => ({ row: row + first.row, column: column + first.column });
  const parts = sheets.flatMap(({ tips = [], ...sheet }): readonly OldPart[] => {
    const host = cellOf(sheet);
    return [
      { cell: host, marks: sheet.marks },
      ...tips.map(({ marks, window, place, ...at }) => {
        const cell = cellOf(at);
        return { cell, marks, tip: { cell, host, window, place } };
      }),
    ];
  });
  return new Map(parts.map((part) => [cellKey(part.cell), part]));
}

/**
 * The sheets and tips of a printed pattern that cover it now: a tip stays one where its window still shows all that no
 * sheet does, and its place is still free; else it becomes a sheet.
 */
function withPrintedTips(grid: Grid, covering: readonly Cell[], taken: Taken, old: readonly OldPart[]) {
  const isIn = (cells: readonly Cell[], cell: Cell) => cells.some((other) => isSameCell(other, cell));
  const mayStay = old.flatMap(({ tip }) => (tip && isIn(covering, tip.cell) && isIn(covering, tip.host) ? [tip] : []));
  let tips = mayStay.filter(
    (tip) =>
      !isIn(
        mayStay.map(({ cell }) => cell),
        tip.host,
      ) &&
      // Where sheets came to the printed ones, their marks and what they cover may lie where the tip did.
      boxInside(tipBox(tip), hostRoom(grid, tip.host, covering)) &&
      isFree(grid, tipBox(tip), taken.boxes, taken.filled),
  );
  const sheets = () =>
    covering.filter(
      (cell) =>
        !isIn(
          tips.map((tip) => tip.cell),
          cell,
        ),
    );
  const bare = bareInk(grid, taken.inks, taken.levelsFrom);
  for (const tip of tips) {
    const ink = bare.box(tip.cell, sheets(), tips);
    if (ink && !boxInside(ink, tip.window)) tips = tips.filter((other) => other !== tip);
  }
  // What was left out for it holds nothing but a level line stays out.
  let cells = sheets();
  const groups = groupCount(grid, cells, tips);
  for (const cell of cells) {
    const others = cells.filter((other) => other !== cell);
    const isOut = !old.some((part) => isSameCell(part.cell, cell)) && bare.isLevelsOnly(cell, others, tips);
    if (isOut && groupCount(grid, others, tips) <= groups) cells = others;
  }
  return { cells, tips };
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
  const filled = filledAt(way, main, own, box);
  const kept = new Map<PieceInk, PiecePlace>();
  const taken: Box[] = [];
  for (const ink of others) {
    const place = placeOf(ink);
    const at = place && stretchesBox(inkAt(ink, place));
    if (!at || isTaken({ filled, taken }, way, at, LEAST_GAP)) continue;
    kept.set(ink, place);
    taken.push(at);
  }
  const come = others.filter((ink) => !kept.has(ink));
  const { grid } = gridRound(way, [laid, ...[...kept].map(([ink, place]) => inkAt(ink, place))], before);
  const cells = coveringCells(grid, [laid]);
  const ground = { grid, cells, filled, taken, box: boxRound([box, ...taken]) };
  const found = packPieces(ground, come);
  return inks.map((ink) => (ink === main ? own : (kept.get(ink) ?? (found[come.indexOf(ink)] as PiecePlace))));
}

/** The main piece where it lies, filled. */
const filledAt = (way: PaperWay, { outline }: PieceInk, { turn, shift }: PiecePlace, box: Box): Raster =>
  filledRaster(stretchesPlaced(outline, turn, shift.x, shift.y), box, squareSide(way));

/** As much of the printed grid, gone on to all sides, as holds what is drawn now, and its cell that is called A1. */
function gridRound(
  way: PaperWay,
  placed: readonly Float64Array[],
  { corner, shifts = [] }: PrintedSheets,
): { readonly grid: Grid; readonly first: Cell } {
  const box = boxRound(placed.map((ink) => bordered(stretchesBox(ink), way)));
  const most = Math.min(0, ...shifts.map(({ by }) => by));
  const left = lastBefore(box.left + most, corner.x, way.pitch.x);
  const top = lastBefore(box.top, corner.y, way.pitch.y);
  const first = {
    row: Math.round((corner.y - top) / way.pitch.y),
    column: Math.round((corner.x - left) / way.pitch.x),
  };
  const { rows } = gridFrom(way, left, top, box);
  const shiftOf = (row: number) => shifts.find((one) => one.row === row - first.row)?.by ?? 0;
  return {
    grid: gridFrom(
      way,
      left,
      top,
      box,
      Array.from({ length: rows }, (_, row) => shiftOf(row)),
    ),
    first,
  };
}

/** The last corner of a row of windows that lies before a place, or on it. */
const lastBefore = (place: Mm, corner: Mm, pitch: Mm): Mm => corner + Math.floor((place - corner) / pitch) * pitch;

/** How far the lines of each part that still holds have moved, by its cell. */
function partMoves(
  grid: Grid,
  parts: readonly PrintedPart[],
  before: PrintedSheets,
  now: Pick<PrintedSheets, 'lines' | 'words'> & { readonly old: ReadonlyMap<string, OldPart> },
): ReadonlyMap<string, Mm> {
  const within = MOST_MOVED / Math.max(grid.way.scale.x, grid.way.scale.y);
  const joins = partJoins(grid, parts).filter((join) => hasRoom(join, grid));
  const moves = new Map<string, Mm>();
  for (const { cell, window } of parts) {
    const was = now.old.get(cellKey(cell));
    const own = joins.filter(({ first, second }) => isSameCell(first, cell) || isSameCell(second, cell));
    // What was cut out small shows no more than that; and without marks for a neighbour nothing can be joined to it.
    const isAsWas = was && (was.tip === undefined || was.tip.window === window);
    const isMarked = own.every((join) => marksShared(join, now.old).length > 0);
    if (!isAsWas || !isMarked || !sameWords(before.words, now.words, window)) continue;
    const moved = linesMoved(before.lines, now.lines, window, within);
    if (moved <= within) moves.set(cellKey(cell), moved);
  }
  return moves;
}

/** The marks that both sheets of a join bear already. */
function marksShared({ first, second }: Join, old: ReadonlyMap<string, OldPart>): MarkedJoin['marks'] {
  const others = new Set(old.get(cellKey(second))?.marks.map(({ number }) => number));
  return (old.get(cellKey(first))?.marks ?? [])
    .filter(({ number }) => others.has(number))
    .map(({ number, at, size }) => ({ number, at: point(at.x, at.y), size }));
}
