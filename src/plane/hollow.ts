import type { Mm } from '../length';
import { curveFrom } from './curve';
import { distance, unit } from './point';
import type { Curve, Point } from './types';

/** Lengths of the two handles as shares of the chord: the bend sits high, where a leg is hollowed (from the recipe). */
const START_HANDLE = 0.33;
const END_HANDLE = 0.2;

/** The start slants this much more than the chord, measured against the end's own slant (from the recipe: 1.3 × chord at a vertical end). */
const START_EXCESS = 0.3;

/** Slant: millimetres to the side for each millimetre down. */
export type Slant = number;

/** The direction that goes down with a slant. */
export const downWith = (slant: Slant): Point => unit({ x: slant, y: 1 });

/** The slant with which a hollow line that ends with `end` starts, if its chord slants by `chord`. */
export const hollowStart = (chord: Slant, end: Slant): Slant => chord + START_EXCESS * (chord - end);

/**
 * One hollow line downwards, as an inseam runs: it starts steeper to the side than its chord and ends with a given slant.
 * Its curvature has one sign by construction, since start, chord and end slants are in order.
 *
 * @param from upper end
 * @param to lower end
 * @param end slant at the lower end (0 = vertical)
 * @param start slant at the upper end; by default as {@link hollowStart} says
 */
export function hollowLine(from: Point, to: Point, end: Slant, start: Slant = hollowStart(chordSlant(from, to), end)): Curve {
  const chord: Mm = distance(from, to);
  return curveFrom(from, downWith(start), START_HANDLE * chord, to, downWith(end), END_HANDLE * chord);
}

/** Millimetres to the side for each millimetre down between two points. */
export const chordSlant = (from: Point, to: Point): Slant => (to.x - from.x) / (to.y - from.y);
