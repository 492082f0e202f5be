import type { Mm } from '../length';
import { type Point, pointsBounds } from '../plane';

/** A part of a shape between two levels across: straight above and straight below. */
export interface Slab {
  readonly left: Mm;
  readonly right: Mm;
  /** Of the upper line, at the left and at the right. */
  readonly top: readonly [Mm, Mm];
  /** Of the lower line. */
  readonly bottom: readonly [Mm, Mm];
}

/** How a piece lies on the cloth. */
export interface Way {
  /** Whether its printed side lies down. */
  readonly mirrored: boolean;
  /** Degrees clockwise as seen, after mirroring. */
  readonly turn: number;
}

/** A piece as it lies on the cloth one way, ready to be placed: its left and its top are 0. */
export interface Shape extends Way {
  /** Clockwise. */
  readonly points: readonly Point[];
  readonly width: Mm;
  readonly height: Mm;
  /** Where the piece's own origin lies. */
  readonly origin: Point;
  /** From left to right. */
  readonly slabs: readonly Slab[];
}

/**
 * A polygon of a piece, laid one way.
 *
 * @param polygon clockwise, in the piece's own coordinates
 * @param way mirrored first, in its own upright axis, then turned
 */
export function shapeOf(polygon: readonly Point[], way: Way): Shape {
  const laid = polygon.map((p) => laidPoint(p, way));
  const { left, top, right, bottom } = pointsBounds(laid);
  const moved = laid.map((p) => ({ x: p.x - left, y: p.y - top }));
  const points = way.mirrored ? moved.reverse() : moved;
  return {
    ...way,
    points,
    width: right - left,
    height: bottom - top,
    origin: { x: -left, y: -top },
    slabs: slabsOf(points),
  };
}

/** A point of a piece, laid one way about the piece's own origin. */
export function laidPoint(p: Point, { mirrored, turn }: Way): Point {
  const x = mirrored ? -p.x : p.x;
  if (turn === 0) return { x, y: p.y };
  if (turn === 180) return { x: -x, y: -p.y };
  const angle = (turn * Math.PI) / 180;
  return { x: x * Math.cos(angle) - p.y * Math.sin(angle), y: x * Math.sin(angle) + p.y * Math.cos(angle) };
}

/** Corners closer than this across share a slab's end. */
const SAME = 1e-9;

function slabsOf(points: readonly Point[]): readonly Slab[] {
  const ends = [...new Set(points.map((p) => p.x))].sort((a, b) => a - b);
  return ends.slice(1).flatMap((right, i) => {
    const left = ends[i] as Mm;
    return right - left < SAME ? [] : slabsBetween(points, left, right);
  });
}

function slabsBetween(points: readonly Point[], left: Mm, right: Mm): readonly Slab[] {
  const lines: [Mm, Mm][] = [];
  points.forEach((b, i) => {
    const a = points[(i + points.length - 1) % points.length] as Point;
    if (Math.min(a.x, b.x) > left || Math.max(a.x, b.x) < right) return;
    const at = (x: Mm): Mm => a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
    lines.push([at(left), at(right)]);
  });
  lines.sort((a, b) => a[0] + a[1] - b[0] - b[1]);
  const slabs: Slab[] = [];
  for (let i = 1; i < lines.length; i += 2) {
    slabs.push({ left, right, top: lines[i - 1] as [Mm, Mm], bottom: lines[i] as [Mm, Mm] });
  }
  return slabs;
}

/** Pieces that share less than this in width and in height only touch: a hundredth of a pencil line. */
const TOUCHING = 0.005;

/**
 * Whether two shapes lie on each other, and don't only touch.
 *
 * @param a at (0, 0)
 * @param b moved by (dx, dy)
 */
export function shapesOverlap(a: Shape, b: Shape, dx: Mm, dy: Mm): boolean {
  if (dx >= a.width || dy >= a.height || dx + b.width <= 0 || dy + b.height <= 0) return false;
  let first = 0;
  for (const p of a.slabs) {
    while (first < b.slabs.length && (b.slabs[first] as Slab).right + dx <= p.left) first += 1;
    for (let i = first; i < b.slabs.length; i += 1) {
      const q = b.slabs[i] as Slab;
      if (q.left + dx >= p.right) break;
      if (slabsOverlap(p, q, dx, dy)) return true;
    }
  }
  return false;
}

const on = (line: readonly [Mm, Mm], share: number): Mm => line[0] + (line[1] - line[0]) * share;

function slabsOverlap(p: Slab, q: Slab, dx: Mm, dy: Mm): boolean {
  const left = Math.max(p.left, q.left + dx);
  const right = Math.min(p.right, q.right + dx);
  if (right - left <= TOUCHING) return false;
  const inP = (x: Mm): number => (x - p.left) / (p.right - p.left);
  const inQ = (x: Mm): number => (x - dx - q.left) / (q.right - q.left);
  // How far q's lower line lies below p's upper one, and p's lower one below q's upper one: both straight in x.
  const under = (x: Mm): Mm => on(q.bottom, inQ(x)) + dy - on(p.top, inP(x)) - TOUCHING;
  const over = (x: Mm): Mm => on(p.bottom, inP(x)) - on(q.top, inQ(x)) - dy - TOUCHING;
  const a = positivePart(under(left), under(right));
  const b = positivePart(over(left), over(right));
  if (!a || !b) return false;
  return (Math.min(a[1], b[1]) - Math.max(a[0], b[0])) * (right - left) > TOUCHING;
}

/** Where on the way from 0 to 1 a straight line is above nothing. */
function positivePart(start: number, end: number): readonly [number, number] | undefined {
  if (start <= 0 && end <= 0) return undefined;
  if (start > 0 && end > 0) return [0, 1];
  const zero = start / (start - end);
  return start > 0 ? [0, zero] : [zero, 1];
}
