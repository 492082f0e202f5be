import { type Cell, type Grid, rowShift } from './grid';
import { LEAST_MARKED } from './joins';

/**
 * Printed sheets, and the blank ones that must be printed with them: a sheet inside a piece may hold a bit of a line
 * and yet touch no other sheet of it; without the marks of those between, nobody could place it.
 *
 * @param printed row by row, 1 for a sheet that is printed; more are added
 * @param shown which pieces each printed sheet shows, a bit for each
 * @returns all sheets to print, in reading order
 */
export function bridgedCells(grid: Grid, printed: Uint8Array, shown: Uint32Array): readonly Cell[] {
  for (let guard = printed.length; guard > 0; guard -= 1) {
    const groups = hangingTogether(grid, printed);
    const bits = new Map<number, number>();
    for (const [cell, group] of groups.entries()) {
      if (group > 0) bits.set(group, (bits.get(group) ?? 0) | (shown[cell] as number));
    }
    const apart = [...bits].find(([group, own]) =>
      [...bits].some(([other, its]) => other !== group && (own & its) !== 0),
    );
    if (!apart) break;
    const [from, own] = apart;
    const bridge = shortestBridge(
      grid,
      groups,
      from,
      (group) => group !== from && group > 0 && ((bits.get(group) ?? 0) & own) !== 0,
    );
    if (bridge.length === 0) break;
    for (const cell of bridge) printed[cell] = 1;
  }
  return Array.from(printed.keys())
    .filter((cell) => printed[cell])
    .map((cell) => ({ row: Math.floor(cell / grid.columns), column: cell % grid.columns }));
}

/** For each cell the number, from 1, of the group of printed cells that it hangs together with by whole joins; 0 where it is blank. */
function hangingTogether(grid: Grid, printed: Uint8Array): Uint32Array {
  const groups = new Uint32Array(printed.length);
  let last = 0;
  for (let start = 0; start < printed.length; start += 1) {
    if (!printed[start] || groups[start]) continue;
    last += 1;
    const queue = [start];
    groups[start] = last;
    for (let cell = queue.pop(); cell !== undefined; cell = queue.pop()) {
      for (const next of beside(grid, cell)) {
        if (!printed[next] || groups[next]) continue;
        groups[next] = last;
        queue.push(next);
      }
    }
  }
  return groups;
}

/** The blank cells of a shortest way from one group to a wanted other one; none where they touch or there is no way. */
function shortestBridge(
  grid: Grid,
  groups: Uint32Array,
  from: number,
  wanted: (group: number) => boolean,
): readonly number[] {
  const before = new Int32Array(groups.length).fill(-1);
  const queue = Array.from(groups.keys()).filter((cell) => groups[cell] === from);
  for (const cell of queue) before[cell] = cell;
  for (const cell of queue) {
    if (wanted(groups[cell] as number)) {
      const bridge: number[] = [];
      for (let at = before[cell] as number; groups[at] !== from; at = before[at] as number) {
        if (groups[at] === 0) bridge.push(at);
      }
      return bridge;
    }
    for (const next of beside(grid, cell)) {
      if (before[next] !== -1) continue;
      before[next] = cell;
      queue.push(next);
    }
  }
  return [];
}

/** The cells that join one along a stretch with room for marks. */
function beside(grid: Grid, cell: number): readonly number[] {
  const { columns, rows } = grid;
  const row = Math.floor(cell / columns);
  const column = cell % columns;
  const inRow = [column - 1, column + 1].filter((at) => at >= 0 && at < columns).map((at) => row * columns + at);
  const others = [row - 1, row + 1].filter((at) => at >= 0 && at < rows);
  return [...inRow, ...others.flatMap((at) => columnsBelow(grid, row, column, at).map((to) => at * columns + to))];
}

/** The columns of the row below or above that a cell joins: one, or two where that row is shifted against its own. */
function columnsBelow(grid: Grid, row: number, column: number, other: number): readonly number[] {
  const { pitch, scale } = grid.way;
  // In pitches: how much further to the left the other row stands.
  const by = (rowShift(grid, other) - rowShift(grid, row)) / pitch.x;
  const least = LEAST_MARKED / (pitch.x * scale.x);
  return [...new Set([Math.floor(column + by), Math.ceil(column + by)])].filter(
    (to) => to >= 0 && to < grid.columns && 1 - Math.abs(to - column - by) >= least,
  );
}
