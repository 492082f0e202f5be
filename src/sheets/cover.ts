import type { Mm } from '../length';
import { type Box, boxGrown, boxMeetsSegment } from '../plane';
import { bridgedCells } from './bridges';
import type { Cell, Grid } from './grid';

/** Half of the widest line, on the paper: what a sheet must still show of a line that runs along its edge. */
const HALF_LINE: Mm = 0.25;

/**
 * A grid's windows overlap, so the plane falls into parts: what one sheet alone shows, strips that two show, and corners
 * that four show. Along each way cell `i` has part `2 i`, its own beginning that the cell before it also shows, and part
 * `2 i + 1`, the rest. The first cell's beginning is nobody else's and stays empty.
 */
interface Parts {
  readonly columns: number;
  readonly rows: number;
  /** For each part, row by row, which pieces have ink in it: one bit a piece, shared from the 31st on. */
  readonly inks: Uint32Array;
}

/**
 * The sheets that must be printed, in reading order, so that every line lies in sight on one of them and the sheets of
 * each piece hang together: as few as a greedy choice finds.
 *
 * Ink in a strip that two sheets show asks for one of them only: a line that reaches no further than the overlap into
 * the next sheet needs no next sheet.
 *
 * @param inks every straight stretch of each piece: x, y, x, y
 * @param liked taken where they are as good as others
 */
export function coveringCells(grid: Grid, inks: readonly Float64Array[], liked: readonly Cell[] = []): readonly Cell[] {
  const parts = inkedParts(grid, inks);
  const printed = new Uint8Array(grid.rows * grid.columns);
  const open = new Set<number>();
  for (let row = 0; row < parts.rows; row += 1) {
    for (let column = 0; column < parts.columns; column += 1) {
      if (parts.inks[row * parts.columns + column] === 0) continue;
      if (row % 2 === 1 && column % 2 === 1) printed[(row >> 1) * grid.columns + (column >> 1)] = 1;
      else open.add(row * parts.columns + column);
    }
  }
  coverRest(
    parts,
    grid,
    printed,
    open,
    new Set(liked.filter(isOn(grid)).map(({ row, column }) => row * grid.columns + column)),
  );
  const shown = cellInks(parts, grid, printed);
  return bridgedCells(grid, printed, shown);
}

const isOn =
  ({ rows, columns }: Grid) =>
  ({ row, column }: Cell): boolean =>
    row >= 0 && row < rows && column >= 0 && column < columns;

/** The cells that show a part: one, two or four. */
function showing(part: number, { columns }: Parts, grid: Grid): readonly number[] {
  const row = Math.floor(part / columns);
  const column = part % columns;
  const across = column % 2 === 0 ? [column / 2 - 1, column / 2] : [(column - 1) / 2];
  const down = row % 2 === 0 ? [row / 2 - 1, row / 2] : [(row - 1) / 2];
  return down.flatMap((r) => across.map((c) => r * grid.columns + c));
}

/** Prints cells until every open part is shown: each time the one that shows most of them, of liked ones first. */
function coverRest(parts: Parts, grid: Grid, printed: Uint8Array, open: Set<number>, liked: ReadonlySet<number>): void {
  for (const part of open) if (showing(part, parts, grid).some((cell) => printed[cell])) open.delete(part);
  while (open.size > 0) {
    const shows = new Map<number, number>();
    for (const part of open) for (const cell of showing(part, parts, grid)) shows.set(cell, (shows.get(cell) ?? 0) + 1);
    const worth = (cell: number) => (shows.get(cell) ?? 0) + (liked.has(cell) ? parts.inks.length : 0);
    let best = -1;
    for (const cell of shows.keys()) if (best < 0 || worth(cell) > worth(best)) best = cell;
    printed[best] = 1;
    for (const part of open) if (showing(part, parts, grid).includes(best)) open.delete(part);
  }
}

/** Which pieces each printed cell shows ink of; a part that several show counts for the first. */
function cellInks(parts: Parts, grid: Grid, printed: Uint8Array): Uint32Array {
  const shown = new Uint32Array(printed.length);
  for (let part = 0; part < parts.inks.length; part += 1) {
    const ink = parts.inks[part] as number;
    if (ink === 0) continue;
    const cell = showing(part, parts, grid).find((at) => printed[at]);
    if (cell !== undefined) shown[cell] = (shown[cell] as number) | ink;
  }
  return shown;
}

/**
 * Which pieces have ink where.
 *
 * The search asks this of many grids, so a stretch that lies within one part is told by its ends alone, and only one
 * that reaches further is held against the parts near it.
 */
function inkedParts(grid: Grid, pieces: readonly Float64Array[]): Parts {
  const { way, left, top } = grid;
  const half = HALF_LINE / Math.min(way.scale.x, way.scale.y);
  const columns = 2 * grid.columns;
  const rows = 2 * grid.rows;
  const inks = new Uint32Array(columns * rows);
  const overlap = { x: way.window.width - way.pitch.x, y: way.window.height - way.pitch.y };
  const column = (x: Mm) => partAt(x - left, way.pitch.x, overlap.x, grid.columns);
  const row = (y: Mm) => partAt(y - top, way.pitch.y, overlap.y, grid.rows);
  for (const [piece, stretches] of pieces.entries()) {
    const bit = 1 << (piece % 31);
    for (let i = 0; i < stretches.length; i += 4) {
      const ax = stretches[i] as number;
      const ay = stretches[i + 1] as number;
      const bx = stretches[i + 2] as number;
      const by = stretches[i + 3] as number;
      const firstColumn = column(Math.min(ax, bx) - half);
      const lastColumn = column(Math.max(ax, bx) + half);
      const firstRow = row(Math.min(ay, by) - half);
      const lastRow = row(Math.max(ay, by) + half);
      if (firstColumn === lastColumn && firstRow === lastRow) {
        inks[firstRow * columns + firstColumn] = (inks[firstRow * columns + firstColumn] as number) | bit;
        continue;
      }
      for (let r = firstRow; r <= lastRow; r += 1) {
        for (let c = firstColumn; c <= lastColumn; c += 1) {
          const at = r * columns + c;
          if ((inks[at] as number) & bit) continue;
          const box = boxGrown(partBox(grid, overlap, c, r), half);
          if (boxMeetsSegment(box, { x: ax, y: ay }, { x: bx, y: by })) inks[at] = (inks[at] as number) | bit;
        }
      }
    }
  }
  return { columns, rows, inks };
}

/** The part that a place lies in, along one way; what lies beyond the last cell is still its own. */
function partAt(from: Mm, pitch: Mm, overlap: Mm, count: number): number {
  const cell = Math.max(0, Math.min(count - 1, Math.floor(from / pitch)));
  return cell > 0 && from - cell * pitch < overlap ? 2 * cell : 2 * cell + 1;
}

function partBox(
  { way, left, top, columns, rows }: Grid,
  overlap: { readonly x: Mm; readonly y: Mm },
  column: number,
  row: number,
): Box {
  const [fromX, toX] = partSpan(column, way.pitch.x, overlap.x, columns);
  const [fromY, toY] = partSpan(row, way.pitch.y, overlap.y, rows);
  return { left: left + fromX, right: left + toX, top: top + fromY, bottom: top + toY };
}

function partSpan(part: number, pitch: Mm, overlap: Mm, count: number): readonly [Mm, Mm] {
  const cell = part >> 1;
  const start = cell * pitch;
  if (part % 2 === 0) return [start, start + overlap];
  const end = cell < count - 1 ? start + pitch : start + pitch + overlap;
  return [cell > 0 ? start + overlap : start, end];
}
