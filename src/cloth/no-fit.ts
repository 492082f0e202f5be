import type { Mm } from '../length';
import { cross, type Point, subtract } from '../plane';
import { type Shape, shapesOverlap } from './shape';

/** A straight stretch along which one shape can slide on another. */
export interface Slide {
  readonly from: Point;
  readonly to: Point;
}

/**
 * Every stretch on which a shape may be moved while it touches another: an edge of the one at a bulging corner of the
 * other. The edge of what is forbidden – the no-fit polygon – consists of parts of these.
 *
 * After Behar & Lien, *Fast and robust 2D Minkowski sum using reduced convolution*, IROS 2011: only corners that bulge
 * count, and only where an edge's direction lies between those of the corner's own two edges.
 *
 * @param fixed lies at (0, 0)
 * @param moving is moved by the points of the slides
 */
export function slidesOf(fixed: Shape, moving: Shape): readonly Slide[] {
  const turned = moving.points.map((p) => ({ x: -p.x, y: -p.y }));
  return [...edgesAtCorners(fixed.points, turned), ...edgesAtCorners(turned, fixed.points)];
}

const EVEN = -1e-9;

function edgesAtCorners(edges: readonly Point[], corners: readonly Point[]): readonly Slide[] {
  const count = corners.length;
  const bulging = corners.flatMap((at, i) => {
    const into = subtract(at, corners[(i + count - 1) % count] as Point);
    const out = subtract(corners[(i + 1) % count] as Point, at);
    return cross(into, out) > 0 ? [{ at, into, out }] : [];
  });
  const slides: Slide[] = [];
  edges.forEach((to, i) => {
    const from = edges[(i + edges.length - 1) % edges.length] as Point;
    const way = subtract(to, from);
    for (const { at, into, out } of bulging) {
      if (cross(into, way) < EVEN || cross(way, out) < EVEN) continue;
      slides.push({ from: { x: from.x + at.x, y: from.y + at.y }, to: { x: to.x + at.x, y: to.y + at.y } });
    }
  });
  return slides;
}

/** Where a shape may come to lie: between two levels across, and from a level on downwards. */
export interface Field {
  readonly left: Mm;
  readonly right: Mm;
  readonly top: Mm;
  readonly bottom: Mm;
}

/**
 * All points in a field at which slides end, cross each other, or cross the field's sides: the shortest lay puts its
 * last piece on one of them.
 */
export function slideMeetings(slides: readonly Slide[], field: Field): readonly Point[] {
  const near = slides.filter((slide) => touches(slide, field));
  const found: Point[] = [];
  const keep = (x: Mm, y: Mm): void => {
    if (x >= field.left && x <= field.right && y >= field.top && y <= field.bottom) found.push({ x, y });
  };
  for (const { from, to } of near) {
    keep(from.x, from.y);
    keep(to.x, to.y);
    for (const point of onUpright(from, to, field.left)) keep(field.left, point);
    for (const point of onUpright(from, to, field.right)) keep(field.right, point);
    for (const point of onLevel(from, to, field.top)) keep(point, field.top);
  }
  for (let i = 1; i < near.length; i += 1) {
    const { from: a, to: b } = near[i] as Slide;
    const [left, right] = a.x < b.x ? [a.x, b.x] : [b.x, a.x];
    const [top, bottom] = a.y < b.y ? [a.y, b.y] : [b.y, a.y];
    const [ux, uy] = [b.x - a.x, b.y - a.y];
    for (let k = 0; k < i; k += 1) {
      const { from: c, to: d } = near[k] as Slide;
      if (c.x < left && d.x < left) continue;
      if (c.x > right && d.x > right) continue;
      if (c.y < top && d.y < top) continue;
      if (c.y > bottom && d.y > bottom) continue;
      const [vx, vy] = [d.x - c.x, d.y - c.y];
      const turn = ux * vy - uy * vx;
      if (turn === 0) continue;
      const t = ((c.x - a.x) * vy - (c.y - a.y) * vx) / turn;
      const s = ((c.x - a.x) * uy - (c.y - a.y) * ux) / turn;
      if (t >= 0 && t <= 1 && s >= 0 && s <= 1) keep(a.x + t * ux, a.y + t * uy);
    }
  }
  return found;
}

const touches = ({ from, to }: Slide, field: Field): boolean =>
  Math.max(from.x, to.x) >= field.left &&
  Math.min(from.x, to.x) <= field.right &&
  Math.max(from.y, to.y) >= field.top &&
  Math.min(from.y, to.y) <= field.bottom;

/** The levels at which a slide crosses an upright line. */
export function onUpright(from: Point, to: Point, x: Mm): readonly Mm[] {
  if ((from.x - x) * (to.x - x) > 0 || from.x === to.x) return [];
  return [from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x)];
}

/** Where across a slide crosses a level. */
export function onLevel(from: Point, to: Point, y: Mm): readonly Mm[] {
  if ((from.y - y) * (to.y - y) > 0 || from.y === to.y) return [];
  return [from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y)];
}

/** A shape at its place. */
export interface Laid {
  readonly shape: Shape;
  readonly at: Point;
}

/** Whether a shape at a point lies clear of everything that is laid. */
export const isClear = (shape: Shape, at: Point, laid: readonly Laid[]): boolean =>
  laid.every((other) => !shapesOverlap(other.shape, shape, at.x - other.at.x, at.y - other.at.y));
