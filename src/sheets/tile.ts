import { cutCurves, type Piece } from '../edges';
import { type Curve, curveMap, curveMeetsLine, curvePoint, outlineArea, type Point, point } from '../plane';
import { type Cell, cellKey, cornerGrid, type Grid, gridCell, gridWindow, printedCells } from './grid';
import { drawingInk, type Ink } from './ink';
import { markedJoins, ownJoins } from './joins';
import { sheetLabel } from './label';
import { placedDrawings, placePieces } from './places';
import { paperWays } from './settings';
import type { PaperSettings, PiecePlace, Sheet, SheetPlan } from './types';

/**
 * Spreads the pieces over sheets of one size: every line is on a sheet, blank sheets are dropped, and neighbours bear
 * halves of the same marks.
 *
 * A sheet's window is the paper without its margins; the next sheet starts an overlap before the window ends. So the
 * right (lower) sheet is trimmed along its left (upper) join, where its own drawing begins, and laid on the left
 * (upper) sheet's join; that one's lines run on below it to the end of the overlap. Fewer sheets win, then fewer rows.
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
  const plans = ways.map((way) => planOf(cornerGrid(ink, way), ink, places, cuts));
  const [best] = plans.sort((a, b) => a.sheets.length - b.sheets.length || a.rows - b.rows);
  if (!best) throw new RangeError('there is no way to lay the paper');
  return best;
}

function planOf(grid: Grid, ink: Ink, places: readonly PiecePlace[], cuts: readonly (readonly Curve[])[]): SheetPlan {
  const cells = printedCells(grid, ink);
  const { paper, margin, overlap, scale } = grid.way;
  return {
    paper,
    margin,
    overlap,
    scale,
    columns: grid.columns,
    rows: grid.rows,
    places,
    sheets: sheetsOf(grid, cells, ink),
    lowerBound: lowerBound(grid, cells, cuts),
  };
}

function sheetsOf(grid: Grid, cells: readonly Cell[], ink: Ink): readonly Sheet[] {
  const joins = markedJoins(grid, cells, ink);
  return cells.map((cell) => ({
    label: sheetLabel(cell.row, cell.column),
    row: cell.row,
    column: cell.column,
    window: gridWindow(grid, cell),
    ...ownJoins(cell, joins),
  }));
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
