import type { Mm } from '../length';
import type { Point } from './types';

/** A point from its coordinates. */
export const point = (x: Mm, y: Mm): Point => ({ x, y });

export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const scale = (a: Point, factor: number): Point => ({ x: a.x * factor, y: a.y * factor });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/** Positive where b turns clockwise from a, as seen on the paper (y down). */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
// Not Math.hypot, which guards against figures that no drawing has and takes several times as long.
export const size = (a: Point): number => Math.sqrt(a.x * a.x + a.y * a.y);
export const distance = (a: Point, b: Point): Mm => Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);

/** From a towards b: 0 is a, 1 is b. */
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

/** `a` moved by `length` in the direction `way`. */
export const moved = (a: Point, way: Point, length: Mm): Point => ({
  x: a.x + way.x * length,
  y: a.y + way.y * length,
});

/** The vector at length 1; (0, 0) stays (0, 0). */
export function unit(a: Point): Point {
  const length = size(a);
  return length === 0 ? a : { x: a.x / length, y: a.y / length };
}

/** The unit normal on the left of a direction as seen on the paper: the outside of a clockwise outline. */
export const leftOf = (way: Point): Point => ({ x: way.y, y: -way.x });

/** `a` turned about `pivot`, clockwise as seen on the paper (y down), radians. */
export function turned(a: Point, pivot: Point, radians: number): Point {
  const cos = Math.cos(radians);
  const sin = Math.sin(radians);
  const dx = a.x - pivot.x;
  const dy = a.y - pivot.y;
  return { x: pivot.x + dx * cos - dy * sin, y: pivot.y + dx * sin + dy * cos };
}

/** `a` mirrored in the line through `on` and `other`. */
export function mirrored(a: Point, on: Point, other: Point): Point {
  const way = unit(subtract(other, on));
  const along = dot(subtract(a, on), way);
  const foot = moved(on, way, along);
  return { x: 2 * foot.x - a.x, y: 2 * foot.y - a.y };
}

/**
 * Where two straight lines, each through a point in a direction, meet.
 *
 * @returns undefined where they are parallel (to within 1e-12 of a radian)
 */
export function linesMeet(a: Point, wayA: Point, b: Point, wayB: Point): Point | undefined {
  const turn = cross(wayA, wayB);
  if (Math.abs(turn) < 1e-12 * size(wayA) * size(wayB)) return undefined;
  return moved(a, wayA, cross(subtract(b, a), wayB) / turn);
}
