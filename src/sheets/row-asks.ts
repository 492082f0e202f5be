import type { Mm } from '../length';
import type { Box } from '../plane';
import { fieldExtents, latticeOver, noExtents, runsOf } from './fields';
import type { PaperWay } from './settings';

/** A place with so little on it is likely to find an empty corner of another sheet, in parts of a window. */
const TIP = { longest: 0.85, shortest: 0.5, area: 0.25 } as const;
/** What a tip is reckoned for, in sheets: corners are found for the small ones first. */
const TIP_COUNT = { least: 0.1, byArea: 2 } as const;

/**
 * Asks rows of windows how many sheets they need, a part of one for a place that can be printed as a tip of another.
 *
 * A row answers for its own part of the height, from where the row above is out of sight to where its windows end, and
 * each window for its own part of the width likewise. Every window that is asked begins at a line of one lattice: what
 * lies in its fields is looked at once.
 *
 * @param stretches x, y, x, y of every straight stretch
 * @param box holds all of them, and is what a grid must hold
 * @param tried how many shifts are tried along each way, evenly over a pitch
 * @param hop points of a stretch are looked at no further apart
 * @returns for a row and the shift of the grid above the box, by its number: the sheets for each shift to the left of the box
 */
export function rowAsker(
  stretches: Float64Array,
  box: Box,
  way: PaperWay,
  tried: { readonly across: number; readonly down: number },
  hop: Mm,
): (row: number, above: number) => Float64Array {
  const { pitch, window } = way;
  const across = latticeOver(box.right - box.left, pitch.x, window.width - pitch.x, tried.across);
  const down = latticeOver(box.bottom - box.top, pitch.y, window.height - pitch.y, tried.down);
  const rows = runsOf(fieldExtents(stretches, box, across, down, hop), down, across.count);
  const row = noExtents(across.count);
  const cell = noExtents(1);
  const asks = tipAsks(way);
  return (at, above) => {
    rows(at * down.pitch - above, row);
    const cells = runsOf(row, across, 1);
    const counts = new Float64Array(across.pitch);
    for (let shift = 0; shift < across.pitch; shift += 1) {
      for (let start = -shift; start + across.pitch <= across.count; start += across.pitch) {
        cells(start, cell);
        if (cell[0] === Infinity) continue;
        const wide = -(cell[0] as number) - (cell[2] as number);
        (counts[shift] as number) += asks(wide, -(cell[1] as number) - (cell[3] as number));
      }
    }
    return counts;
  };
}

/** What a place asks for whose ink reaches so far across and down: a sheet, or part of one. */
function tipAsks({ window }: PaperWay): (across: Mm, down: Mm) => number {
  const [long, short] = [Math.max(window.width, window.height), Math.min(window.width, window.height)];
  return (across, down) => {
    const [longer, shorter] = [Math.max(across, down), Math.min(across, down)];
    const area = (longer * shorter) / (long * short);
    const fits = longer < TIP.longest * long && shorter < TIP.shortest * short && area < TIP.area;
    return fits ? Math.min(1, TIP_COUNT.least + TIP_COUNT.byArea * area) : 1;
  };
}
