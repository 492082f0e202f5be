import { cross, distance, subtract } from './point';
import { mapTuple } from './tuple';
import type { Point } from './types';

/**
 * How one plane is seen in another, as through a camera: the nine numbers of a 3 × 3 matrix, row by row. Only their
 * ratios count; they are kept so that points within the four that made it have a positive third coordinate.
 */
export type Homography = readonly [number, number, number, number, number, number, number, number, number];

/** A point, and where it is seen. */
export interface Seen {
  readonly from: Point;
  readonly to: Point;
}

export type FourSeen = readonly [Seen, Seen, Seen, Seen];

/** Three corners nearer to a line than this share of their spread carry no perspective. @source tolerance */
const FLAT = 1e-3;

/**
 * The homography through four points and where each is seen: the direct linear transformation with both sets of points
 * normalised first.
 *
 * With four pairs the eight equations hold exactly, so that their null vector is found by elimination.
 *
 * @param seen four points in the order in which they lie round, on both sides
 * @source R. Hartley & A. Zisserman, *Multiple View Geometry in Computer Vision*, 2nd ed. 2004, algorithm 4.2, from memory
 * @returns undefined where the four cross over or three of them lie on a line, on either side
 */
export function homographyThrough(seen: FourSeen): Homography | undefined {
  const [from, to] = [seen.map((one) => one.from), seen.map((one) => one.to)];
  if (!isRound(from) || !isRound(to)) return undefined;
  const [near, far] = [normalising(from), normalising(to)];
  const rows = seen.flatMap((one) => {
    const { x, y } = near.normal(one.from);
    const { x: u, y: v } = far.normal(one.to);
    return [
      [0, 0, 0, -x, -y, -1, v * x, v * y, v],
      [x, y, 1, 0, 0, 0, -u * x, -u * y, -u],
    ];
  });
  const found = product(far.back, product(nullVector(rows), near.matrix));
  const [middle] = from as [Point];
  const sign = Math.sign(depth(found, middle));
  return mapTuple(found, (value) => value * sign);
}

/** Where a point is seen; undefined where it lies on the horizon or beyond it. */
export function homographyPoint(h: Homography, p: Point): Point | undefined {
  const w = depth(h, p);
  if (!(w > Number.EPSILON)) return undefined;
  return { x: (h[0] * p.x + h[1] * p.y + h[2]) / w, y: (h[3] * p.x + h[4] * p.y + h[5]) / w };
}

/** The way back, by the adjugate; its sign is kept, so that what was before the horizon stays before it. */
export function homographyInverse([a, b, c, d, e, f, g, h, i]: Homography): Homography {
  const adjugate = [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ] as const;
  const whole = a * (e * i - f * h) + b * (f * g - d * i) + c * (d * h - e * g);
  return mapTuple(adjugate, (value) => value / whole);
}

/** First `b`, then `a`. */
export const homographyAfter = (a: Homography, b: Homography): Homography => product(a, b);

const depth = (h: Homography, { x, y }: Point): number => h[6] * x + h[7] * y + h[8];

function product(a: readonly number[], b: readonly number[]): Homography {
  const at = (place: number) => {
    const [row, column] = [place - (place % 3), place % 3];
    return [0, 1, 2].reduce((sum, k) => sum + (a[row + k] as number) * (b[3 * k + column] as number), 0);
  };
  return mapTuple([0, 1, 2, 3, 4, 5, 6, 7, 8], at);
}

/** Whether four points lie round in their order, each a corner of its own. */
function isRound(points: readonly Point[]): boolean {
  const spread = Math.max(...points.map((p) => distance(p, points[0] as Point)));
  const turns = points.map((p, i) => {
    const [next, after] = [points[(i + 1) % 4] as Point, points[(i + 2) % 4] as Point];
    return cross(subtract(next, p), subtract(after, next)) / (spread * spread);
  });
  return turns.every((turn) => turn > FLAT) || turns.every((turn) => turn < -FLAT);
}

/** Moves and scales points so that their middle is 0 and their mean distance from it √2; and the way back. */
function normalising(points: readonly Point[]) {
  const count = points.length;
  const [x, y] = [points.reduce((sum, p) => sum + p.x, 0) / count, points.reduce((sum, p) => sum + p.y, 0) / count];
  const away = points.reduce((sum, p) => sum + distance(p, { x, y }), 0) / count;
  const s = Math.SQRT2 / away;
  const matrix: Homography = [s, 0, -s * x, 0, s, -s * y, 0, 0, 1];
  const back: Homography = [1 / s, 0, x, 0, 1 / s, y, 0, 0, 1];
  return { matrix, back, normal: (p: Point): Point => ({ x: s * (p.x - x), y: s * (p.y - y) }) };
}

/** The vector that eight independent equations in nine unknowns send to nothing: elimination with full pivoting. */
function nullVector(equations: readonly (readonly number[])[]): readonly number[] {
  const rows = equations.map((row) => [...row]);
  const order = [0, 1, 2, 3, 4, 5, 6, 7, 8];
  const entry = (row: number, column: number) => rows[row]?.[order[column] as number] as number;
  for (let step = 0; step < rows.length; step += 1) {
    let [pivotRow, pivotColumn] = [step, step];
    for (let row = step; row < rows.length; row += 1)
      for (let column = step; column < order.length; column += 1)
        if (Math.abs(entry(row, column)) > Math.abs(entry(pivotRow, pivotColumn)))
          [pivotRow, pivotColumn] = [row, column];
    [rows[step], rows[pivotRow]] = [rows[pivotRow] as number[], rows[step] as number[]];
    [order[step], order[pivotColumn]] = [order[pivotColumn] as number, order[step] as number];
    for (let row = 0; row < rows.length; row += 1) {
      if (row === step) continue;
      const factor = entry(row, step) / entry(step, step);
      rows[row] = (rows[row] as number[]).map((value, i) => value - factor * ((rows[step] as number[])[i] as number));
    }
  }
  const vector = new Array<number>(9).fill(0);
  vector[order[8] as number] = 1;
  for (let step = 0; step < rows.length; step += 1) vector[order[step] as number] = -entry(step, 8) / entry(step, step);
  return vector;
}
