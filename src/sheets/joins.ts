import type { Ink } from '../drawing';
import type { Mm } from '../length';
import type { Point } from '../plane';
import { type Cell, cellKey, cellSight, type Grid, gridWindow } from './grid';
import { type MarkLine, type MarkPlaces, markPlaces } from './marks';
import type { JoinMark, Sheet } from './types';

/** A join of two printed sheets; the second, right or below, is trimmed and laid on the first. */
export interface Join extends MarkLine {
  readonly first: Cell;
  readonly second: Cell;
}

/** A join with its marks, each under a number that no other bears. */
export interface MarkedJoin extends Join {
  readonly marks: readonly { readonly number: number; readonly at: Point; readonly size: number }[];
  readonly covers: MarkPlaces['covers'];
}

/**
 * All joins between printed sheets, in reading order of their first sheet, marked and numbered from 1.
 *
 * @param known the marks of a join that bears some already, and the last number that is taken
 */
export function markedJoins(
  grid: Grid,
  cells: readonly Cell[],
  ink: Ink,
  known: { readonly marksOf: (join: Join) => MarkedJoin['marks']; readonly last: number } = {
    marksOf: () => [],
    last: 0,
  },
): readonly MarkedJoin[] {
  let { last } = known;
  return cellJoins(grid, cells).map((join) => {
    const own = known.marksOf(join);
    if (own.length > 0) return { ...join, marks: own, covers: 'nothing' };
    const { places, size, covers } = markPlaces(join, ink, grid.way.scale);
    const marks = places.map((at) => {
      last += 1;
      return { number: last, at, size };
    });
    return { ...join, marks, covers };
  });
}

function cellJoins(grid: Grid, cells: readonly Cell[]): readonly Join[] {
  const printed = new Set(cells.map(cellKey));
  return cells.flatMap((first) => {
    const own = cellSight(grid, printed, first);
    const beside = { row: first.row, column: first.column + 1 };
    const below = { row: first.row + 1, column: first.column };
    const joins: Join[] = [];
    // A join runs where both sheets are in sight; beyond its end one of them lies under a third.
    if (printed.has(cellKey(beside))) {
      const to = Math.min(own.bottom, cellSight(grid, printed, beside).bottom);
      joins.push({ first, second: beside, runs: 'down', at: gridWindow(grid, beside).left, from: own.top, to });
    }
    if (printed.has(cellKey(below))) {
      const to = Math.min(own.right, cellSight(grid, printed, below).right);
      joins.push({ first, second: below, runs: 'across', at: gridWindow(grid, below).top, from: own.left, to });
    }
    return joins;
  });
}

/** The part that a sheet has in all joins: where its neighbours lie, and its halves of the marks. */
export function ownJoins(cell: Cell, joins: readonly MarkedJoin[]): Pick<Sheet, 'joins' | 'marks'> {
  const key = cellKey(cell);
  const own: { left?: Mm; right?: Mm; top?: Mm; bottom?: Mm } = {};
  const marks: JoinMark[] = [];
  for (const join of joins) {
    const first = cellKey(join.first) === key;
    if (!first && cellKey(join.second) !== key) continue;
    const down = join.runs === 'down';
    own[first ? (down ? 'right' : 'bottom') : down ? 'left' : 'top'] = join.at;
    const towards = first ? (down ? 'left' : 'up') : down ? 'right' : 'down';
    for (const mark of join.marks) marks.push({ ...mark, towards });
  }
  return { joins: own, marks };
}
