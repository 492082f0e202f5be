import { placer } from '../drawing';
import { cutCurves, isLevel, type LevelName, type Piece, type PieceRef, pieceRef } from '../edges';
import type { Mm } from '../length';
import {
  type Curve,
  curveMap,
  curvesBounds,
  distance,
  type Point,
  pathAt,
  pathEnd,
  pathLength,
  pathStart,
  point,
  subtract,
} from '../plane';
import { type Phrase, say } from '../words';
import { planParts } from './sight';
import type { PaperSettings, SheetPlan } from './types';

/** A line across the joins whose length is known: measured once the sheets are joined, it proves them. */
export interface ControlLength {
  readonly piece: PieceRef;
  readonly name: Phrase;
  /** On the printed paper, whatever the printer's correction. */
  readonly length: Mm;
  /** A place on the line, and the way that it runs there, for its figure to be written beside it; on the drawing. */
  readonly at: Point;
  readonly way: Point;
  /** Towards the middle of the piece from a line on its rim, where words are not cut off; absent inside the piece. */
  readonly inwards?: Point;
}

const LINE_NAMES: Readonly<Record<LevelName, Phrase>> = {
  hip: say`hip line`,
  crotchLine: say`crotch line`,
  knee: say`knee line`,
};

/** Where along a line on the rim its words may stand, in parts of it. */
const SHARES = [0.4, 0.3, 0.5, 0.2, 0.6, 0.7, 0.8] as const;

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
  const { left, right, top, bottom } = curvesBounds(cutCurves(main).map((curve) => curveMap(curve, place)));
  const middle = point((left + right) / 2, (top + bottom) / 2);
  const control = (name: Phrase, curves: readonly Curve[], share: number, rim = false): readonly ControlLength[] => {
    const placed = curves.map((curve) => curveMap(curve, place));
    if (placed.length === 0 || !crossesJoin(placed, plan)) return [];
    const length = pathLength(curves);
    const { at, way } = pathAt(placed, share * length);
    const inwards = rim ? { inwards: subtract(middle, at) } : {};
    return [{ piece: pieceRef(main), name, length: length * scale, at, way, ...inwards }];
  };
  const levels = main.lines.filter(isLevel);
  const hipFirst = levels.toSorted((a, b) => Number(b.name === 'hip') - Number(a.name === 'hip'));
  const across = hipFirst.flatMap(({ name, curves }) => control(LINE_NAMES[name], curves, 0.3));
  const inseam = main.stitchLine.find((edge) => edge.name === 'inseamFront')?.curves ?? [];
  return [
    ...across.slice(0, 1),
    ...control(say`front inseam, along its stitching line`, inseam, clearShare(inseam, main), true),
  ];
}

/** Where along a line of the rim there is most room for words: far from notches and from where lines inside end on it. */
function clearShare(rim: readonly Curve[], { lines, notches }: Piece): number {
  if (rim.length === 0) return 0;
  const length = pathLength(rim);
  const busy = [
    ...lines.flatMap(({ curves }) => (curves.length > 0 ? [pathStart(curves), pathEnd(curves)] : [])),
    ...notches.map(({ at }) => at),
  ];
  const room = (share: number) => {
    const { at } = pathAt(rim, share * length);
    return Math.min(length, ...busy.map((p) => distance(p, at)));
  };
  return SHARES.reduce((best, share) => (room(share) > room(best) ? share : best));
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
