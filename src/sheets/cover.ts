import type { Box } from '../plane';
import { bridgedCells } from './bridges';
import { type Cell, cellIndex, type Grid, gridWindow, windowAlone, windowsMeeting } from './grid';
import { halfLine, type Stretch, shareIn, sharesOutside, stretchRims } from './stretch';

/** A stretch that more than one window reaches, and which. */
interface Shared {
  readonly stretch: Stretch;
  readonly cells: readonly number[];
  /** Those of them that show all of it. */
  readonly whole: readonly number[];
  /** Of its piece. */
  readonly bit: number;
}

/**
 * The sheets that must be printed, in reading order, so that every line lies in sight on one of them and the sheets of
 * each piece hang together: as few as a greedy choice finds.
 *
 * Windows overlap. What one window alone shows asks for its sheet; ink that two or four show asks for one of them only:
 * a line that reaches no further than the overlap into the next sheet needs no next sheet.
 *
 * @param inks every straight stretch of each piece: x, y, x, y
 * @param liked taken where they are as good as others
 */
export function coveringCells(grid: Grid, inks: readonly Float64Array[], liked: readonly Cell[] = []): readonly Cell[] {
  const count = grid.rows * grid.columns;
  const printed = new Uint8Array(count);
  const pieces = new Uint32Array(count);
  const print = (cell: number, bit: number) => {
    printed[cell] = 1;
    pieces[cell] = (pieces[cell] as number) | bit;
  };
  const windows = cellWindows(grid);
  const shared = sharedStretches(grid, inks, print, windows);
  for (const { stretch, cells, whole, bit } of shared) {
    // What two windows show whole asks for neither of them alone.
    if (whole.length > 1) continue;
    for (const cell of cells) {
      const share = shareIn(stretch, windows(cell));
      const others = cells.filter((other) => other !== cell).map(windows);
      if (share && sharesOutside(stretch, share, others).length > 0) print(cell, bit);
    }
  }
  const isShown = ({ stretch, cells, whole }: Shared) =>
    whole.some((cell) => printed[cell]) ||
    sharesOutside(stretch, [0, 1], cells.filter((cell) => printed[cell]).map(windows)).length === 0;
  const likes = new Set(liked.map((cell) => cellIndex(grid, cell)));
  for (let open = shared.filter((one) => !isShown(one)); open.length > 0; open = open.filter((one) => !isShown(one))) {
    const best = mostAsked(open, printed, likes);
    if (best === undefined) break;
    print(best, 0);
  }
  // What several sheets show counts for the first.
  for (const { stretch, cells, bit } of shared) {
    const first = cells.find((cell) => printed[cell] && shareIn(stretch, windows(cell)));
    if (first !== undefined) print(first, bit);
  }
  return bridgedCells(grid, printed, pieces);
}

/** The stretches that more than one window reaches; each of the others asks for the one sheet that shows it. */
function sharedStretches(
  grid: Grid,
  inks: readonly Float64Array[],
  print: (cell: number, bit: number) => void,
  windows: (cell: number) => Box,
): readonly Shared[] {
  const { scale } = grid.way;
  const half = halfLine(scale);
  const alone = windowAlone(grid);
  const shared: Shared[] = [];
  for (const [piece, stretches] of inks.entries()) {
    // One bit a piece, shared from the 31st on.
    const bit = 1 << (piece % 31);
    for (let i = 0; i < stretches.length; i += 4) {
      const [ax, ay] = [stretches[i] as number, stretches[i + 1] as number];
      const [bx, by] = [stretches[i + 2] as number, stretches[i + 3] as number];
      const box = {
        left: Math.min(ax, bx) - half,
        right: Math.max(ax, bx) + half,
        top: Math.min(ay, by) - half,
        bottom: Math.max(ay, by) + half,
      };
      const one = alone(box);
      if (one >= 0) {
        print(one, bit);
        continue;
      }
      const cells = windowsMeeting(grid, box);
      if (cells.length === 1) print(cells[0] as number, bit);
      else {
        const whole = cells.filter((cell) => isWithin(box, windows(cell)));
        for (const stretch of stretchRims([ax, ay, bx, by], scale)) shared.push({ stretch, cells, whole, bit });
      }
    }
  }
  return shared;
}

const isWithin = (box: Box, window: Box): boolean =>
  box.left >= window.left && box.right <= window.right && box.top >= window.top && box.bottom <= window.bottom;

/** The blank cell that most open stretches ask for, of liked ones first. */
function mostAsked(open: readonly Shared[], printed: Uint8Array, likes: ReadonlySet<number>): number | undefined {
  const asks = new Map<number, number>();
  for (const cell of open.flatMap(({ cells }) => cells)) {
    if (!printed[cell]) asks.set(cell, (asks.get(cell) ?? 0) + 1);
  }
  const worth = (cell: number) => (asks.get(cell) ?? 0) + (likes.has(cell) ? open.length + 1 : 0);
  return [...asks.keys()].toSorted((a, b) => worth(b) - worth(a) || a - b)[0];
}

/** The windows of cells, each worked out once. */
function cellWindows(grid: Grid): (cell: number) => Box {
  const known = new Map<number, ReturnType<typeof gridWindow>>();
  return (cell: number) => {
    const window =
      known.get(cell) ?? gridWindow(grid, { row: Math.floor(cell / grid.columns), column: cell % grid.columns });
    known.set(cell, window);
    return window;
  };
}
