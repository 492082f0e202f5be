import type { Mm } from '../length';
import { type Box, boxMeetsSegment, type Point, point } from '../plane';

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
export function tiltedBounds({ middle, way, half }: TiltedBox): Box {
  const x = half.along * Math.abs(way.x) + half.across * Math.abs(way.y);
  const y = half.along * Math.abs(way.y) + half.across * Math.abs(way.x);
  return { left: middle.x - x, right: middle.x + x, top: middle.y - y, bottom: middle.y + y };
}

/** The same, larger by as much on every side. */
export const tiltedGrown = (box: TiltedBox, by: Mm): TiltedBox => ({
  ...box,
  half: { along: box.half.along + by, across: box.half.across + by },
});

/** Whether a straight stretch touches it. */
export function tiltedMeetsSegment({ middle, way, half }: TiltedBox, a: Point, b: Point): boolean {
  const [ax, ay, bx, by] = [a.x - middle.x, a.y - middle.y, b.x - middle.x, b.y - middle.y];
  const { along, across } = half;
  return boxMeetsSegment(
    { left: -along, right: along, top: -across, bottom: across },
    { x: ax * way.x + ay * way.y, y: ay * way.x - ax * way.y },
    { x: bx * way.x + by * way.y, y: by * way.x - bx * way.y },
  );
}

/** Whether two share a point: they don't where a line along a side of one of them lies between them. */
export function tiltedMeet(a: TiltedBox, b: TiltedBox): boolean {
  const [x, y] = [b.middle.x - a.middle.x, b.middle.y - a.middle.y];
  // No corner is further from the middle than both halves together: most are told apart by this.
  const most = a.half.along + a.half.across + b.half.along + b.half.across;
  if (Math.abs(x) > most || Math.abs(y) > most) return false;
  return ![a.way, b.way].some((way) => between(a, b, x, y, way.x, way.y) || between(a, b, x, y, -way.y, way.x));
}

/** Whether two whose middles are so far apart leave room between them, seen along a direction. */
const between = (a: TiltedBox, b: TiltedBox, apartX: Mm, apartY: Mm, x: number, y: number): boolean =>
  Math.abs(apartX * x + apartY * y) > reach(a, x, y) + reach(b, x, y);

/** How far it reaches from its middle in a direction. */
const reach = ({ way, half }: TiltedBox, x: number, y: number): Mm =>
  half.along * Math.abs(way.x * x + way.y * y) + half.across * Math.abs(way.x * y - way.y * x);
