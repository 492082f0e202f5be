import type { Mm } from '../length';
import type { Box } from '../plane';

/**
 * A drawing as squares, inked or not, added up from the corner: whether any square of a box is inked is then four
 * look-ups, however large the box. It is how thousands of grids are tried; the exact lines decide at the end.
 */
export interface Raster {
  readonly left: Mm;
  readonly top: Mm;
  readonly width: Mm;
  readonly height: Mm;
  /** The side of a square. */
  readonly side: Mm;
  readonly columns: number;
  readonly rows: number;
  /** (columns + 1) × (rows + 1): how many squares above and left of a corner are inked. */
  readonly sums: Int32Array;
}

/** Squares of a box, none of them inked yet. */
function squares({ left, top, right, bottom }: Box, side: Mm) {
  const columns = Math.ceil((right - left) / side) + 1;
  const rows = Math.ceil((bottom - top) / side) + 1;
  return { left, top, width: right - left, height: bottom - top, side, columns, rows };
}

/** Squares, inked or not, before they are added up. */
export interface Inked extends Omit<Raster, 'sums'> {
  readonly inked: Uint8Array;
}

/**
 * The squares that lines touch.
 *
 * @param stretches x, y, x, y of every straight stretch
 * @param box holds all of them
 */
export function inkedSquares(stretches: ArrayLike<number>, box: Box, side: Mm): Inked {
  const base = squares(box, side);
  const inked = new Uint8Array(base.columns * base.rows);
  for (let i = 0; i < stretches.length; i += 4) {
    const x = ((stretches[i] as number) - box.left) / side;
    const y = ((stretches[i + 1] as number) - box.top) / side;
    const dx = ((stretches[i + 2] as number) - box.left) / side - x;
    const dy = ((stretches[i + 3] as number) - box.top) / side - y;
    const count = Math.max(1, Math.ceil(2 * Math.hypot(dx, dy)));
    for (let k = 0; k <= count; k += 1) {
      const column = Math.floor(x + (dx * k) / count);
      const row = Math.floor(y + (dy * k) / count);
      inked[row * base.columns + column] = 1;
    }
  }
  return { ...base, inked };
}

/** Squares added up, those that boxes touch inked with them. */
export function rasterOf({ inked: lines, ...base }: Inked, boxes: readonly Box[] = []): Raster {
  const { left, top, width, height, side, columns, rows } = base;
  const inked = boxes.length > 0 ? lines.slice() : lines;
  for (const box of boxes) {
    const [from, to] = [Math.max(0, box.left - left), Math.min(width, box.right - left)];
    const [first, last] = [Math.max(0, box.top - top), Math.min(height, box.bottom - top)];
    if (from > to || first > last) continue;
    for (let row = Math.floor(first / side); row <= Math.floor(last / side); row += 1)
      inked.fill(1, row * columns + Math.floor(from / side), row * columns + Math.floor(to / side) + 1);
  }
  return { ...base, sums: summed(inked, columns, rows) };
}

/**
 * The squares whose middles lie inside a closed line, even-odd.
 *
 * @param outline x, y, x, y of every straight stretch of it
 */
export function filledRaster(outline: Float64Array, box: Box, side: Mm): Raster {
  const base = squares(box, side);
  const inside = new Uint8Array(base.columns * base.rows);
  const crossings: number[][] = Array.from({ length: base.rows }, () => []);
  for (let i = 0; i < outline.length; i += 4) {
    const [ax = 0, ay = 0, bx = 0, by = 0] = outline.subarray(i, i + 4);
    const first = Math.ceil((Math.min(ay, by) - box.top) / side - 0.5);
    const last = Math.ceil((Math.max(ay, by) - box.top) / side - 0.5);
    for (let row = Math.max(0, first); row < Math.min(base.rows, last); row += 1) {
      const y = box.top + (row + 0.5) * side;
      crossings[row]?.push(ax + ((y - ay) / (by - ay)) * (bx - ax));
    }
  }
  for (const [row, xs] of crossings.entries()) {
    xs.sort((a, b) => a - b);
    for (let i = 0; i + 1 < xs.length; i += 2) {
      const from = Math.max(0, Math.ceil(((xs[i] as number) - box.left) / side - 0.5));
      const to = Math.min(base.columns, Math.ceil(((xs[i + 1] as number) - box.left) / side - 0.5));
      inside.fill(1, row * base.columns + from, row * base.columns + to);
    }
  }
  return { ...base, sums: summed(inside, base.columns, base.rows) };
}

function summed(inked: Uint8Array, columns: number, rows: number): Int32Array {
  const sums = new Int32Array((columns + 1) * (rows + 1));
  for (let row = 0; row < rows; row += 1) {
    let along = 0;
    for (let column = 0; column < columns; column += 1) {
      along += inked[row * columns + column] as number;
      const above = sums[row * (columns + 1) + column + 1] as number;
      sums[(row + 1) * (columns + 1) + column + 1] = above + along;
    }
  }
  return sums;
}

/** Whether a box holds an inked square; its sides are rounded to whole squares. */
export const rasterHolds = (raster: Raster, box: Box): boolean => rasterCount(raster, box) > 0;

/** How many inked squares a box holds. */
export function rasterCount({ left, top, side, columns, rows, sums }: Raster, box: Box): number {
  const x0 = Math.max(0, Math.min(columns, Math.round((box.left - left) / side)));
  const x1 = Math.max(0, Math.min(columns, Math.round((box.right - left) / side)));
  const y0 = Math.max(0, Math.min(rows, Math.round((box.top - top) / side)));
  const y1 = Math.max(0, Math.min(rows, Math.round((box.bottom - top) / side)));
  if (x1 <= x0 || y1 <= y0) return 0;
  const [above, below] = [y0 * (columns + 1), y1 * (columns + 1)];
  const before = (sums[below + x0] as number) - (sums[above + x0] as number);
  return (sums[below + x1] as number) - (sums[above + x1] as number) - before;
}
