import type { Mm } from '../length';
import { type Box, boxesMeet, boxGrown, point } from '../plane';
import { type Cell, cellKey, type Grid, gridWindow, isSameCell } from './grid';
import type { PrintedPart } from './joins';
import { MARK } from './marks';
import { type Raster, rasterCount, rasterHolds } from './raster';
import { tipBox } from './sight';
import type { Tip } from './types';

/** A place of the grid that has no sheet of its own, and where on which sheet it is printed. */
export interface LaidTip extends PrintedPart, Pick<Tip, 'place'> {
  readonly host: Cell;
}

/** What lies on the sheets, for tips to keep off. */
export interface Taken {
  /** The main piece, filled. */
  readonly filled: Raster;
  /** The smaller pieces. */
  readonly boxes: readonly Box[];
  /** Every straight stretch of all pieces: x, y, x, y. */
  readonly inks: readonly Float64Array[];
  /** Where in each of these the level lines begin, which are the last. */
  readonly levelsFrom: readonly number[];
}

/** A tip is at least so deep behind its join that its half-diamonds and their numbers lie on it, and so far from its host's. */
export const DEEP: Mm = MARK.depth + MARK.numberRoom + 2;
/** From a tip's frame to a line of the sheet that bears it: both are cut. */
const APART: Mm = 3;
/** From a tip's frame to where its sheet's paper ends or another one covers it. */
const EDGE: Mm = 1;
/** From one tried place to the next, in parts of a window's shorter side. */
const STEPS = 24;

interface Size {
  readonly width: Mm;
  readonly height: Mm;
}

/** Where on a sheet tips may lie, and the sizes for which there was no place there: each tip that comes leaves less. */
interface Room {
  readonly box: Box;
  /** What of it no piece covers: an area. */
  readonly bare: number;
  readonly lacking: Size[];
}

/**
 * Finds free places for tips, each as near to a corner of a sheet as can be; turned by a quarter only where that finds one.
 *
 * Where a place of the grid becomes a tip it is joined as before, so a sheet's room is the same all along.
 *
 * @param joined the places of the grid that are joined to each other, as sheets or as tips
 */
export function tipPlaces(
  grid: Grid,
  joined: readonly Cell[],
  { filled, boxes }: Taken,
): (window: Box, hosts: readonly Cell[], tips: readonly LaidTip[]) => Pick<LaidTip, 'host' | 'place'> | undefined {
  const rooms = new Map<string, Room>();
  const roomOf = (host: Cell): Room => {
    const key = cellKey(host);
    const known = rooms.get(key);
    if (known) return known;
    const box = hostRoom(grid, host, joined);
    const covered = rasterCount(filled, box) * filled.side * filled.side;
    const room = { box, bare: (box.right - box.left) * (box.bottom - box.top) - covered, lacking: [] };
    rooms.set(key, room);
    return room;
  };
  return (window, hosts, tips) => {
    const [width, height] = [window.right - window.left, window.bottom - window.top];
    for (const turn of [0, 90]) {
      const size = turn === 0 ? { width, height } : { width: height, height: width };
      let best: { readonly host: Cell; readonly left: Mm; readonly top: Mm } | undefined;
      let least = Number.POSITIVE_INFINITY;
      for (const host of hosts) {
        if (least === 0) break;
        const room = roomOf(host);
        if (room.bare < width * height || room.lacking.some((one) => isWithin(one, size))) continue;
        const others = [...boxes, ...tips.filter((tip) => isSameCell(tip.host, host)).map(tipBox)];
        const found = freePlace(grid, room.box, size, others, filled, least);
        if (found) {
          least = found.away;
          best = { host, ...found };
        } else if (least === Number.POSITIVE_INFINITY) room.lacking.push(size);
      }
      if (!best) continue;
      // Turned by a quarter, what was above lies on the right.
      const shift =
        turn === 0
          ? point(best.left - window.left, best.top - window.top)
          : point(best.left + window.bottom, best.top - window.left);
      return { host: best.host, place: { turn, shift } };
    }
    return undefined;
  };
}

const isWithin = (a: Size, b: Size): boolean => a.width <= b.width && a.height <= b.height;

/**
 * On which sides of its window a cell has printed neighbours.
 *
 * @param least along less than this, on the drawing, a window of the row above or below is none
 */
export function neighbourSides(grid: Grid, cell: Cell, window: Box, printed: readonly Cell[], least: Mm) {
  const has = (row: number, column: number) => printed.some((other) => isSameCell(other, { row, column }));
  const meets = (row: number) =>
    printed.some((other) => {
      if (other.row !== row) return false;
      const { left, right } = gridWindow(grid, other);
      return Math.min(right, window.right) - Math.max(left, window.left) > least;
    });
  return {
    left: has(cell.row, cell.column - 1),
    right: has(cell.row, cell.column + 1),
    top: meets(cell.row - 1),
    bottom: meets(cell.row + 1),
  };
}

/** Where on a sheet tips may lie: off its marks, and off what a neighbour covers. */
export function hostRoom(grid: Grid, host: Cell, joined: readonly Cell[]): Box {
  const { scale, window: size, pitch } = grid.way;
  const window = gridWindow(grid, host);
  const has = neighbourSides(grid, host, window, joined, 0);
  const marks = { x: DEEP / scale.x, y: DEEP / scale.y };
  const edge = { x: EDGE / scale.x, y: EDGE / scale.y };
  return {
    left: window.left + (has.left ? marks.x : edge.x),
    top: window.top + (has.top ? marks.y : edge.y),
    right: window.right - (has.right ? size.width - pitch.x + marks.x : edge.x),
    bottom: window.bottom - (has.bottom ? size.height - pitch.y + marks.y : edge.y),
  };
}

/** The free place of a size in a room that is nearest to one of its corners, and nearer than a limit. */
function freePlace(
  grid: Grid,
  room: Box,
  { width, height }: Size,
  others: readonly Box[],
  filled: Raster,
  limit: Mm,
): { readonly left: Mm; readonly top: Mm; readonly away: Mm } | undefined {
  const { window } = grid.way;
  const step = Math.min(window.width, window.height) / STEPS;
  const xs = fromEnds(room.right - room.left - width, step);
  const ys = fromEnds(room.bottom - room.top - height, step);
  let best: { readonly left: Mm; readonly top: Mm; readonly away: Mm } | undefined;
  let least = limit;
  for (const y of ys) {
    if (y.away >= least) break;
    for (const x of xs) {
      const away = x.away + y.away;
      if (away >= least) break;
      const [left, top] = [room.left + x.at, room.top + y.at];
      if (!isFree(grid, { left, top, right: left + width, bottom: top + height }, others, filled)) continue;
      best = { left, top, away };
      least = away;
    }
  }
  return best;
}

/** Even places from 0 to a length, those nearest to either end first; none where it is less than 0. */
function fromEnds(length: Mm, step: Mm): readonly { readonly at: Mm; readonly away: Mm }[] {
  if (length < 0) return [];
  const count = Math.ceil(length / step);
  return Array.from({ length: count + 1 }, (_, i) => {
    const away = count === 0 ? 0 : (Math.floor(i / 2) * length) / count;
    const at = i % 2 === 0 ? away : length - away;
    return { at, away };
  });
}

/** Whether a tip may lie in a box: off all pieces and other tips. */
export function isFree({ way: { scale } }: Grid, box: Box, others: readonly Box[], filled: Raster): boolean {
  // The raster's squares are rounded: one more keeps the distance.
  const wide = boxGrown(box, APART / Math.min(scale.x, scale.y) + filled.side);
  return !rasterHolds(filled, wide) && !others.some((other) => boxesMeet(other, wide));
}
