import { straight } from './curve';
import { engine } from './engine';
import type { Curve, Point } from './types';

/** An affine map: x′ = ax + cy + e, y′ = bx + dy + f (as SVG 2 numbers its matrix). */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** What path data may consist of: the commands and figures of SVG 2, chapter 9. */
const PATH_DATA = /^\s*[Mm][\s\d.,+\-eEMmZzLlHhVvCcSsQqTtAa]*$/;

/**
 * The cubic curves of SVG path data, arcs and quadratics turned into cubics.
 *
 * @param data the `d` of a path, after SVG 2, chapter 9
 * @param place maps the path's own coordinates
 * @returns its runs, each of curves that follow one another; undefined where the data can't be read
 */
export function pathDataRuns(data: string, place: Affine): readonly (readonly Curve[])[] | undefined {
  if (!PATH_DATA.test(data)) return undefined;
  const whole = new engine.CompoundPath({ pathData: data, insert: false });
  const runs = (whole.children as paper.Path[]).map((path) => path.curves.map((curve) => curveOf(curve, place)));
  whole.remove();
  const drawn = runs.filter((run) => run.length > 0);
  const all = drawn.flat(2);
  return all.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)) ? drawn : undefined;
}

function curveOf(drawn: paper.Curve, { a, b, c, d, e, f }: Affine): Curve {
  const { point1, handle1, handle2, point2 } = drawn;
  const at = (x: number, y: number): Point => ({ x: a * x + c * y + e, y: b * x + d * y + f });
  const [start, end] = [at(point1.x, point1.y), at(point2.x, point2.y)];
  if (!drawn.hasHandles()) return straight(start, end);
  return [start, at(point1.x + handle1.x, point1.y + handle1.y), at(point2.x + handle2.x, point2.y + handle2.y), end];
}
