import { type Curve, distance, type Point } from '../../plane';
import type { DrawnRun } from './drawn';

/** A curve of the drawing between two places where curves meet. */
export interface Strand {
  readonly curve: Curve;
  readonly names: readonly string[];
  readonly from: number;
  readonly to: number;
}

/** All curves of a drawing, and where they meet. */
export interface Net {
  readonly strands: readonly Strand[];
  /** The strands at each place; one that begins and ends there stands twice. */
  readonly at: readonly (readonly number[])[];
  /** The widest gap at each place that was closed to make one of it. */
  readonly gaps: readonly number[];
}

/** Ends this near, in shares of what may be closed, are one place at once; wider gaps are closed only between loose ends. @source tolerance */
const SAME = 0.02;

/**
 * The curves of a drawing as a net: which of them meet where. The same curve drawn twice is taken once. Loose ends, where
 * no other curve begins, are joined with the nearest loose end, else with the nearest place, not farther than `within`.
 *
 * @param within the widest gap that is closed, in the drawing’s units
 */
export function netOf(runs: readonly DrawnRun[], within: number): Net {
  const same = within * SAME;
  const places = placesWithin(same);
  const seen = new Set<string>();
  const strands: Strand[] = [];
  for (const { curves, names } of runs)
    for (const curve of curves) {
      const [from, to] = [places.of(curve[0]), places.of(curve[3])];
      // What is shorter than the width of a place is none of its own.
      if (from === to && curve.every((p) => distance(p, curve[0]) <= same)) continue;
      const key = twinKey(curve, from, to, same);
      if (seen.has(key)) continue;
      seen.add(key);
      strands.push({ curve, names, from, to });
    }
  return joined(strands, places.points, within);
}

/** Two curves of one key lie on each other, whichever way they were drawn. */
function twinKey([, b, c]: Curve, from: number, to: number, same: number): string {
  const handle = ({ x, y }: Point) => `${Math.round(x / same / 4)} ${Math.round(y / same / 4)}`;
  return from < to || (from === to && b.x < c.x)
    ? `${from} ${to} ${handle(b)} ${handle(c)}`
    : `${to} ${from} ${handle(c)} ${handle(b)}`;
}

/** Places that are told apart where they lie farther from each other than `same`. */
function placesWithin(same: number) {
  const points: Point[] = [];
  const near = cells(points, same);
  return {
    points,
    of(p: Point): number {
      const found = near.about(p, same)[0];
      if (found !== undefined) return found;
      points.push(p);
      near.add(points.length - 1);
      return points.length - 1;
    },
  };
}

/** Points by the squares of a grid in which they lie, to find those near a place at once. */
function cells(points: readonly Point[], side: number) {
  const squares = new Map<string, number[]>();
  const square = (n: number) => Math.floor(n / side);
  return {
    add(i: number): void {
      const { x, y } = points[i] as Point;
      const key = `${square(x)} ${square(y)}`;
      const there = squares.get(key);
      if (there) there.push(i);
      else squares.set(key, [i]);
    },
    /** The nearest first. */
    about(p: Point, within: number): readonly number[] {
      const found: number[] = [];
      for (const dx of [-1, 0, 1])
        for (const dy of [-1, 0, 1])
          for (const i of squares.get(`${square(p.x) + dx} ${square(p.y) + dy}`) ?? [])
            if (distance(points[i] as Point, p) <= within) found.push(i);
      return found.sort((a, b) => distance(points[a] as Point, p) - distance(points[b] as Point, p));
    },
  };
}

/** The net with its loose ends joined. */
function joined(strands: readonly Strand[], points: readonly Point[], within: number): Net {
  const counts = points.map(() => 0);
  for (const { from, to } of strands) for (const end of [from, to]) counts[end] = (counts[end] ?? 0) + 1;
  const instead = points.map((_, i) => i);
  const gaps = points.map(() => 0);
  const all = cells(points, within);
  points.forEach((_, i) => {
    all.add(i);
  });
  const others = new Map(
    strands.flatMap(({ from, to }) => [
      [from, to],
      [to, from],
    ]),
  );
  const loose = points.flatMap((_, i) => (counts[i] === 1 ? [i] : []));
  const pairs = loose
    .flatMap((i) =>
      all
        .about(points[i] as Point, within)
        // A short line’s own other end is no neighbour.
        .filter((j) => j !== i && others.get(i) !== j)
        .map((j) => ({ i, j, gap: distance(points[i] as Point, points[j] as Point), both: counts[j] === 1 })),
    )
    .sort((a, b) => Number(b.both) - Number(a.both) || a.gap - b.gap);
  for (const { i, j, gap } of pairs) {
    if (instead[i] !== i || (counts[j] === 1 && instead[j] !== j) || instead[j] === i) continue;
    const place = instead[j] as number;
    instead[i] = place;
    gaps[place] = Math.max(gaps[place] as number, gap);
    // Two loose ends that were joined are loose no more.
    counts[i] = 2;
    if (counts[j] === 1) counts[j] = 2;
  }
  const moved = strands.map((strand) => ({
    ...strand,
    from: instead[strand.from] as number,
    to: instead[strand.to] as number,
  }));
  const at: number[][] = points.map(() => []);
  moved.forEach(({ from, to }, i) => {
    at[from]?.push(i);
    at[to]?.push(i);
  });
  return { strands: moved, at, gaps };
}
