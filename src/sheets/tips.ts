import type { Mm } from '../length';
import { type Box, boxesMeet, boxGrown, boxHolds, point } from '../plane';
import { type Cell, cellKey, type Grid, gridWindow, isSameCell } from './grid';
import { hasRoom, LEAST_MARKED, type PrintedPart, partJoins } from './joins';
import { MARK } from './marks';
import { type Raster, rasterHolds } from './raster';
import { tipBox } from './sight';
import { type Stretch, shareIn, sharesOutside } from './stretch';
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
}

/** A tip takes no more than this share of a window: with more on it a sheet is worth its paper. */
const LARGEST = 0.4;
/** White round a tip's lines, on the paper. */
const RIM: Mm = 2;
/** From a tip's frame to a line of the sheet that bears it: both are cut. */
const APART: Mm = 3;
/** From a tip's frame to where its sheet's paper ends or another one covers it. */
const EDGE: Mm = 1;
/** A tip is at least so deep behind its join that its half-diamonds and their numbers lie on it. */
const DEEP: Mm = MARK.depth + MARK.numberRoom + 2;
/** From one tried place to the next, in parts of a window's shorter side. */
const STEPS = 24;

/**
 * The sheets that are left once every place of the grid with little on it is printed in an empty corner of another
 * sheet, and those tips: those with the least on them first, each only if all sheets still hang together by marks.
 *
 * @param most the most sheets that are wanted: undefined where more are left
 */
export function withTips(
  grid: Grid,
  cells: readonly Cell[],
  taken: Taken,
  most: number,
): { readonly cells: readonly Cell[]; readonly tips: readonly LaidTip[] } | undefined {
  let sheets = cells;
  let tips: readonly LaidTip[] = [];
  const area = (box: Box | undefined) => (box ? (box.right - box.left) * (box.bottom - box.top) : 0);
  const window = grid.way.window.width * grid.way.window.height;
  const bare = bareBoxes(grid, cells, taken.inks);
  const groups = groupCount(grid, cells, []);
  const inOrder = cells
    .map((cell) => ({
      cell,
      size: area(bare(cell, cells, [], LARGEST * window)),
    }))
    .filter(({ size }) => size < LARGEST * window)
    .toSorted((a, b) => a.size - b.size);
  for (const [i, { cell }] of inOrder.entries()) {
    // If all that are still to come became tips, there would be too many sheets.
    if (sheets.length - (inOrder.length - i) > most) return undefined;
    if (tips.some(({ host }) => isSameCell(host, cell))) continue;
    const others = sheets.filter((other) => other !== cell);
    const box = bare(cell, others, tips);
    if (!box) continue;
    const shown = tipWindow(grid, cell, box, [...others, ...tips.map((tip) => tip.cell)]);
    // A sheet that may become a tip itself is no place for others while there is one that won't.
    const firm = others.filter((other) => !inOrder.some((one) => one.cell === other));
    const bearers = [firm, others.filter((other) => !firm.includes(other))];
    const placed = shown && bearers.map((hosts) => placeTip(grid, shown, hosts, others, tips, taken)).find(Boolean);
    if (!placed) continue;
    const more = [...tips, { cell, window: shown, ...placed }];
    if (groupCount(grid, others, more) > groups) continue;
    sheets = others;
    tips = more;
  }
  return sheets.length > most ? undefined : { cells: sheets, tips };
}

/**
 * The least box round what a cell's window shows and neither any of some sheets nor of some tips; undefined where that is
 * nothing. A box that has come to an area that is enough may be left smaller than it is.
 */
export function bareBoxes(
  grid: Grid,
  cells: readonly Cell[],
  inks: readonly Float64Array[],
): (cell: Cell, sheets: readonly Cell[], tips: readonly PrintedPart[], enough?: number) => Box | undefined {
  const stretches = byCell(grid, cells, inks);
  return (cell, sheets, tips, enough = Number.POSITIVE_INFINITY) => {
    const others = [
      ...sheets.filter((other) => !isSameCell(other, cell)).map((other) => gridWindow(grid, other)),
      ...tips.filter((tip) => !isSameCell(tip.cell, cell)).map((tip) => tip.window),
    ];
    return bareBox(stretches.get(cellKey(cell)) ?? [], gridWindow(grid, cell), others, enough);
  };
}

/** The stretches that reach into each cell's window. */
function byCell(
  grid: Grid,
  cells: readonly Cell[],
  inks: readonly Float64Array[],
): ReadonlyMap<string, readonly Stretch[]> {
  const windows = cells.map((cell) => ({ key: cellKey(cell), box: gridWindow(grid, cell), own: [] as Stretch[] }));
  for (const ink of inks) {
    for (let i = 0; i < ink.length; i += 4) {
      const [ax, ay] = [ink[i] as number, ink[i + 1] as number];
      const [bx, by] = [ink[i + 2] as number, ink[i + 3] as number];
      for (const { box, own } of windows) {
        if (Math.max(ax, bx) < box.left || Math.min(ax, bx) > box.right) continue;
        if (Math.max(ay, by) < box.top || Math.min(ay, by) > box.bottom) continue;
        own.push([ax, ay, bx, by]);
      }
    }
  }
  return new Map(windows.map(({ key, own }) => [key, own]));
}

/** The least box round what a window shows and no other one does; undefined where that is nothing. */
function bareBox(stretches: readonly Stretch[], window: Box, others: readonly Box[], enough: number): Box | undefined {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  const near = others.filter(
    (box) =>
      box.left <= window.right && box.right >= window.left && box.top <= window.bottom && box.bottom >= window.top,
  );
  for (const stretch of stretches) {
    if ((right - left) * (bottom - top) >= enough && right > left) break;
    const [ax, ay, bx, by] = stretch;
    const own = {
      left: Math.min(ax, bx),
      right: Math.max(ax, bx),
      top: Math.min(ay, by),
      bottom: Math.max(ay, by),
    };
    // Most stretches add nothing, and most of the others are seen nowhere else.
    if (own.left >= left && own.right <= right && own.top >= top && own.bottom <= bottom) continue;
    const meeting = near.filter((box) => boxesMeet(box, own));
    if (meeting.some((box) => boxHolds(box, { x: ax, y: ay }) && boxHolds(box, { x: bx, y: by }))) continue;
    const share = shareIn(stretch, window);
    if (!share) continue;
    for (const ends of meeting.length > 0 ? sharesOutside(stretch, share, meeting) : [share]) {
      for (const t of ends) {
        const [x, y] = [ax + t * (bx - ax), ay + t * (by - ay)];
        if (x < left) left = x;
        if (x > right) right = x;
        if (y < top) top = y;
        if (y > bottom) bottom = y;
      }
    }
  }
  return left > right ? undefined : { left, top, right, bottom };
}

/**
 * What a tip shows: the whole overlap on the sides where its lines run on to a neighbour, on the others no more than a
 * rim round its lines, and everywhere enough for the marks.
 *
 * @param printed the places of the grid that it may be joined to
 */
function tipWindow(grid: Grid, cell: Cell, ink: Box, printed: readonly Cell[]): Box | undefined {
  const { way } = grid;
  const { scale, pitch } = way;
  const window = gridWindow(grid, cell);
  const overlap = { x: way.window.width - pitch.x, y: way.window.height - pitch.y };
  const rim = { x: RIM / scale.x, y: RIM / scale.y };
  const has = neighbourSides(grid, cell, window, printed);
  const runsOn = {
    left: has.left && ink.left < window.left + overlap.x + rim.x,
    right: has.right && ink.right > window.right - overlap.x - rim.x,
    top: has.top && ink.top < window.top + overlap.y + rim.y,
    bottom: has.bottom && ink.bottom > window.bottom - overlap.y - rim.y,
  };
  if (!runsOn.left && !runsOn.right && !runsOn.top && !runsOn.bottom) return undefined;
  const across = stretched(
    { from: window.left, to: window.right, start: window.left, end: window.left + pitch.x },
    { from: ink.left - rim.x, to: ink.right + rim.x },
    { from: runsOn.left, to: runsOn.right },
    { deep: DEEP / scale.x, long: runsOn.top || runsOn.bottom ? (LEAST_MARKED + 1) / scale.x : 0 },
  );
  const down = stretched(
    { from: window.top, to: window.bottom, start: window.top, end: window.top + pitch.y },
    { from: ink.top - rim.y, to: ink.bottom + rim.y },
    { from: runsOn.top, to: runsOn.bottom },
    { deep: DEEP / scale.y, long: runsOn.left || runsOn.right ? (LEAST_MARKED + 1) / scale.y : 0 },
  );
  return { left: across.from, right: across.to, top: down.from, bottom: down.to };
}

/** On which sides of its window a cell has printed neighbours. */
function neighbourSides(grid: Grid, cell: Cell, window: Box, printed: readonly Cell[]) {
  const has = (row: number, column: number) => printed.some((other) => isSameCell(other, { row, column }));
  const meets = (row: number) =>
    printed.some((other) => {
      if (other.row !== row) return false;
      const { left, right } = gridWindow(grid, other);
      return Math.min(right, window.right) - Math.max(left, window.left) > (2 * LEAST_MARKED) / grid.way.scale.x;
    });
  return {
    left: has(cell.row, cell.column - 1),
    right: has(cell.row, cell.column + 1),
    top: meets(cell.row - 1),
    bottom: meets(cell.row + 1),
  };
}

interface Span {
  readonly from: Mm;
  readonly to: Mm;
}

/** A tip's window along one way: up to the window's end where lines run on, and long enough for marks. */
function stretched(
  window: Span & { readonly start: Mm; readonly end: Mm },
  ink: Span,
  runsOn: { readonly from: boolean; readonly to: boolean },
  least: { readonly deep: Mm; readonly long: Mm },
): Span {
  let from = runsOn.from ? window.from : Math.max(window.from, ink.from);
  let to = runsOn.to ? window.to : Math.min(window.to, ink.to);
  if (runsOn.from && runsOn.to) return { from, to };
  if (runsOn.from)
    return { from, to: Math.min(window.to, Math.max(to, window.from + Math.max(least.deep, least.long))) };
  // What lies below the next sheet is no part of a join's length and hides marks.
  if (runsOn.to)
    return { from: Math.max(window.from, Math.min(from, window.end - Math.max(least.deep, least.long))), to };
  const lacks = Math.max(least.deep, least.long) - (to - from);
  if (lacks > 0) {
    from -= lacks / 2;
    to += lacks / 2;
    const back = Math.max(0, window.start - from) - Math.max(0, to - Math.max(window.end, ink.to));
    from += back;
    to += back;
  }
  return { from: Math.max(window.from, from), to: Math.min(window.to, to) };
}

/** A free place for a tip on one of the sheets, as near to a corner as can be; turned by a quarter only where that finds one. */
function placeTip(
  grid: Grid,
  window: Box,
  hosts: readonly Cell[],
  printed: readonly Cell[],
  tips: readonly LaidTip[],
  taken: Taken,
): Pick<LaidTip, 'host' | 'place'> | undefined {
  for (const turn of [0, 90]) {
    const [width, height] = [window.right - window.left, window.bottom - window.top];
    const size = turn === 0 ? { width, height } : { width: height, height: width };
    let best: { readonly host: Cell; readonly left: Mm; readonly top: Mm } | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const host of hosts) {
      const room = hostRoom(grid, host, [...printed, ...tips.map(({ cell }) => cell)]);
      const others = [...taken.boxes, ...tips.filter((tip) => isSameCell(tip.host, host)).map(tipBox)];
      const found = freePlace(grid, room, size, others, taken.filled, least);
      if (!found) continue;
      least = found.away;
      best = { host, ...found };
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
}

/** Where on a sheet tips may lie: off its marks, and off what a neighbour covers. */
function hostRoom(grid: Grid, host: Cell, printed: readonly Cell[]): Box {
  const { scale, window: size, pitch } = grid.way;
  const window = gridWindow(grid, host);
  const has = neighbourSides(grid, host, window, printed);
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
  { width, height }: { readonly width: Mm; readonly height: Mm },
  others: readonly Box[],
  filled: Raster,
  limit: Mm,
): { readonly left: Mm; readonly top: Mm; readonly away: Mm } | undefined {
  const [wide, high] = [room.right - room.left - width, room.bottom - room.top - height];
  if (wide < 0 || high < 0) return undefined;
  const { window } = grid.way;
  const step = Math.min(window.width, window.height) / STEPS;
  let best: { readonly left: Mm; readonly top: Mm; readonly away: Mm } | undefined;
  let least = limit;
  const columns = Math.ceil(wide / step);
  const rows = Math.ceil(high / step);
  for (let j = 0; j <= rows; j += 1) {
    const y = rows === 0 ? 0 : (j * high) / rows;
    const down = Math.min(y, high - y);
    if (down >= least) continue;
    for (let i = 0; i <= columns; i += 1) {
      const x = columns === 0 ? 0 : (i * wide) / columns;
      const away = Math.min(x, wide - x) + down;
      if (away >= least) continue;
      const [left, top] = [room.left + x, room.top + y];
      const box = { left, top, right: left + width, bottom: top + height };
      if (!isFree(grid, box, others, filled)) continue;
      best = { left, top, away };
      least = away;
    }
  }
  return best;
}

/** Whether a tip may lie in a box: off all pieces and other tips. */
export function isFree({ way: { scale } }: Grid, box: Box, others: readonly Box[], filled: Raster): boolean {
  // The raster's squares are rounded: one more keeps the distance.
  const { left, top, right, bottom } = boxGrown(box, APART / Math.min(scale.x, scale.y) + filled.side);
  if (rasterHolds(filled, { left, top, right, bottom })) return false;
  return !others.some((o) => o.left < right && o.right > left && o.top < bottom && o.bottom > top);
}

/** In how many groups printed parts hang together by joins that bear marks. */
function groupCount(grid: Grid, cells: readonly Cell[], tips: readonly LaidTip[]): number {
  const parts = [...cells.map((cell) => ({ cell, window: gridWindow(grid, cell) })), ...tips];
  const joins = partJoins(grid, parts).filter((join) => hasRoom(join, grid));
  const group = new Map(parts.map(({ cell }, i) => [cellKey(cell), i]));
  for (const { first, second } of joins) {
    const [to, from] = [group.get(cellKey(first)), group.get(cellKey(second))];
    for (const [key, own] of group) if (own === from) group.set(key, to as number);
  }
  return new Set(group.values()).size;
}
