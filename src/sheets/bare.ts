import type { Mm } from '../length';
import { type Box, boxesMeet, boxHolds } from '../plane';
import { type Cell, cellIndex, type Grid, gridWindow, isSameCell, windowAlone, windowsMeeting } from './grid';
import type { PrintedPart } from './joins';
import { type Stretch, shareIn, sharesOutside } from './stretch';

/** Asks what a cell's window shows and neither any of some sheets nor of some tips. */
export interface Bare {
  /**
   * The least box round it; undefined where it is nothing. A box that has come to an area that is enough may be left
   * smaller than it is.
   */
  readonly box: (cell: Cell, sheets: readonly Cell[], tips: readonly PrintedPart[], enough?: number) => Box | undefined;
  /** Whether it is nothing but level lines: what is cut, sewn or folded lacks nothing without it. */
  readonly isLevelsOnly: (cell: Cell, sheets: readonly Cell[], tips: readonly PrintedPart[]) => boolean;
}

/**
 * Everything that is drawn, ready to be asked for what lies bare.
 *
 * @param inks every straight stretch of each piece: x, y, x, y
 * @param levelsFrom where in each of them the level lines begin, which are the last
 */
export function bareInk(grid: Grid, inks: readonly Float64Array[], levelsFrom: readonly number[]): Bare {
  const found = byWindow(grid, inks, levelsFrom);
  const box = (
    stretches: readonly Stretch[],
    cell: Cell,
    [sheets, tips]: readonly [readonly Cell[], readonly PrintedPart[]],
    enough: number,
  ) => {
    const others = [
      ...sheets.filter((other) => !isSameCell(other, cell)).map((other) => gridWindow(grid, other)),
      ...tips.filter((tip) => !isSameCell(tip.cell, cell)).map((tip) => tip.window),
    ];
    return bareBox(stretches, gridWindow(grid, cell), others, enough);
  };
  const inWindow = (cell: Cell) => found[cellIndex(grid, cell)] ?? { all: [], others: [] };
  return {
    box: (cell, sheets, tips, enough = Number.POSITIVE_INFINITY) =>
      box(inWindow(cell).all, cell, [sheets, tips], enough),
    isLevelsOnly: (cell, sheets, tips) => box(inWindow(cell).others, cell, [sheets, tips], 0) === undefined,
  };
}

/** The stretches that reach into a window, and those of them that are no level lines. */
interface InWindow {
  readonly all: Stretch[];
  readonly others: Stretch[];
}

/** What reaches into each window, by the windows' numbers. */
function byWindow(
  grid: Grid,
  inks: readonly Float64Array[],
  levelsFrom: readonly number[],
): readonly (InWindow | undefined)[] {
  const alone = windowAlone(grid);
  const found: InWindow[] = [];
  for (const [piece, ink] of inks.entries()) {
    const levels = levelsFrom[piece] ?? ink.length;
    for (let i = 0; i < ink.length; i += 4) {
      const [ax, ay] = [ink[i] as number, ink[i + 1] as number];
      const [bx, by] = [ink[i + 2] as number, ink[i + 3] as number];
      const box = boxOf(ax, ay, bx, by);
      const one = alone(box);
      for (const window of one >= 0 ? [one] : windowsMeeting(grid, box)) {
        const own = found[window] ?? { all: [], others: [] };
        found[window] = own;
        const stretch: Stretch = [ax, ay, bx, by];
        own.all.push(stretch);
        if (i < levels) own.others.push(stretch);
      }
    }
  }
  return found;
}

const boxOf = (ax: Mm, ay: Mm, bx: Mm, by: Mm): Box => ({
  left: Math.min(ax, bx),
  right: Math.max(ax, bx),
  top: Math.min(ay, by),
  bottom: Math.max(ay, by),
});

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
    const own = boxOf(ax, ay, bx, by);
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
