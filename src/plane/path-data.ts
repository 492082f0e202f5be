import SvgPath from 'svgpath';
import { straight } from './curve';
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
  const whole = new SvgPath(data);
  if ('err' in whole && whole.err) return undefined;
  const { a, b, c, d, e, f } = place;
  const at = (x: number, y: number): Point => ({ x: a * x + c * y + e, y: b * x + d * y + f });
  const runs: Curve[][] = [];
  let run: Curve[] = [];
  let first: Point = at(0, 0);
  const add = (curve: Curve) => {
    // A pen that is set down and not moved draws nothing.
    if (curve.some((p) => !samePoint(p, curve[0]))) run.push(curve);
  };
  whole
    .abs()
    .unshort()
    .unarc()
    .iterate((segment, _i, x, y) => {
      const [command, ...figures] = segment as [string, ...number[]];
      const here = at(x, y);
      const point = (i: number) => at(figures[i] ?? Number.NaN, figures[i + 1] ?? Number.NaN);
      if (command === 'M') {
        runs.push(run);
        run = [];
        first = point(0);
      } else if (command === 'Z') add(straight(here, first));
      else if (command === 'H') add(straight(here, at(figures[0] ?? Number.NaN, y)));
      else if (command === 'V') add(straight(here, at(x, figures[0] ?? Number.NaN)));
      else if (command === 'L') add(straight(here, point(0)));
      else if (command === 'Q') add(cubicOf(here, point(0), point(2)));
      else add(plainly([here, point(0), point(2), point(4)]));
    });
  runs.push(run);
  const drawn = runs.filter(({ length }) => length > 0);
  return drawn.flat(2).every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)) ? drawn : undefined;
}

const samePoint = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;

/** A curve without handles is a straight line. */
const plainly = (curve: Curve): Curve =>
  samePoint(curve[0], curve[1]) && samePoint(curve[2], curve[3]) ? straight(curve[0], curve[3]) : curve;

/** The same curve of a degree more (degree elevation). */
function cubicOf(start: Point, handle: Point, end: Point): Curve {
  const toward = (p: Point): Point => ({ x: p.x + ((handle.x - p.x) * 2) / 3, y: p.y + ((handle.y - p.y) * 2) / 3 });
  return [start, toward(start), toward(end), end];
}
