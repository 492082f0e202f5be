import type { Mm } from '../length';
import type { Box } from '../plane';
import { bordered } from './grid';
import { type PieceInk, stretchesBox, stretchesPlaced } from './piece-ink';
import { inkRaster, type Raster } from './raster';
import type { PaperWay } from './settings';

/** The main piece turned, and a grid laid over it: where a search starts from. */
export interface Start {
  readonly way: PaperWay;
  readonly turn: number;
  /** From the box of the main piece leftwards and upwards to the grid's corner: less than a pitch. */
  readonly x: Mm;
  readonly y: Mm;
  /** How many sheets the squares of the raster ask for; the lines themselves may ask for one more or less. */
  readonly count: number;
  /** How many of the eight starts around it ask for no more: in the middle of many, rounding matters least. */
  readonly firm: number;
}

/** The main piece turned, its lines and the box that a grid must hold. */
export interface TurnedMain {
  readonly way: PaperWay;
  readonly turn: number;
  readonly stretches: Float64Array;
  readonly box: Box;
}

/** Squares of the raster to the shorter side of a window. */
const SQUARES = 96;
/** Shifts tried along the shorter pitch. */
const SHIFTS = 36;

export function turnedMain(main: PieceInk, way: PaperWay, turn: number): TurnedMain {
  const stretches = stretchesPlaced(main.stretches, turn);
  return { way, turn, stretches, box: bordered(stretchesBox(stretches), way) };
}

/** The raster's squares are a fine share of the window, so that a search costs the same on every paper and scale. */
export const squareSide = ({ window }: PaperWay): Mm => Math.min(window.width, window.height) / SQUARES;

/**
 * The shifts of the grid that ask for the fewest sheets, firmest first; the plain one, whose corner is the box's corner,
 * comes besides.
 */
export function fewestStarts({ way, turn, stretches, box }: TurnedMain): {
  readonly plain: Start;
  readonly best: readonly Start[];
} {
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const fits = width <= way.window.width && height <= way.window.height;
  if (fits || way.roll) {
    const count = fits ? 1 : Number.POSITIVE_INFINITY;
    return { plain: { way, turn, x: 0, y: 0, count, firm: 8 }, best: [] };
  }
  const raster = inkRaster(stretches, box, squareSide(way));
  const step = Math.min(way.pitch.x, way.pitch.y) / SHIFTS;
  const across = shiftedEdges(raster.width, raster.columns, raster.side, way.pitch.x, way.window.width, step);
  const down = shiftedEdges(raster.height, raster.rows, raster.side, way.pitch.y, way.window.height, step);
  const counts = new Uint16Array(across.length * down.length);
  const printed = new Uint8Array(Math.max(...across.map((e) => e.count)) * Math.max(...down.map((e) => e.count)));
  for (const [j, rows] of down.entries()) {
    for (const [i, columns] of across.entries()) {
      counts[j * across.length + i] = sheetCount(raster, columns, rows, printed);
    }
  }
  const least = counts.reduce((a, b) => Math.min(a, b));
  const best: Start[] = [];
  const at = (i: number, j: number) =>
    counts[((j + down.length) % down.length) * across.length + ((i + across.length) % across.length)] as number;
  for (const [j, { shift: y }] of down.entries()) {
    for (const [i, { shift: x }] of across.entries()) {
      if (at(i, j) > least) continue;
      let firm = -1;
      for (let b = -1; b <= 1; b += 1) for (let a = -1; a <= 1; a += 1) if (at(i + a, j + b) <= least) firm += 1;
      best.push({ way, turn, x, y, count: least, firm });
    }
  }
  return {
    plain: { way, turn, x: 0, y: 0, count: counts[0] as number, firm: 0 },
    best: best.sort((a, b) => b.firm - a.firm),
  };
}

/** Where a grid's cells lie on a raster along one way, in whole squares, for one shift of the grid. */
interface ShiftedEdges {
  readonly shift: Mm;
  readonly count: number;
  /** For each cell: where its window begins, where its neighbour's ends and it is alone, where the next begins. */
  readonly edges: Int32Array;
}

function shiftedEdges(length: Mm, squares: number, side: Mm, pitch: Mm, window: Mm, step: Mm): readonly ShiftedEdges[] {
  const shifts = Math.max(1, Math.round(pitch / step));
  const square = (at: Mm) => Math.max(0, Math.min(squares, Math.round(at / side)));
  return Array.from({ length: shifts }, (_, i) => {
    const shift = (i * pitch) / shifts;
    const count = Math.ceil((length + shift) / pitch);
    const edges = new Int32Array(3 * count);
    for (let cell = 0; cell < count; cell += 1) {
      const from = cell * pitch - shift;
      edges[3 * cell] = square(from);
      // The first cell has no neighbour before it.
      edges[3 * cell + 1] = square(cell > 0 ? from + window - pitch : from);
      edges[3 * cell + 2] = square(from + pitch);
    }
    return { shift, count, edges };
  });
}

/** How many sheets a raster asks for under a grid; `printed` is room to work in. */
function sheetCount(raster: Raster, across: ShiftedEdges, down: ShiftedEdges, printed: Uint8Array): number {
  const { columns: squares, sums } = raster;
  const wide = squares + 1;
  const x = across.edges;
  const y = down.edges;
  const inked = (x0: number, y0: number, x1: number, y1: number): boolean =>
    (sums[y1 * wide + x1] as number) -
      (sums[y0 * wide + x1] as number) -
      (sums[y1 * wide + x0] as number) +
      (sums[y0 * wide + x0] as number) >
    0;
  const columns = across.count;
  let count = 0;
  for (let row = 0; row < down.count; row += 1) {
    const [y1, y2] = [y[3 * row + 1] as number, y[3 * row + 2] as number];
    for (let column = 0; column < columns; column += 1) {
      const alone = inked(x[3 * column + 1] as number, y1, x[3 * column + 2] as number, y2);
      printed[row * columns + column] = alone ? 1 : 0;
      if (alone) count += 1;
    }
  }
  // What only strips hold: two sheets show them, and one of them is enough.
  for (let row = 0; row < down.count; row += 1) {
    const [y0, y1, y2] = [y[3 * row] as number, y[3 * row + 1] as number, y[3 * row + 2] as number];
    for (let column = 0; column < columns; column += 1) {
      const cell = row * columns + column;
      if (printed[cell]) continue;
      const [x0, x1, x2] = [x[3 * column] as number, x[3 * column + 1] as number, x[3 * column + 2] as number];
      const before = column > 0 && printed[cell - 1] === 1;
      const above = row > 0 && printed[cell - columns] === 1;
      const corner = before || above || (column > 0 && row > 0 && printed[cell - columns - 1] === 1);
      if (
        (!before && inked(x0, y1, x1, y2)) ||
        (!above && inked(x1, y0, x2, y1)) ||
        (!corner && inked(x0, y0, x1, y1))
      ) {
        printed[cell] = 1;
        count += 1;
      }
    }
  }
  return count;
}
