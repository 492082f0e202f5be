import { curveFrom, curveTangent } from './curve';
import { turnBetween } from './parallel';
import { distance, dot, linesMeet, subtract } from './point';
import type { Curve, Point } from './types';

/** A leg of a corner is never taken shorter than this share of the chord: below it the corner says nothing any more. */
const SHORTEST_LEG = 0.1;
/** Nor longer than this many chords: two directions that differ little meet far away, and a handle as long as that loops. @source tolerance */
const LONGEST_LEG = 1.25;
/** A handle that goes past the corner would make the curve bend back. */
const LONGEST_SHARE = 0.97;

/** Two directions that differ by less (radians, 9°) meet too far away to be a corner: the handles keep their share of the chord. */
const NEARLY_STRAIGHT = 0.15;

/** How far it is from a corner's two ends to the corner, along the directions there. */
interface Legs {
  readonly leaving: number;
  readonly arriving: number;
}

function legsOf(start: Point, wayStart: Point, end: Point, wayEnd: Point): Legs {
  const corner = linesMeet(start, wayStart, end, wayEnd) ?? start;
  const chord = distance(start, end);
  const within = (leg: number): number => Math.min(LONGEST_LEG * chord, Math.max(SHORTEST_LEG * chord, leg));
  return {
    leaving: within(dot(subtract(corner, start), wayStart)),
    arriving: within(dot(subtract(end, corner), wayEnd)),
  };
}

/**
 * The same bend between new ends: each handle keeps its share of the leg between its end and the corner in which the
 * two directions meet. So a curve drawn by hand keeps its fullness when its ends are moved or turned.
 *
 * @param curve the bend as it was
 * @param start new start, and the direction of travel there
 * @param end new end, and the direction of travel there
 */
export function curveReaimed(
  curve: Curve,
  start: { readonly at: Point; readonly way: Point },
  end: { readonly at: Point; readonly way: Point },
): Curve {
  const [a, b, c, d] = curve;
  if (Math.abs(turnBetween(start.way, end.way)) < NEARLY_STRAIGHT) {
    const stretch = distance(start.at, end.at) / distance(a, d);
    return curveFrom(start.at, start.way, stretch * distance(a, b), end.at, end.way, stretch * distance(c, d));
  }
  const old = legsOf(a, curveTangent(curve, 0), d, curveTangent(curve, 1));
  const now = legsOf(start.at, start.way, end.at, end.way);
  const share = (handle: number, leg: number) => Math.min(LONGEST_SHARE, handle / leg);
  return curveFrom(
    start.at,
    start.way,
    share(distance(a, b), old.leaving) * now.leaving,
    end.at,
    end.way,
    share(distance(c, d), old.arriving) * now.arriving,
  );
}

/**
 * A run of curves whose first start and last end are moved and turned; what lies between stays.
 *
 * @param path one curve or more
 * @param start new start, and the direction of travel there
 * @param end new end, and the direction of travel there
 */
export function pathReaimed(
  path: readonly Curve[],
  start: { readonly at: Point; readonly way: Point },
  end: { readonly at: Point; readonly way: Point },
): readonly Curve[] {
  const [first, last] = [path[0] as Curve, path.at(-1) as Curve];
  if (path.length === 1) return [curveReaimed(first, start, end)];
  return [
    curveReaimed(first, start, { at: first[3], way: curveTangent(first, 1) }),
    ...path.slice(1, -1),
    curveReaimed(last, { at: last[0], way: curveTangent(last, 0) }, end),
  ];
}
