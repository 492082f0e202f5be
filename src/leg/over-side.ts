import type { Mm } from '../length';
import { type Curve, type Point, pathThrough, point } from '../plane';

/** From its ends an edge that is raised over the side leaves level, and is level again over the side itself. */
const rise = (share: number): number => share * share * (3 - 2 * share);

/**
 * How much higher an edge across the leg lies at one place, where one hip is higher: nothing at both centres, all of it
 * over the side, in one smooth line between them.
 *
 * @param line the edge as it lies on a leg without it, from centre to centre
 * @param higher how much higher it lies over the side
 * @param x across, between the line's ends
 * @source practice
 */
export function riseAt([from, to]: readonly [Point, Point], higher: Mm, x: Mm): Mm {
  const side = sideOf([from, to]);
  const end = x < side === from.x < side ? from.x : to.x;
  return higher * rise(Math.min(1, Math.max(0, (x - end) / (side - end))));
}

/**
 * An edge across the leg, raised over the side.
 *
 * @param line from centre to centre
 * @param higher how much; 0 leaves the straight line
 */
export function overSide(line: readonly [Point, Point], higher: Mm): readonly Curve[] {
  const [from, to] = line;
  if (higher === 0) return pathThrough(from, to);
  const side = sideOf(line);
  const level = from.y + ((side - from.x) / (to.x - from.x)) * (to.y - from.y);
  const [toSide, fromSide] = pathThrough(from, point(side, level), to) as [Curve, Curve];
  const up = ({ x, y }: Point): Point => point(x, y - higher);
  // Of both curves the handles lie a third along, each as high as the end that it belongs to: that is {@link rise} itself.
  return [
    [toSide[0], toSide[1], up(toSide[2]), up(toSide[3])],
    [up(fromSide[0]), up(fromSide[1]), fromSide[2], fromSide[3]],
  ];
}

/** The side line; the middle where a line doesn't reach over it. */
const sideOf = ([from, to]: readonly [Point, Point]): Mm => (from.x * to.x < 0 ? 0 : (from.x + to.x) / 2);
