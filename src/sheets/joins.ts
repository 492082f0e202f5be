import type { Ink } from '../drawing';
import type { Mm } from '../length';
import type { Box, Point } from '../plane';
import { type Cell, cellKey, type Grid } from './grid';
import { sheetLabel } from './label';
import { type MarkLine, type MarkPlaces, markPlaces } from './marks';
import type { JoinMark, SheetJoin, SheetPart } from './types';

/** A place of the grid that is printed, and what of the drawing it shows: its whole window, or of a tip what is cut out. */
export interface PrintedPart {
  readonly cell: Cell;
  readonly window: Box;
}

/** A join of two printed parts; the second, right or below, is trimmed and laid on the first. */
export interface Join extends MarkLine {
  readonly first: Cell;
  readonly second: Cell;
}

/** A join with its marks, each under a number that no other bears. */
export interface MarkedJoin extends Join {
  readonly marks: readonly { readonly number: number; readonly at: Point; readonly size: number }[];
  readonly covers: MarkPlaces['covers'];
}

/** Along a shorter stretch, on the paper, two marks have no room: its sheets are joined by their other neighbours. */
export const LEAST_MARKED: Mm = 44;

/** Two edges that lie an overlap apart do so within this. */
const SAME: Mm = 1e-6;

/**
 * All joins between printed parts, in reading order of their first one, marked and numbered from 1.
 *
 * @param known the marks of a join that bears some already, and the last number that is taken
 */
export function markedJoins(
  grid: Grid,
  parts: readonly PrintedPart[],
  ink: Ink,
  known: { readonly marksOf: (join: Join) => MarkedJoin['marks']; readonly last: number } = {
    marksOf: () => [],
    last: 0,
  },
): readonly MarkedJoin[] {
  let { last } = known;
  const { scale } = grid.way;
  return partJoins(grid, parts).map((join) => {
    const own = known.marksOf(join);
    if (own.length > 0) return { ...join, marks: own, covers: 'nothing' };
    if (!hasRoom(join, grid)) return { ...join, marks: [], covers: 'nothing' };
    const { places, size, covers } = markPlaces(join, ink, scale);
    const marks = places.map((at) => {
      last += 1;
      return { number: last, at, size };
    });
    return { ...join, marks, covers };
  });
}

/** Whether marks can show how two parts are joined. */
export const hasRoom = ({ runs, from, to }: Join, { way: { scale } }: Grid): boolean =>
  (to - from) * (runs === 'down' ? scale.y : scale.x) >= LEAST_MARKED;

/**
 * Where printed parts join: two that follow each other in a row, or one and another of the next row, whose edges lie an
 * overlap apart. A tip's edge that was cut off short of its neighbour joins nothing.
 */
export function partJoins({ way }: Grid, parts: readonly PrintedPart[]): readonly Join[] {
  const overlap = { x: way.window.width - way.pitch.x, y: way.window.height - way.pitch.y };
  const touch = (end: Mm, start: Mm, by: Mm) => Math.abs(end - by - start) < SAME;
  const rows = new Map<number, PrintedPart[]>();
  for (const part of parts) {
    const row = rows.get(part.cell.row);
    if (row) row.push(part);
    else rows.set(part.cell.row, [part]);
  }
  const besides = (a: PrintedPart, b: PrintedPart) =>
    b.cell.column === a.cell.column + 1 &&
    touch(a.window.right, b.window.left, overlap.x) &&
    Math.min(a.window.bottom, b.window.bottom) > Math.max(a.window.top, b.window.top);
  const follows = (a: PrintedPart, b: PrintedPart) =>
    touch(a.window.bottom, b.window.top, overlap.y) &&
    // Cornerwise they only meet where the overlaps of both cross.
    Math.min(a.window.right, b.window.right) - Math.max(a.window.left, b.window.left) > overlap.x + SAME;
  const right = new Map(parts.map((a) => [a, rows.get(a.cell.row)?.find((b) => besides(a, b))]));
  const below = new Map(parts.map((a) => [a, (rows.get(a.cell.row + 1) ?? []).filter((b) => follows(a, b))]));
  // A join runs where both parts are in sight; beyond its end one of them lies under a third.
  const sightRight = (a: PrintedPart) => right.get(a)?.window.left ?? a.window.right;
  const sightBottom = (a: PrintedPart) => below.get(a)?.[0]?.window.top ?? a.window.bottom;
  return parts.flatMap((a) => {
    const b = right.get(a);
    const joins: Join[] = [];
    if (b) {
      const from = Math.max(a.window.top, b.window.top);
      const to = Math.min(sightBottom(a), sightBottom(b));
      joins.push({ first: a.cell, second: b.cell, runs: 'down', at: b.window.left, from, to });
    }
    for (const c of below.get(a) ?? []) {
      const from = Math.max(a.window.left, c.window.left);
      const to = Math.min(sightRight(a), sightRight(c));
      if (to > from) joins.push({ first: a.cell, second: c.cell, runs: 'across', at: c.window.top, from, to });
    }
    return joins;
  });
}

const SIDES = ['left', 'right', 'top', 'bottom'] as const;

/**
 * The share that a part has in all joins: where its neighbours lie, and its halves of the marks.
 *
 * @param first the cell that is called A1
 */
export function ownJoins(cell: Cell, joins: readonly MarkedJoin[], first: Cell): Pick<SheetPart, 'joins' | 'marks'> {
  const key = cellKey(cell);
  const own: SheetJoin[] = [];
  const marks: JoinMark[] = [];
  for (const join of joins) {
    const isFirst = cellKey(join.first) === key;
    if (!isFirst && cellKey(join.second) !== key) continue;
    const down = join.runs === 'down';
    const { row, column } = isFirst ? join.second : join.first;
    const side = isFirst ? (down ? 'right' : 'bottom') : down ? 'left' : 'top';
    const neighbour = sheetLabel(row - first.row, column - first.column);
    own.push({ side, neighbour, at: join.at, from: join.from, to: join.to });
    const towards = isFirst ? (down ? 'left' : 'up') : down ? 'right' : 'down';
    for (const mark of join.marks) marks.push({ ...mark, towards });
  }
  return { joins: own.sort((a, b) => SIDES.indexOf(a.side) - SIDES.indexOf(b.side) || a.from - b.from), marks };
}
