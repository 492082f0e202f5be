import type { Piece } from '../edges';
import type { Mm } from '../length';
import { type Curve, curveBounds, curveMap, type Point, pathAt, pathLength } from '../plane';
import { boxRound } from './bounds';
import { placer } from './placer';
import type { PaperSettings, SheetPlan } from './types';

/** A line across the joins whose length is known: measured once the sheets are joined, it proves them. */
export interface ControlLength {
  readonly piece: string;
  readonly name: string;
  /** On the printed paper, whatever the printer's correction. */
  readonly length: Mm;
  /** A place on the line, and the way that it runs there, for its figure to be written beside it; on the drawing. */
  readonly at: Point;
  readonly way: Point;
}

/**
 * Two lines to measure after joining: a level of the main piece, across it, and its front inseam, down it; of each only
 * where it crosses a join. The hip line comes first; another level takes its place where it lies on one sheet.
 *
 * @param pieces as printed, in the order of the plan's places
 */
export function controlLengths(
  pieces: readonly Piece[],
  plan: SheetPlan,
  { scale }: Pick<PaperSettings, 'scale'>,
): readonly ControlLength[] {
  const [main] = pieces;
  const [where] = plan.places;
  if (!main || !where) return [];
  const place = placer(where);
  const control = (name: string, curves: readonly Curve[], share: number): readonly ControlLength[] => {
    const placed = curves.map((curve) => curveMap(curve, place));
    if (placed.length === 0 || !crossesJoin(placed, plan)) return [];
    const length = pathLength(curves);
    const { at, way } = pathAt(placed, share * length);
    return [{ piece: main.name, name, length: length * scale, at, way }];
  };
  const levels = main.lines.filter((line) => line.kind === 'level');
  const hipFirst = levels.toSorted((a, b) => Number(b.name === 'hip') - Number(a.name === 'hip'));
  const across = hipFirst.flatMap(({ name, curves }) =>
    control(name.endsWith('line') ? name : `${name} line`, curves, 0.3),
  );
  const inseam = main.stitchLine.find((edge) => edge.name === 'inseamFront')?.curves ?? [];
  return [...across.slice(0, 1), ...control('front inseam, along its stitching line', inseam, 0.4)];
}

/** Whether a line lies on both sides of a join, within its length. */
function crossesJoin(curves: readonly Curve[], plan: SheetPlan): boolean {
  const { left, right, top, bottom } = boxRound(curves.map(curveBounds));
  return plan.sheets.some(({ window, joins }) => {
    const inRow = top < window.bottom && bottom > window.top;
    const inColumn = left < window.right && right > window.left;
    return (
      (inRow && joins.right !== undefined && left < joins.right && joins.right < right) ||
      (inColumn && joins.bottom !== undefined && top < joins.bottom && joins.bottom < bottom)
    );
  });
}
