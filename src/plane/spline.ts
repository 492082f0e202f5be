import { add, distance, scale, subtract } from './point';
import type { Curve, Point } from './types';

/**
 * A smooth curve through points: a cubic spline whose bend runs on at every point, and is kept over its first and its last
 * stretch. "Natural" ends, straight at the last point, would leave a crotch curve two to four times as far.
 *
 * The slopes come from the three-term equations of the cubic spline, with the chord lengths between the points as
 * parameter.
 *
 * @param points at least two, each away from the one before it
 * @returns a curve between each two points; a straight line where there are only two
 * @source C. de Boor, *A Practical Guide to Splines*, 1978, chapter IV, from memory
 */
export function curvesThrough(points: readonly Point[]): readonly Curve[] {
  const steps = points.slice(1).map((p, i) => distance(points[i] as Point, p));
  const chords = points.slice(1).map((p, i) => scale(subtract(p, points[i] as Point), 1 / (steps[i] as number)));
  const slopes = slopesThrough(chords, steps);
  return chords.map((_, i) => {
    const [a, d] = [points[i] as Point, points[i + 1] as Point];
    const third = (steps[i] as number) / 3;
    return [a, add(a, scale(slopes[i] as Point, third)), subtract(d, scale(slopes[i + 1] as Point, third)), d];
  });
}

/** The equation of one slope: so much of the one before, of itself and of the one after make up the sum. */
interface Row {
  readonly before: number;
  readonly own: number;
  readonly after: number;
  readonly sum: Point;
}

/** The slope at each point, by elimination down and up again. */
function slopesThrough(chords: readonly Point[], steps: readonly number[]): readonly Point[] {
  const [first, last] = [chords[0] as Point, chords.at(-1) as Point];
  if (chords.length === 1) return [first, first];
  const inner = chords.slice(1).map((chord, i): Row => {
    const [h, k] = [1 / (steps[i] as number), 1 / (steps[i + 1] as number)];
    return { before: h, own: 2 * (h + k), after: k, sum: add(scale(chords[i] as Point, 3 * h), scale(chord, 3 * k)) };
  });
  const rows: readonly Row[] = [
    { before: 0, own: 1, after: 1, sum: scale(first, 2) },
    ...inner,
    { before: 1, own: 1, after: 0, sum: scale(last, 2) },
  ];
  const down: Row[] = [];
  for (const row of rows) {
    const above = down.at(-1);
    const factor = above ? row.before / above.own : 0;
    down.push(
      above ? { ...row, own: row.own - factor * above.after, sum: subtract(row.sum, scale(above.sum, factor)) } : row,
    );
  }
  const slopes: Point[] = [];
  for (const { own, after, sum } of down.toReversed()) {
    const next = slopes[0] ?? { x: 0, y: 0 };
    slopes.unshift(scale(subtract(sum, scale(next, after)), 1 / own));
  }
  return slopes;
}
