import type { LegHalf } from '../../../src/leg';
import {
  type Curve,
  curvePoint,
  distance,
  type Point,
  pathAt,
  pathEnd,
  pathLength,
  pathStart,
} from '../../../src/plane';
import type { NetLeg } from '../net';
import { girthAt } from '../outlines';

// The places of a leg by the contract's names, all of the drawn lines. “A” is the crotch curve's upper end.

export const PARTS = ['front', 'back'] as const;
export type Part = (typeof PARTS)[number];

/** From the waist point to A: by so much the waist edge stands above the crotch curve. */
export const centreLength = ({ leg }: NetLeg, part: Part): number => distance(leg[part].waistPoint, leg[part].curveEnd);

/** From the crotch point to A, straight across. */
export const fork = ({ leg }: NetLeg, part: Part): number => Math.abs(leg[part].crotchPoint.x - leg[part].curveEnd.x);

/** How much higher centre back stands than centre front. */
export const tilt = ({ leg }: NetLeg): number => leg.front.waistPoint.y - leg.back.waistPoint.y;

/** From crotch point to crotch point, straight across. */
export const thigh = ({ leg }: NetLeg): number => leg.front.crotchPoint.x - leg.back.crotchPoint.x;

export const hem = ({ leg }: NetLeg): number => distance(pathStart(leg.hem), pathEnd(leg.hem));

/** Where an inseam meets the hem. */
export const hemCorner = ({ leg }: NetLeg, part: Part): Point => pathEnd(leg[part].inseam);

export const inseamLength = ({ leg }: NetLeg, part: Part): number => pathLength(leg[part].inseam);

const seamLength = (half: LegHalf): number => distance(half.waistPoint, half.curveEnd) + pathLength(half.crotch);

/** From waist edge to waist edge through the crotch. */
export const crotchLength = ({ leg }: NetLeg): number => seamLength(leg.front) + seamLength(leg.back);

/** The hip of the garment on the drawn hip line. */
export const hip = ({ outline, leg }: NetLeg): number => girthAt(outline, leg.hipLevel);

/** What is wanted of the crotch length; undefined where none was measured. */
export const wantedCrotch = ({ drafted }: NetLeg): number | undefined => drafted.blocks.crotchWanted;

/** The farthest that any of some places moved. */
export const farthest = (before: NetLeg, after: NetLeg, place: (net: NetLeg, part: Part) => Point): number =>
  Math.max(...PARTS.map((part) => distance(place(before, part), place(after, part))));

/** The largest change of a figure, front or back. */
export const change = (before: NetLeg, after: NetLeg, figure: (net: NetLeg, part: Part) => number): number =>
  Math.max(...PARTS.map((part) => Math.abs(figure(after, part) - figure(before, part))));

export const upperEnd = ({ leg }: NetLeg, part: Part): Point => leg[part].curveEnd;
export const waistPoint = ({ leg }: NetLeg, part: Part): Point => leg[part].waistPoint;
export const crotchPoint = ({ leg }: NetLeg, part: Part): Point => leg[part].crotchPoint;

const SHARES = 16;

/** The farthest that a run of curves moved: along each curve alike, or along the whole where it has other parts. */
export function runMoved(before: readonly Curve[], after: readonly Curve[]): number {
  const shares = Array.from({ length: SHARES + 1 }, (_, i) => i / SHARES);
  if (before.length === after.length)
    return Math.max(
      ...before.flatMap((curve, i) =>
        shares.map((t) => distance(curvePoint(curve, t), curvePoint(after[i] as Curve, t))),
      ),
    );
  const [a, b] = [pathLength(before), pathLength(after)];
  return Math.max(...shares.map((share) => distance(pathAt(before, a * share).at, pathAt(after, b * share).at)));
}

/** The farthest that a seam of either half moved. */
export const seamMoved = (before: NetLeg, after: NetLeg, seam: 'crotch' | 'inseam'): number =>
  Math.max(...PARTS.map((part) => runMoved(before.leg[part][seam], after.leg[part][seam])));

/** What fixed figures are scaled by on small bodies. */
export const smallness = ({ body }: NetLeg): number => Math.min(1, body.hipGirth / 900);
