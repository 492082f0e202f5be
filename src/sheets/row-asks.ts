import type { Mm } from '../length';
import type { InkRaster } from './raster';
import type { PaperWay } from './settings';

/** A place with so little on it is likely to find an empty corner of another sheet, in parts of a window. */
const TIP = { longest: 0.85, shortest: 0.5, area: 0.25 } as const;
/** What a tip is reckoned for, in sheets: corners are found for the small ones first. */
const TIP_COUNT = { least: 0.1, byArea: 2 } as const;

/**
 * Asks rows of windows how many sheets they need, a part of one for a place that can be printed as a tip of another.
 *
 * A row answers for its own part of the height, from where the row above is out of sight to where its windows end, and
 * each window for its own part of the width likewise.
 *
 * @param across how far a row may stand to the left of the raster
 * @returns for a row and how far the grid stands above the raster: the sheets for each of `across`
 */
export function rowAsker(
  raster: InkRaster,
  way: PaperWay,
  across: readonly Mm[],
): (row: number, y: Mm) => Float64Array {
  const { side, columns, rows, inkedFrom, inkedTo } = raster;
  const { pitch, window } = way;
  const overlap = { x: window.width - pitch.x, y: window.height - pitch.y };
  const square = (at: Mm, most: number) => Math.max(0, Math.min(most, Math.round(at / side)));
  const edges = across.map((shift) => {
    const count = Math.ceil((raster.width + shift) / pitch.x);
    return Int32Array.from({ length: count + 1 }, (_, i) =>
      square(i * pitch.x - shift + (i > 0 ? overlap.x : 0), columns),
    );
  });
  // Only the inked columns of a row, one after the other: in the middle of a piece there are few.
  const inked = new Int32Array(columns);
  const tops = new Int32Array(columns);
  const bottoms = new Int32Array(columns);
  const asks = tipAsks(way, side);
  return (row, y) => {
    const from = square(row * pitch.y - y + (row > 0 ? overlap.y : 0), rows);
    const to = square((row + 1) * pitch.y - y + overlap.y, rows);
    let filled = 0;
    for (let x = 0; x < columns; x += 1) {
      const top = inkedFrom[from * columns + x] as number;
      if (top >= to) continue;
      inked[filled] = x;
      tops[filled] = top;
      bottoms[filled] = inkedTo[to * columns + x] as number;
      filled += 1;
    }
    const counts = new Float64Array(edges.length);
    for (const [i, ends] of edges.entries()) {
      let [at, count] = [0, 0];
      for (let cell = 1; cell < ends.length && at < filled; cell += 1) {
        const end = ends[cell] as number;
        // What lies before the first window's start is seen by none.
        while (at < filled && (inked[at] as number) < (ends[cell - 1] as number)) at += 1;
        const first = at;
        let [top, bottom] = [rows, 0];
        for (; at < filled && (inked[at] as number) < end; at += 1) {
          if ((tops[at] as number) < top) top = tops[at] as number;
          if ((bottoms[at] as number) > bottom) bottom = bottoms[at] as number;
        }
        if (at > first) count += asks((inked[at - 1] as number) + 1 - (inked[first] as number), bottom - top);
      }
      counts[i] = count;
    }
    return counts;
  };
}

/** What a place asks for whose ink fills so many squares across and down: a sheet, or part of one. */
function tipAsks({ window }: PaperWay, side: Mm): (across: number, down: number) => number {
  const [long, short] = [Math.max(window.width, window.height), Math.min(window.width, window.height)];
  return (across, down) => {
    const [longer, shorter] = [side * Math.max(across, down), side * Math.min(across, down)];
    const area = (longer * shorter) / (long * short);
    const fits = longer < TIP.longest * long && shorter < TIP.shortest * short && area < TIP.area;
    return fits ? Math.min(1, TIP_COUNT.least + TIP_COUNT.byArea * area) : 1;
  };
}
