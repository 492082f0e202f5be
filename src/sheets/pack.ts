import { PIECE_GAP, type PiecePlace } from '../drawing';
import type { Mm } from '../length';
import { type Box, boxRound, point } from '../plane';
import { type Cell, type Grid, rowShift } from './grid';
import { type PieceInk, stretchesBox, stretchesPlaced } from './piece-ink';
import { type Raster, rasterHolds } from './raster';
import type { PaperWay } from './settings';

/** What smaller pieces are laid around: the main piece, and the grid that lies over it. */
export interface Ground {
  /** Its cells go on to all sides. */
  readonly grid: Grid;
  /** The sheets that the main piece needs. */
  readonly cells: readonly Cell[];
  /** The main piece, filled. */
  readonly filled: Raster;
  /** Smaller pieces that lie there already. */
  readonly taken?: readonly Box[];
  /** Of everything that lies there. */
  readonly box: Box;
}

/** Half of the widest line and a hair: what a piece's box takes more than its lines' middles, on the paper. */
const RIM: Mm = 0.5;
/** Places tried along a window's shorter side. */
const STEPS = 16;
/** What a place costs: a sheet more is worse than any number of joins crossed or any way off. */
const ADDED = 1e4;
const NEARER = 1e-3;

/**
 * Lays the smaller pieces on the main piece's grid, the largest first, each turned or not: where they add the fewest
 * sheets, then where they cross the fewest joins, then near the main piece. On a roll, where they make it the least
 * longer. They are taken for their boxes, the main piece for what it is.
 *
 * Among the places tried are those whose corner is a sheet's corner, so that no piece ever needs more sheets than it
 * would alone on a grid of its own.
 *
 * @returns a place for each piece, in their order
 */
export function packPieces(ground: Ground, pieces: readonly PieceInk[]): readonly PiecePlace[] {
  const sizes = pieces.map((piece) => ({ piece, box: stretchesBox(piece.stretches) }));
  const area = ({ box }: { readonly box: Box }) => (box.right - box.left) * (box.bottom - box.top);
  const found = new Map<PieceInk, PiecePlace>();
  const printed = new Set(ground.cells.map(({ column, row }) => key(column, row)));
  const taken = [...(ground.taken ?? [])];
  let all = ground.box;
  for (const { piece } of sizes.toSorted((a, b) => area(b) - area(a))) {
    const turned = [0, piece.quarter].map((turn) => ({
      turn,
      box: stretchesBox(stretchesPlaced(piece.stretches, turn)),
    }));
    let best: Tried | undefined;
    for (const { turn, box } of turned) best = bestPlace(ground, { turn, box }, { printed, taken, all }, best);
    if (!best) throw new RangeError('there is no place left beside the pieces');
    const { turn, box, own } = best;
    const to = best.at;
    found.set(piece, { piece: piece.ref, turn, shift: point(to.left - own.left, to.top - own.top) });
    taken.push(to);
    for (const cell of touched(ground.grid, to)) printed.add(cell);
    all = box;
  }
  return pieces.map((piece) => found.get(piece) as PiecePlace);
}

interface Laid {
  readonly printed: ReadonlySet<number>;
  readonly taken: readonly Box[];
  /** Round everything laid so far. */
  readonly all: Box;
}

interface Tried {
  readonly turn: number;
  /** Where the piece's box is before it is shifted, and after. */
  readonly own: Box;
  readonly at: Box;
  /** Round everything laid then. */
  readonly box: Box;
  readonly cost: number;
}

function bestPlace(
  ground: Ground,
  { turn, box }: { readonly turn: number; readonly box: Box },
  { printed, taken, all }: Laid,
  before: Tried | undefined,
): Tried | undefined {
  const { grid } = ground;
  const { way } = grid;
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const gap = { x: PIECE_GAP / way.scale.x, y: PIECE_GAP / way.scale.y };
  const xs = tried(way.window.width, way.pitch.x, grid.left, all.left - width - gap.x, all.right + gap.x, width);
  const ys = way.roll
    ? tried(way.window.height, way.pitch.y, grid.top, grid.top, all.bottom + gap.y, height)
    : tried(way.window.height, way.pitch.y, grid.top, all.top - height - gap.y, all.bottom + gap.y, height);
  const rows = ys.map((y) => span(y - grid.top, height, way.pitch.y, way.window.height, RIM / way.scale.y));
  let best = before;
  let least = before?.cost ?? Number.POSITIVE_INFINITY;
  const { filled } = ground;
  const middle = { x: (ground.box.left + ground.box.right) / 2, y: (ground.box.top + ground.box.bottom) / 2 };
  for (const [j, top] of ys.entries()) {
    const [r0, r1] = rows[j] as readonly [number, number];
    const bottom = top + height;
    const longer = way.roll ? Math.max(0, bottom - all.bottom) : 0;
    for (const left of xs) {
      let cost = longer;
      for (let r = r0; r <= r1 && cost < least; r += 1) {
        const [c0, c1] = columnsShowing(grid, r, left, width);
        cost += 10 * (c1 - c0 + 1);
        for (let c = c0; c <= c1; c += 1) if (!printed.has(key(c, r))) cost += ADDED;
      }
      const right = left + width;
      cost += NEARER * (Math.abs((left + right) / 2 - middle.x) + Math.abs((top + bottom) / 2 - middle.y));
      if (cost >= least) continue;
      const wide = { left: left - gap.x, top: top - gap.y, right: right + gap.x, bottom: bottom + gap.y };
      if (taken.some((other) => boxesCross(other, wide))) continue;
      if (rasterHolds(filled, wide)) continue;
      const at = { left, top, right, bottom };
      least = cost;
      best = { turn, own: box, at, box: boxRound([all, at]), cost };
    }
  }
  return best;
}

/** Whether a piece's box would lie on another piece, or nearer to it than a gap. */
export function isTaken(
  { filled, taken }: Required<Pick<Ground, 'filled' | 'taken'>>,
  { scale }: PaperWay,
  at: Box,
  gap: Mm,
): boolean {
  const [x, y] = [gap / scale.x, gap / scale.y];
  const wide = { left: at.left - x, top: at.top - y, right: at.right + x, bottom: at.bottom + y };
  return taken.some((other) => boxesCross(other, wide)) || rasterHolds(filled, wide);
}

/** Places along one way: an even run of them, and those that begin or end where a window does. */
function tried(window: Mm, pitch: Mm, origin: Mm, from: Mm, to: Mm, length: Mm): readonly Mm[] {
  const step = window / STEPS;
  const places: Mm[] = [];
  for (let at = from; at <= to + step; at += step) places.push(at);
  const rim = Math.min(step / 4, window - length > 0 ? (window - length) / 2 : step / 4);
  for (let i = Math.floor((from - origin) / pitch); i <= Math.ceil((to - origin) / pitch); i += 1) {
    places.push(origin + i * pitch + rim, origin + i * pitch + window - rim - length);
  }
  return places.sort((a, b) => a - b);
}

/** The fewest cells that show a stretch: the overlap of the last but one may hold its end. */
function span(from: Mm, length: Mm, pitch: Mm, window: Mm, rim: Mm): readonly [number, number] {
  const first = Math.floor((from - rim) / pitch);
  return [first, Math.max(first, Math.ceil((from + length + rim - window) / pitch))];
}

/** The columns of a row that show a stretch across. */
const columnsShowing = (grid: Grid, row: number, left: Mm, width: Mm): readonly [number, number] => {
  const { pitch, window, scale } = grid.way;
  return span(left - grid.left + rowShift(grid, row), width, pitch.x, window.width, RIM / scale.x);
};

function touched(grid: Grid, at: Box): readonly number[] {
  const { pitch, window, scale } = grid.way;
  const [r0, r1] = span(at.top - grid.top, at.bottom - at.top, pitch.y, window.height, RIM / scale.y);
  const cells: number[] = [];
  for (let r = r0; r <= r1; r += 1) {
    const [c0, c1] = columnsShowing(grid, r, at.left, at.right - at.left);
    for (let c = c0; c <= c1; c += 1) cells.push(key(c, r));
  }
  return cells;
}

/** One number for a cell; cells left of and above the grid's corner count below 0. */
const key = (column: number, row: number): number => (row + 512) * 1024 + column + 512;

const boxesCross = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
