import { mapTuple, type Point } from '../../plane';
import { bent, straightenedBy } from './lens';
import { frameOf } from './shot-view';
import type { Shot } from './sightings';
import { nearMiddle, REACH } from './unknowns';

/** Where a shot should show a place of the plane, and how that moves with the place and with the shot's ten unknowns. */
export interface Predicted {
  readonly at: Point;
  /** Pixels a millimetre: of x by x and y, then of y. */
  readonly byPlace: { readonly xx: number; readonly xy: number; readonly yx: number; readonly yy: number };
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** Where a shot's own unknowns stand from where they begin. @source geometry */
const OWN = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9] as const;

/**
 * A place of the plane on the picture, with all derivatives.
 *
 * @param values all unknowns; those of the shot begin at `start`
 * @param middle of what the shot shows, millimetres
 * @param place on the plane, millimetres
 * @returns undefined where the shot can't show the place
 */
export function predicted(
  shot: Shot,
  values: readonly number[],
  start: number,
  middle: Point,
  place: Point,
): Predicted | undefined {
  const [a, b, c, d, e, f, g, h, k1, k2] = mapTuple(OWN, (i) => values[start + i] as number);
  const { x: mx, y: my } = nearMiddle(place, middle);
  const depth = g * mx + h * my + 1;
  if (!(depth > Number.EPSILON)) return undefined;
  const [u, v] = [(a * mx + b * my + c) / depth, (d * mx + e * my + f) / depth];
  const lens = { k1, k2 };
  const p = bent(lens, { x: u, y: v });
  if (!p) return undefined;
  // A step of the straight picture is undone by the inverse of how the lens moves it.
  const { xx, xy, yy } = straightenedBy(lens, p);
  const { middle: centre, half } = frameOf(shot);
  const whole = half / (xx * yy - xy * xy);
  const pixels = (du: number, dv: number): Point => ({
    x: whole * (yy * du - xy * dv),
    y: whole * (xx * dv - xy * du),
  });
  const [sx, sy, s1] = [mx / depth, my / depth, 1 / depth];
  const square = p.x * p.x + p.y * p.y;
  const steps = [
    pixels(sx, 0),
    pixels(sy, 0),
    pixels(s1, 0),
    pixels(0, sx),
    pixels(0, sy),
    pixels(0, s1),
    pixels(-u * sx, -v * sx),
    pixels(-u * sy, -v * sy),
    pixels(-p.x * square, -p.y * square),
    pixels(-p.x * square * square, -p.y * square * square),
  ];
  const byX = pixels((a - u * g) / depth / REACH, (d - v * g) / depth / REACH);
  const byY = pixels((b - u * h) / depth / REACH, (e - v * h) / depth / REACH);
  return {
    at: { x: centre.x + half * p.x, y: centre.y + half * p.y },
    byPlace: { xx: byX.x, xy: byY.x, yx: byX.y, yy: byY.y },
    x: steps.map((step) => step.x),
    y: steps.map((step) => step.y),
  };
}
