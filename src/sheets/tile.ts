import { drawingInk, type Ink, type PiecePlace, placedDrawings, placer } from '../drawing';
import { cutCurves, type Piece } from '../edges';
import { type Curve, curveMap, curveMeetsLine, curvePoint, outlineArea, type Point, point } from '../plane';
import { gapsBetween } from './gaps';
import { type Cell, type Grid, gridWindow, isSameCell, rowShift } from './grid';
import { type MarkedJoin, markedJoins, ownJoins, type PrintedPart } from './joins';
import { sheetLabel } from './label';
import { type Layout, layoutParts, rollCut } from './layout';
import { pieceInk } from './piece-ink';
import { fewestSheets, type Search } from './search';
import { paperWays } from './settings';
import type { PaperSettings, RowShift, SheetPart, SheetPlan } from './types';

/** Marking is the dear part of the search; of equally good layouts no more are marked. */
const MOST_MARKED = { quick: 6, thorough: 16 } as const;

/**
 * Spreads the pieces over sheets of one size: every line is in sight on a sheet, blank sheets and those that would hold
 * nothing but a stretch of a level line are dropped, and neighbours bear halves of the same marks.
 *
 * A sheet's window is the paper without its margins; the next sheet starts an overlap before the window ends. So the
 * right (lower) sheet is trimmed along its left (upper) join, where its own drawing begins, and laid on the left
 * (upper) sheet's join; that one's lines run on below it to the end of the overlap. Where there is no next sheet, the
 * overlap shows its lines.
 *
 * Fewer sheets win, then marks that cover no line, then a drawing that is not turned, then fewer rows.
 *
 * @param pieces at least one; the first is taken for the largest
 * @param settings the project's paper
 * @param search `quick` tries every shift upright and across, for redrawing at each change; `thorough` also turns the
 *   first piece a little either way, and comes to a plan with no more sheets
 * @throws Refusal where the paper can't be: unknown size, margin, overlap, scale or correction out of their limits
 */
export function tilePieces(pieces: readonly Piece[], settings: PaperSettings, search: Search = 'quick'): SheetPlan {
  const layouts = fewestSheets(pieces.map(pieceInk), paperWays(settings), search);
  const { layout, joins } = bestMarked(pieces, layouts.slice(0, MOST_MARKED[search]));
  const grid = { ...layout.grid, way: rollCut(layout.grid.way, layout.box, layout.grid) };
  return planOn({ ...layout, grid }, joins, pieces);
}

/**
 * The plan of a layout.
 *
 * @param first the cell that is called A1: another than the grid's first where sheets came to a printed plan
 */
export function planOn(
  layout: Pick<Layout, 'grid' | 'cells' | 'tips' | 'places'>,
  joins: readonly MarkedJoin[],
  pieces: readonly Piece[],
  first: Cell = { row: 0, column: 0 },
): SheetPlan {
  const { grid, cells, tips, places } = layout;
  const { paper, margin, overlap, scale } = grid.way;
  const { name, width, height } = paper;
  const part = ({ cell, window }: PrintedPart): SheetPart => {
    const [row, column] = [cell.row - first.row, cell.column - first.column];
    return { label: sheetLabel(row, column), row, column, window, ...ownJoins(cell, joins, first) };
  };
  const { left, top } = gridWindow(grid, first);
  return {
    paper: { name, width, height },
    margin,
    overlap,
    scale,
    corner: point(left, top),
    columns: grid.columns,
    rows: grid.rows,
    shifts: rowShifts(grid, first.row),
    places,
    sheets: cells.map((cell) => ({
      ...part({ cell, window: gridWindow(grid, cell) }),
      tips: tips.filter(({ host }) => isSameCell(host, cell)).map((tip) => ({ ...part(tip), place: tip.place })),
    })),
    lowerBound: lowerBound(grid, layoutParts(layout), placedCuts(pieces, places)),
  };
}

/** The rows that are shifted against the one that is called A. */
function rowShifts(grid: Grid, first: number): readonly RowShift[] {
  const by = (row: number) => rowShift(grid, row) - rowShift(grid, first);
  return Array.from({ length: grid.rows }, (_, row) => ({ row: row - first, by: by(row) })).filter(
    (one) => one.by !== 0,
  );
}

/** A mark on a cut line is worse than many on others. */
const COVERS = { nothing: 0, line: 1, cut: 100 } as const;

interface Marked {
  readonly layout: Layout;
  readonly joins: readonly MarkedJoin[];
}

/** The first layout whose marks cover no line, or the one whose marks cover the fewest. */
function bestMarked(pieces: readonly Piece[], layouts: readonly Layout[]): Marked {
  let best: Marked | undefined;
  let least = Number.POSITIVE_INFINITY;
  const inks = new Map<string, Ink>();
  for (const layout of layouts) {
    const { grid, places } = layout;
    const key = places.map(({ turn, shift }) => `${turn} ${shift.x} ${shift.y}`).join();
    const ink = inks.get(key) ?? drawingInk(placedDrawings(pieces, places));
    inks.set(key, ink);
    const cut = { ...grid, way: rollCut(grid.way, layout.box, grid) };
    const joins = markedJoins(cut, layoutParts({ ...layout, grid: cut }), ink);
    const covering = joins.reduce((sum, join) => sum + COVERS[join.covers], 0);
    if (covering < least) {
      least = covering;
      best = { layout, joins };
    }
    if (covering === 0) break;
  }
  if (!best) throw new RangeError('there is no way to lay the paper');
  return best;
}

const placedCuts = (pieces: readonly Piece[], places: readonly PiecePlace[]): readonly (readonly Curve[])[] =>
  pieces.map((piece, i) => {
    const place = placer(places[i] ?? { turn: 0, shift: point(0, 0) });
    return cutCurves(piece).map((curve) => curveMap(curve, place));
  });

/** The pieces' area, less what lies between the printed parts, over the area of one window, rounded up. */
function lowerBound({ way }: Grid, parts: readonly PrintedPart[], cuts: readonly (readonly Curve[])[]): number {
  const area = cuts.reduce((sum, curves) => sum + Math.abs(outlineArea(curves)), 0);
  const bare = gapsBetween(parts.map(({ window }) => window)).filter(({ left, right, top, bottom }) =>
    cuts.some((curves) => holds(curves, point((left + right) / 2, (top + bottom) / 2))),
  );
  const left = bare.reduce((sum, gap) => sum - (gap.right - gap.left) * (gap.bottom - gap.top), area);
  return Math.max(1, Math.ceil(left / (way.window.width * way.window.height)));
}

/** Whether a closed run of curves holds a point: a line to the right crosses it an odd number of times. */
function holds(curves: readonly Curve[], p: Point): boolean {
  const crossings = curves.flatMap((curve) =>
    curveMeetsLine(curve, p, point(1, 0)).filter((t) => t < 1 && curvePoint(curve, t).x > p.x),
  );
  return crossings.length % 2 === 1;
}
