import { type Curve, curveFrom, distance, linesMeet, moved, type Point, subtract } from '../plane';

/**
 * The quarter-ellipse's handle, as a share of a leg of the corner, where its legs are equal: 4 ÷ 3 × (√2 − 1), the
 * cubic that keeps closest to a quarter circle.
 *
 * @source geometry
 */
const ELLIPSE = 0.552;
/** A short leg beside a long one takes a longer handle, or the curve would turn sharply at its upper end. @source practice, tried on the survey */
const UNEVEN = 0.6;
/** A handle ends before its corner, or the curve would bend back. @source geometry */
const LONGEST = 0.95;
/** The long leg's handle is shorter in turn: the curve keeps off its corner and arrives flat. @source practice, tried on the survey */
const ARRIVING = 1.1;
/** No leg of the corner counts as shorter than this share of the chord: a corner beyond the curve says nothing. @source geometry */
const SHORTEST_LEG = 0.1;

/**
 * The crotch curve: from the end of the straight centre line to the crotch point.
 *
 * It leaves the centre line in its own direction and arrives at the crotch point square to the inseam, so that front
 * and back run on smoothly once the inseams are sewn. One cubic whose handles lie on the two legs of the
 * corner: its curvature has one sign.
 *
 * @param curveEnd the centre line's lower end
 * @param centreWay the centre line's direction, downwards
 * @param crotchPoint where the inseam begins
 * @param inseamWay the inseam's direction there, downwards
 * @param outwards +1 for a front (centre on the right), −1 for a back
 * @source practice
 */
export function crotchCurve(
  curveEnd: Point,
  centreWay: Point,
  crotchPoint: Point,
  inseamWay: Point,
  outwards: 1 | -1,
): Curve {
  const arrival = { x: outwards * inseamWay.y, y: -outwards * inseamWay.x };
  const corner = linesMeet(curveEnd, centreWay, crotchPoint, arrival) ?? curveEnd;
  const shortest = SHORTEST_LEG * distance(curveEnd, crotchPoint);
  const down = Math.max(shortest, along(curveEnd, corner, centreWay));
  const across = Math.max(shortest, along(corner, crotchPoint, arrival));
  const uneven = Math.max(1, across / down);
  const leaving = Math.min(LONGEST, ELLIPSE * uneven ** UNEVEN);
  const arriving = ELLIPSE / uneven ** ARRIVING;
  return curveFrom(curveEnd, centreWay, leaving * down, crotchPoint, arrival, arriving * across);
}

const along = (from: Point, to: Point, way: Point): number => {
  const d = subtract(to, from);
  return d.x * way.x + d.y * way.y;
};

/** The corner of the trade's construction: where the centre line, carried on straight, meets the crotch line. @source practice */
export function crotchCorner(curveEnd: Point, centreWay: Point, crotchLevel: number): Point {
  return moved(curveEnd, centreWay, (crotchLevel - curveEnd.y) / centreWay.y);
}
