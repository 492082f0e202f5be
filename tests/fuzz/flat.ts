import type { Curve, Point } from '../../src/plane';

// Plain geometry of polylines, on its own: none of the drafting's functions is asked to judge the drafting.

/** A place of a polyline nearest to a point. */
export interface Foot {
  readonly away: number;
  /** Along the polyline up to here. */
  readonly arc: number;
  /** Signed distance beside the segment, carried on straight; left of its way is positive (y down: outside of a clockwise outline). */
  readonly beside: number;
  /** The nearest place is an end of the polyline. */
  readonly atEnd: boolean;
}

/** No chord leaves its curve by more. */
export const CHORD = 0.005;
const DEEPEST = 12;

export const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/**
 * Curves as one polyline whose points lie on them; each is halved until no chord leaves it by more than is asked.
 *
 * @param curves a run
 * @param chord millimetres
 */
export function flat(curves: readonly Curve[], chord: number = CHORD): readonly Point[] {
  const points: Point[] = [];
  for (const curve of curves) {
    if (points.length === 0) points.push(curve[0]);
    halved(curve, DEEPEST, chord, points);
  }
  return points;
}

function halved(curve: Curve, depth: number, chord: number, points: Point[]): void {
  const [a, b, c, d] = curve;
  // A cubic lies no farther from its chord, evenly run through, than ¾ of how far its handles lie from the thirds.
  const off = Math.max(fromThird(a, d, b), fromThird(d, a, c));
  if (depth === 0 || !(0.75 * off > chord)) {
    points.push(d);
    return;
  }
  const [ab, bc, cd] = [middle(a, b), middle(b, c), middle(c, d)];
  const [abc, bcd] = [middle(ab, bc), middle(bc, cd)];
  const half = middle(abc, bcd);
  halved([a, ab, abc, half], depth - 1, chord, points);
  halved([half, bcd, cd, d], depth - 1, chord, points);
}

const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
/** How far a handle is from where it would be on a straight line, but for its place along that line. */
function fromThird(from: Point, to: Point, handle: Point): number {
  return Math.hypot(handle.x - (2 * from.x + to.x) / 3, handle.y - (2 * from.y + to.y) / 3);
}

export function polylineLength(points: readonly Point[]): number {
  let sum = 0;
  for (let i = 1; i < points.length; i += 1) sum += apart(points[i - 1] as Point, points[i] as Point);
  return sum;
}

/** The nearest place on a polyline. */
export function footOn(points: readonly Point[], p: Point): Foot {
  let best: Foot = { away: Number.POSITIVE_INFINITY, arc: 0, beside: 0, atEnd: true };
  let before = 0;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const length = Math.hypot(dx, dy);
    if (length === 0) continue;
    const along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / length;
    const inside = Math.min(length, Math.max(0, along));
    const away = Math.hypot(a.x + (inside * dx) / length - p.x, a.y + (inside * dy) / length - p.y);
    if (away < best.away) {
      const atEnd = (i === 1 && along <= 0) || (i === points.length - 1 && along >= length);
      best = { away, arc: before + inside, beside: ((p.x - a.x) * dy - (p.y - a.y) * dx) / length, atEnd };
    }
    before += length;
  }
  return best;
}

/** Whether a closed polyline goes round a point (even–odd; a point on the line may count either way). */
export function holds(ring: readonly Point[], p: Point): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
    const [a, b] = [ring[i] as Point, ring[j] as Point];
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  }
  return inside;
}

/**
 * The largest loop by which a closed polyline crosses itself: the length of the shorter way round from the crossing back
 * to it; 0 where it is simple.
 *
 * @param ring closed: its last point is its first
 */
export function largestLoop(ring: readonly Point[]): number {
  const points = ring.filter((p, i) => i === 0 || apart(p, ring[i - 1] as Point) > 1e-9);
  const arcs = [0];
  for (let i = 1; i < points.length; i += 1)
    arcs.push((arcs[i - 1] as number) + apart(points[i - 1] as Point, points[i] as Point));
  const whole = arcs.at(-1) ?? 0;
  const order = points.slice(1).map((_, i) => i);
  // A leg is tall: few of its segments lie at one height.
  const top = order.map((i) => Math.min((points[i] as Point).y, (points[i + 1] as Point).y));
  const bottom = order.map((i) => Math.max((points[i] as Point).y, (points[i + 1] as Point).y));
  order.sort((a, b) => (top[a] as number) - (top[b] as number));
  let largest = 0;
  order.forEach((i, n) => {
    for (let m = n + 1; m < order.length; m += 1) {
      const j = order[m] as number;
      if ((top[j] as number) > (bottom[i] as number)) break;
      const [first, last] = i < j ? [i, j] : [j, i];
      if (last - first < 2 || (first === 0 && last === points.length - 2)) continue;
      const at = crossing(points[i] as Point, points[i + 1] as Point, points[j] as Point, points[j + 1] as Point);
      if (at === undefined) continue;
      const [from, to] = i < j ? at : [at[1], at[0]];
      const step = (k: number) => (arcs[k + 1] as number) - (arcs[k] as number);
      const way = (arcs[last] as number) + to * step(last) - (arcs[first] as number) - from * step(first);
      largest = Math.max(largest, Math.min(way, whole - way));
    }
  });
  return largest;
}

/** Where two segments cross, as shares of both; undefined where they don't, or lie along each other. */
function crossing(a: Point, b: Point, c: Point, d: Point): readonly [number, number] | undefined {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const turn = ux * vy - uy * vx;
  if (turn === 0) return undefined;
  const t = ((c.x - a.x) * vy - (c.y - a.y) * vx) / turn;
  const s = ((c.x - a.x) * uy - (c.y - a.y) * ux) / turn;
  return t >= 0 && t <= 1 && s >= 0 && s <= 1 ? [t, s] : undefined;
}

/** How wide a closed polyline is across a level, from the last crossing left of x = 0 to the first right of it; undefined where it doesn't reach. */
export function widthAt(ring: readonly Point[], y: number): number | undefined {
  let [left, right] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let i = 1; i < ring.length; i += 1) {
    const [a, b] = [ring[i - 1] as Point, ring[i] as Point];
    if (a.y > y === b.y > y) continue;
    const x = a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
    if (x < 0) left = Math.max(left, x);
    else right = Math.min(right, x);
  }
  return Number.isFinite(right - left) ? right - left : undefined;
}

/** An outline's edges as one closed polyline. */
export function ringOf(
  edges: readonly { readonly curves: readonly Curve[] }[],
  chord: number = CHORD,
): readonly Point[] {
  return flat(
    edges.flatMap(({ curves }) => curves),
    chord,
  );
}
