import type { Mm } from '../length';
import { curveFrom } from './curve';
import { unit } from './point';
import type { Curve, Point } from './types';

/** Slant: millimetres to the side for each millimetre down. */
export type Slant = number;

/** How a hollow line bends. */
export interface Hollow {
  /** The start slants this much more than the chord, as a share of the chord's excess over the end's slant. */
  readonly excess: number;
  /** How far down the handles reach, as shares of the way down. */
  readonly startHandle: number;
  readonly endHandle: number;
}

/** A lounge pant's inseam: the start slants 1.3 × the chord where the end is upright; the bend sits high (from the recipe). */
const LEG_HOLLOW: Hollow = { excess: 0.3, startHandle: 0.33, endHandle: 0.2 };

/** The direction that goes down with a slant. */
export const downWith = (slant: Slant): Point => unit({ x: slant, y: 1 });

/** Millimetres to the side for each millimetre down between two points. */
export const chordSlant = (from: Point, to: Point): Slant => (to.x - from.x) / (to.y - from.y);

/**
 * One hollow line downwards, as an inseam runs: it starts slanting more than its chord and ends with a given slant.
 *
 * Its curvature has one sign while excess ≥ endHandle ÷ (1 − endHandle): then the slants of the three legs of its
 * control polygon are in order.
 *
 * @param from upper end
 * @param to lower end
 * @param end slant at the lower end (0 = upright)
 * @param hollow how it bends
 */
export function hollowLine(from: Point, to: Point, end: Slant, hollow: Hollow = LEG_HOLLOW): Curve {
  const chord = chordSlant(from, to);
  const start = chord + hollow.excess * (chord - end);
  const handle = (slant: Slant, share: number): Mm => share * (to.y - from.y) * Math.hypot(slant, 1);
  return curveFrom(
    from,
    downWith(start),
    handle(start, hollow.startHandle),
    to,
    downWith(end),
    handle(end, hollow.endHandle),
  );
}
