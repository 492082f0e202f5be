import { placer } from '../drawing';
import { isLevel, type LevelName, type Piece, type PieceRef, pieceRef } from '../edges';
import type { Mm } from '../length';
import { type Curve, curveMap, curvesBounds, pathLength } from '../plane';
import { type Phrase, say } from '../words';
import { planParts } from './sight';
import type { PaperSettings, SheetPlan } from './types';

/** A line whose length is known: measured once the sheets are joined, it proves the joins, and on one sheet the print. */
export interface ControlLength {
  readonly piece: PieceRef;
  readonly name: Phrase;
  /** On the printed paper, whatever the printer's correction. */
  readonly length: Mm;
  /** The line, on the drawing. */
  readonly curves: readonly Curve[];
}

const LINE_NAMES: Readonly<Record<LevelName, Phrase>> = {
  hip: say`hip line`,
  crotchLine: say`crotch line`,
  knee: say`knee line`,
};

/**
 * Two lines to measure after joining: a level of the main piece, across it, and its front inseam, down it; of each only
 * where it crosses a join, where there are joins. The hip line comes first; another level takes its place where it lies on one sheet.
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
  const joined = plan.sheets.length > 1;
  const control = (name: Phrase, curves: readonly Curve[]): readonly ControlLength[] => {
    const placed = curves.map((curve) => curveMap(curve, place));
    if (placed.length === 0 || (joined && !crossesJoin(placed, plan))) return [];
    return [{ piece: pieceRef(main), name, length: pathLength(curves) * scale, curves: placed }];
  };
  const levels = main.lines.filter(isLevel);
  const hipFirst = levels.toSorted((a, b) => Number(b.name === 'hip') - Number(a.name === 'hip'));
  const across = hipFirst.flatMap(({ name, curves }) => control(LINE_NAMES[name], curves));
  const inseam = main.stitchLine.find((edge) => edge.name === 'inseamFront')?.curves ?? [];
  return [...across.slice(0, 1), ...control(say`front inseam, along its stitching line`, inseam)];
}

/** Whether a line lies on both sides of a join, within its length. */
function crossesJoin(curves: readonly Curve[], plan: SheetPlan): boolean {
  const { left, right, top, bottom } = curvesBounds(curves);
  return planParts(plan).some(({ joins }) =>
    joins.some(({ side, at, from, to }) =>
      side === 'right' || side === 'left'
        ? top < to && bottom > from && left < at && at < right
        : left < to && right > from && top < at && at < bottom,
    ),
  );
}
