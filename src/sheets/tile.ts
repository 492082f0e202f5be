import { cutCurves, type Piece } from '../edges';
import { type Curve, curveMap, curveMeetsLine, curvePoint, outlineArea, type Point, point } from '../plane';
import { boxGrids, type Cell, cellKey, type Grid, gridCell, gridWindow, inkedCells, printedCells } from './grid';
import { drawingInk, type Ink } from './ink';
import { type MarkedJoin, markedJoins, ownJoins } from './joins';
import { sheetLabel } from './label';
import { placedDrawings, placePieces } from './places';
import { type PaperWay, paperWays } from './settings';
import type { PaperSettings, SheetPlan } from './types';

/** Places tried for the grid, each way: few at first, more only where a mark would have to cover a line. */
const COARSE = 5;
const FINE = 9;
/** Marking is the dear part of the search; of equally good grids no more are marked. */
const MOST_MARKED = 8;

/**
 * Spreads the pieces over sheets of one size: every line is on a sheet, blank sheets are dropped, and neighbours bear
 * halves of the same marks.
 *
 * A sheet's window is the paper without its margins; the next sheet starts an overlap before the window ends. So the
 * right (lower) sheet is trimmed along its left (upper) join, where its own drawing begins, and laid on the left
 * (upper) sheet's join; that one's lines run on below it to the end of the overlap.
 *
 * The grid is tried at its corner and pushed, upright and across: fewer sheets win, then fewer rows, then marks that
 * cover no line, then the grid that was pushed least.
 *
 * @param pieces at least one
 * @param settings the project's paper
 * @throws Refusal where the paper can't be: unknown size, margin, overlap, scale or correction out of their limits
 */
export function tilePieces(pieces: readonly Piece[], settings: PaperSettings): SheetPlan {
  const ways = paperWays(settings);
  const places = placePieces(pieces);
  const ink = drawingInk(placedDrawings(pieces, places));
  const cuts = pieces.map((piece, i) => shifted(cutCurves(piece), places[i]?.shift ?? point(0, 0)));
  const search = (tried: readonly PaperWay[], pushes: number) =>
    bestLaid(
      tried.flatMap((way) => boxGrids(ink, way, pushes)),
      ink,
    );
  const coarse = search(ways, COARSE);
  // Only the marks are looked at again, so the paper stays turned as it was found best.
  const { grid, cells, joins } = coarse.covering === 0 ? coarse : search([coarse.grid.way], FINE);
  const { paper, margin, overlap, scale } = grid.way;
  return {
    paper,
    margin,
    overlap,
    scale,
    columns: grid.columns,
    rows: grid.rows,
    places,
    sheets: cells.map((cell) => ({
      label: sheetLabel(cell.row, cell.column),
      row: cell.row,
      column: cell.column,
      window: gridWindow(grid, cell),
      ...ownJoins(cell, joins),
    })),
    lowerBound: lowerBound(grid, cells, cuts),
  };
}

/** A grid with the sheets that must be printed and their marked joins. */
interface Laid {
  readonly grid: Grid;
  readonly cells: readonly Cell[];
  readonly joins: readonly MarkedJoin[];
  /** Joins whose marks cover a line. */
  readonly covering: number;
}

/** The first grid with the fewest sheets, then rows, then marks that have to cover a line. */
function bestLaid(grids: readonly Grid[], ink: Ink): Laid {
  const inked = grids
    .map((grid) => ({ grid, cells: inkedCells(grid, ink) }))
    .sort((a, b) => a.cells.length - b.cells.length);
  // Bridges only add sheets: once a grid has more inked cells than another has sheets, none after it can win.
  const printed: { readonly grid: Grid; readonly cells: readonly Cell[] }[] = [];
  let fewest = Number.POSITIVE_INFINITY;
  for (const { grid, cells } of inked) {
    if (cells.length > fewest) break;
    const laid = printedCells(grid, cells);
    fewest = Math.min(fewest, laid.cells.length);
    printed.push(laid);
  }
  const small = printed.filter(({ cells }) => cells.length === fewest);
  const rows = Math.min(...small.map(({ grid }) => grid.rows));
  let best: Laid | undefined;
  for (const { grid, cells } of small.filter((laid) => laid.grid.rows === rows).slice(0, MOST_MARKED)) {
    const joins = markedJoins(grid, cells, ink);
    const covering = joins.filter((join) => !join.clear).length;
    if (!best || covering < best.covering) best = { grid, cells, joins, covering };
    if (covering === 0) break;
  }
  if (!best) throw new RangeError('there is no way to lay the paper');
  return best;
}

function lowerBound(grid: Grid, cells: readonly Cell[], cuts: readonly (readonly Curve[])[]): number {
  const printed = new Set(cells.map(cellKey));
  let area = cuts.reduce((sum, curves) => sum + Math.abs(outlineArea(curves)), 0);
  for (let row = 0; row < grid.rows; row += 1) {
    for (let column = 0; column < grid.columns; column += 1) {
      if (printed.has(cellKey({ row, column }))) continue;
      const { left, right, top, bottom } = gridCell(grid, { row, column });
      const middle = point((left + right) / 2, (top + bottom) / 2);
      if (cuts.some((curves) => holds(curves, middle))) area -= (right - left) * (bottom - top);
    }
  }
  return Math.ceil(area / (grid.way.window.width * grid.way.window.height));
}

/** Whether a closed run of curves holds a point: a line to the right crosses it an odd number of times. */
function holds(curves: readonly Curve[], p: Point): boolean {
  const crossings = curves.flatMap((curve) =>
    curveMeetsLine(curve, p, point(1, 0)).filter((t) => t < 1 && curvePoint(curve, t).x > p.x),
  );
  return crossings.length % 2 === 1;
}

const shifted = (curves: readonly Curve[], shift: Point): readonly Curve[] =>
  curves.map((curve) => curveMap(curve, (p) => point(p.x + shift.x, p.y + shift.y)));
