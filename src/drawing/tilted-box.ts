import type { Mm } from '../length';
import { type Box, boxMeetsSegment, dot, type Point, point, pointsBounds, subtract } from '../plane';

/** An oblong that may lie askew, as a line of words does. */
export interface TiltedBox {
  readonly middle: Point;
  /** The direction of its length, length 1. */
  readonly way: Point;
  /** Half its length and half its height. */
  readonly half: { readonly along: Mm; readonly across: Mm };
}

/** An upright box as a tilted one. */
export const tiltedOf = ({ left, top, right, bottom }: Box): TiltedBox => ({
  middle: point((left + right) / 2, (top + bottom) / 2),
  way: point(1, 0),
  half: { along: (right - left) / 2, across: (bottom - top) / 2 },
});

/** Its four corners, one after the other round it. */
export function tiltedCorners({ middle, way, half }: TiltedBox): readonly Point[] {
  const corner = (along: Mm, across: Mm) =>
    point(middle.x + way.x * along - way.y * across, middle.y + way.y * along + way.x * across);
  const { along, across } = half;
  return [corner(-along, -across), corner(along, -across), corner(along, across), corner(-along, across)];
}

/** The least upright box round it. */
export const tiltedBounds = (box: TiltedBox): Box => pointsBounds(tiltedCorners(box));

/** The same, larger by as much on every side. */
export const tiltedGrown = (box: TiltedBox, by: Mm): TiltedBox => ({
  ...box,
  half: { along: box.half.along + by, across: box.half.across + by },
});

/** Whether a straight stretch touches it. */
export function tiltedMeetsSegment({ middle, way, half }: TiltedBox, a: Point, b: Point): boolean {
  const own = (p: Point): Point => {
    const [x, y] = [p.x - middle.x, p.y - middle.y];
    return point(x * way.x + y * way.y, y * way.x - x * way.y);
  };
  const { along, across } = half;
  return boxMeetsSegment({ left: -along, right: along, top: -across, bottom: across }, own(a), own(b));
}

/** Whether two share a point: they don't where a line along a side of one of them lies between them. */
export function tiltedMeet(a: TiltedBox, b: TiltedBox): boolean {
  const apart = subtract(b.middle, a.middle);
  const axes = [a.way, b.way].flatMap((way) => [way, point(-way.y, way.x)]);
  return axes.every((axis) => Math.abs(dot(apart, axis)) <= reach(a, axis) + reach(b, axis));
}

/** How far it reaches from its middle in a direction. */
const reach = ({ way, half }: TiltedBox, axis: Point): Mm =>
  half.along * Math.abs(dot(way, axis)) + half.across * Math.abs(way.x * axis.y - way.y * axis.x);
