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

/** A thigh's line to an upright knee: the start slants 1.3 × the chord; the bend sits high. @source practice */
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

/** The least excess: a hollow that a hand still sees, with its bend just above the lower end. */
const LEAST_EXCESS = 0.26;

/**
 * A lounge pant's inseam that starts no steeper than it may: where its hollow would, it is hollowed less, but never
 * less than a hand still sees. Whether even that is too steep, {@link slantExcess} tells.
 *
 * @param from upper end
 * @param to lower end
 * @param end slant at the lower end (0 = upright)
 * @param steepest the slant at which it may start
 * @param hollow how it bends where nothing hinders it
 */
export function hollowLineWithin(
  from: Point,
  to: Point,
  end: Slant,
  steepest: Slant,
  hollow: Hollow = LEG_HOLLOW,
): Curve {
  const chord = chordSlant(from, to);
  const bend = Math.abs(chord - end);
  const allowed = bend < 1e-9 ? hollow.excess : (steepest - Math.abs(chord)) / bend;
  const excess = Math.min(hollow.excess, Math.max(LEAST_EXCESS, allowed));
  // The longest lower handle, up to the usual one, with which a line of this excess bends one way only.
  const endHandle = Math.min(hollow.endHandle, excess / (1 + excess));
  return hollowLine(from, to, end, { ...hollow, excess, endHandle });
}

/**
 * How far to the side the lower end of a hollow line must move, towards its upper end, so that the line starts no
 * steeper than it may; 0 where it doesn't.
 *
 * @param from upper end
 * @param to lower end
 * @param end slant at the lower end, signed as the chord's
 * @param steepest the slant at which it may start
 * @param excess of the hollow; the least one where it isn't given
 */
export function slantExcess(from: Point, to: Point, end: Slant, steepest: Slant, excess = LEAST_EXCESS): Mm {
  const chord = chordSlant(from, to);
  const along = chord < 0 ? -end : end;
  return Math.max(0, Math.abs(chord) - (steepest + excess * along) / (1 + excess)) * (to.y - from.y);
}
