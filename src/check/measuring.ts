import { SMALL_HIP } from '../block';
import type { Body, EstimatedKey, MeasurementKey } from '../body';
import { type EdgeName, type FoldName, type LineName, type Piece, type Seam, type SeamKind, seamsOf } from '../edges';
import type { Mm } from '../length';
import {
  type Curve,
  cross,
  curveMeetsLine,
  curvePoint,
  distance,
  dot,
  outlineEdge,
  type Point,
  subtract,
} from '../plane';
import { type Phrase, say, UNSAID } from '../words';
import type { Subject, Verdict } from './check';

/** The curves of an edge, line or fold of a piece, as printed; undefined where the piece has none of that name. */
export function drawnCurves(piece: Piece, name: EdgeName | LineName | FoldName): readonly Curve[] | undefined {
  return [...piece.stitchLine, ...piece.folds, ...piece.lines].find((edge) => edge.name === name)?.curves;
}

/** The curves of an edge of the stitching line. Throws where there is none. */
export const seamCurves = (piece: Piece, name: EdgeName): readonly Curve[] =>
  outlineEdge(piece.stitchLine, name).curves;

/** The first seam of a kind. Throws where there is none: a check only asks for what its pieces have. */
export function seamOf(pieces: readonly Piece[], kind: SeamKind): Seam {
  const found = seamsOf(pieces).find((seam) => seam.kind === kind);
  if (!found) throw new RangeError(`there is no seam of the kind ${kind}`);
  return found;
}

/** With less room than this a leg is in the way of every step: it can't be worn. @source practice */
export const LEAST_ROOM: Mm = 20;

/** How wide a leg is at a level between its inseams; undefined where it doesn't reach down to it, or begins below it. */
export function widthAt(piece: Piece, level: Mm): Mm | undefined {
  const at = (edge: EdgeName): Mm | undefined => {
    for (const curve of seamCurves(piece, edge)) {
      const t = curveMeetsLine(curve, { x: 0, y: level }, { x: 1, y: 0 })[0];
      if (t !== undefined) return curvePoint(curve, t).x;
    }
    return undefined;
  };
  const [front, back] = [at('inseamFront'), at('inseamBack')];
  return front === undefined || back === undefined ? undefined : front - back;
}

/**
 * How wide a leg is at least where a level of the body may come to lie: as it hangs from the waist, and pulled up until
 * the crotch touches.
 *
 * @param level of the body, from the waist down
 */
export function leastWidthAt(
  { body, leg, finished }: Pick<Subject, 'body' | 'leg' | 'finished'>,
  level: Mm,
): Mm | undefined {
  const hanging = widthAt(finished.sewn, level);
  const pulledUp = widthAt(finished.sewn, level + leg.crotchLevel - body.bodyRise);
  if (hanging === undefined || pulledUp === undefined) return hanging ?? pulledUp;
  return Math.min(hanging, pulledUp);
}

/** How far two directions are from square to each other, degrees 0…90. */
export function offSquare(a: Point, b: Point): number {
  return (Math.atan2(Math.abs(dot(a, b)), Math.abs(cross(a, b))) * 180) / Math.PI;
}

/** How far two lines are from parallel, degrees 0…90. */
export function offParallel(a: Point, b: Point): number {
  return (Math.atan2(Math.abs(cross(a, b)), Math.abs(dot(a, b))) * 180) / Math.PI;
}

/** A place on a polyline: how far along it, and how far beside it. */
export interface AlongPath {
  readonly arc: Mm;
  readonly beside: Mm;
}

/**
 * Where a point lies along a polyline.
 *
 * @param points the polyline, two points or more
 * @param p the point
 */
export function alongPath(points: readonly Point[], p: Point): AlongPath {
  let best: AlongPath = { arc: 0, beside: Number.POSITIVE_INFINITY };
  let before = 0;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const length = distance(a, b);
    const way = subtract(b, a);
    const t = length === 0 ? 0 : Math.min(1, Math.max(0, dot(subtract(p, a), way) / (length * length)));
    const beside = distance({ x: a.x + way.x * t, y: a.y + way.y * t }, p);
    if (beside < best.beside) best = { arc: before + t * length, beside };
    before += length;
  }
  return best;
}

/** Of a girth that was only inferred, 19 bodies in 20 lie within so many of its spreads. */
const SURE = 2;

/**
 * How far a girth may be off on either side: nothing where it was measured, or estimated from people like this one;
 * else so far that 19 bodies in 20 lie within it.
 */
export function doubtOf({ estimates }: Body, key: EstimatedKey): Mm {
  const inferred = estimates.find((one) => one.key === key && one.basis === 'inference');
  return inferred ? SURE * inferred.spread : 0;
}

/**
 * What room is worth: good where all that is wanted is there, wrong where the leg can't be worn. Where the girth was
 * only inferred, an ordinary body with a fuller limb must still be able to wear it, and only what none can wear is
 * wrong.
 *
 * @param room of the leg beyond the girth
 * @param wanted how much of it is wanted
 * @param doubt how far the girth may be off
 */
export function roomVerdict(room: Mm, wanted: Mm, doubt: Mm): Verdict {
  if (room + doubt < LEAST_ROOM) return 'wrong';
  return room >= roomWanted(wanted, doubt) ? 'good' : 'doubtful';
}

/** How much room is enough, where the girth may be off by so much. */
export const roomWanted = (wanted: Mm, doubt: Mm): Mm => Math.max(wanted, doubt > 0 ? LEAST_ROOM + doubt : 0);

/** “, or measure the knee” behind a remedy that rests on what nobody measured. */
export const orMeasure = (doubt: Mm, what: Phrase): Phrase => (doubt > 0 ? say`, or measure ${what}` : UNSAID);

/** What fixed figures are scaled by on a small body, as the draft scales its own; 1 on all others. */
export const smallBody = ({ hipGirth }: Body): number => Math.min(1, hipGirth / SMALL_HIP);

/** “(estimated)” behind a measurement that nobody took. */
export const estimatedWord = (body: Body, key: MeasurementKey): Phrase =>
  body.estimates.some((one) => one.key === key) ? say` (estimated)` : UNSAID;

/** A value rounded up to a whole step, so that a remedy is easy to type and surely reaches. */
export const roundedUp = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step;
export const roundedDown = (value: number, step: number): number => Math.floor(value / step + 1e-9) * step;
