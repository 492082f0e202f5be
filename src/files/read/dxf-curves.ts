import { arcCurves, bulgeCurves, type Curve, type Point, point, splineCurves, straight } from '../../plane';
import { type DxfThing, figure, figures, word } from './dxf-pairs';

/** What a line of the file draws: runs of curves in its own coordinates, y up; undefined where that can’t be told. */
export type DxfRuns = readonly (readonly Curve[])[] | undefined;

const DEGREE = Math.PI / 180;
/** Splines become cubics as near as this share of their size. */
const NEAR = 2e-6;
/** Of a higher degree none is drawn. */
const HIGHEST_DEGREE = 5;

/** Whether a thing lies in the plane of the drawing, and whether it is seen from behind; undefined where it is tilted. */
export function behind(thing: DxfThing): boolean | undefined {
  const [x, y, z] = [figure(thing, 210, 0), figure(thing, 220, 0), figure(thing, 230, 1)];
  if (Math.abs(x) > 1e-6 || Math.abs(y) > 1e-6 || Math.abs(Math.abs(z) - 1) > 1e-6) return undefined;
  return z < 0;
}

/** What draws a line, and how. */
const DRAWN: Readonly<Record<string, (thing: DxfThing) => DxfRuns>> = {
  LINE: (thing) => [[straight(pointAt(thing, 10), pointAt(thing, 11))]],
  ARC: (thing) => {
    const [from, to] = [figure(thing, 50, 0), figure(thing, 51, 360)];
    return circle(thing, from * DEGREE, turnTo(from, to) * DEGREE);
  },
  CIRCLE: (thing) => circle(thing, 0, 2 * Math.PI),
  ELLIPSE: ellipse,
  LWPOLYLINE: (thing) => polyline(lightVertices(thing), (figure(thing, 70, 0) & 1) === 1, thing),
  SPLINE: spline,
};

/** Kinds that draw lines. */
export const isDrawn = (kind: string): boolean => Object.hasOwn(DRAWN, kind);

/** The runs of a thing, in its own coordinates. */
export const runsOfThing = (thing: DxfThing): DxfRuns => DRAWN[thing.kind]?.(thing);

const pointAt = (thing: DxfThing, code: number): Point => point(figure(thing, code, 0), figure(thing, code + 10, 0));

/** How far it is onward from one angle to another, degrees, 0 excluded. */
const turnTo = (from: number, to: number): number => {
  const sweep = (((to - from) % 360) + 360) % 360;
  return sweep === 0 ? 360 : sweep;
};

function circle(thing: DxfThing, from: number, sweep: number): DxfRuns {
  const radius = figure(thing, 40, Number.NaN);
  const flip = behind(thing);
  if (!(radius > 0) || flip === undefined) return undefined;
  return [mirroredIf(flip, arcCurves(pointAt(thing, 10), point(radius, 0), point(0, radius), from, sweep))];
}

function ellipse(thing: DxfThing): DxfRuns {
  const [across, ratio] = [pointAt(thing, 11), figure(thing, 40, 1)];
  const [from, to] = [figure(thing, 41, 0), figure(thing, 42, 2 * Math.PI)];
  const flip = behind(thing);
  if (flip === undefined || !(ratio > 0)) return undefined;
  const side = flip ? -ratio : ratio;
  const sweep = turnTo(from / DEGREE, to / DEGREE) * DEGREE;
  return [arcCurves(pointAt(thing, 10), across, point(-side * across.y, side * across.x), from, sweep)];
}

function spline(thing: DxfThing): DxfRuns {
  const degree = figure(thing, 71, 3);
  const [xs, ys] = [figures(thing, 10), figures(thing, 20)];
  const weights = figures(thing, 41);
  if (degree > HIGHEST_DEGREE || xs.length !== ys.length) return undefined;
  const size = Math.max(...extent(xs), ...extent(ys));
  const curves = splineCurves(
    {
      degree,
      knots: figures(thing, 40),
      points: xs.map((x, i) => point(x, ys[i] as number)),
      ...(weights.length > 0 && { weights }),
    },
    NEAR * size,
  );
  return curves && [curves];
}

const extent = (values: readonly number[]): readonly number[] => {
  let [least, most] = [Infinity, -Infinity];
  for (const value of values) [least, most] = [Math.min(least, value), Math.max(most, value)];
  return [most - least];
};

/** A corner of a polyline, and how its line to the next one bulges. */
export interface Vertex {
  readonly at: Point;
  readonly bulge: number;
}

function lightVertices({ pairs }: DxfThing): readonly Vertex[] {
  const vertices: { x: number; y: number; bulge: number }[] = [];
  for (const [code, value] of pairs) {
    if (code === 10) vertices.push({ x: Number(value), y: 0, bulge: 0 });
    const last = vertices.at(-1);
    if (last && code === 20) last.y = Number(value);
    if (last && code === 42) last.bulge = Number(value);
  }
  return vertices.map(({ x, y, bulge }) => ({ at: point(x, y), bulge }));
}

/** The vertex of an old polyline; undefined where it only frames a spline through others. */
export const vertexOf = (thing: DxfThing): Vertex | undefined =>
  (figure(thing, 70, 0) & 16) === 16 ? undefined : { at: pointAt(thing, 10), bulge: figure(thing, 42, 0) };

/** A polyline by its vertices; `thing` is what they belong to. */
export function polyline(vertices: readonly Vertex[], closed: boolean, thing: DxfThing): DxfRuns {
  const flip = behind(thing);
  if (flip === undefined) return undefined;
  const next = closed ? [...vertices.slice(1), ...vertices.slice(0, 1)] : vertices.slice(1);
  const curves = next.flatMap(({ at }, i) => {
    const { at: from, bulge } = vertices[i] as Vertex;
    return from.x === at.x && from.y === at.y ? [] : bulgeCurves(from, at, bulge);
  });
  return curves.length > 0 ? [mirroredIf(flip, curves)] : [];
}

const mirroredIf = (flip: boolean, curves: readonly Curve[]): readonly Curve[] =>
  flip ? curves.map((curve) => curve.map(({ x, y }) => point(-x, y)) as [Point, Point, Point, Point]) : curves;

/** The words of a note, without the signs by which a program sets them. */
export function noteOf(thing: DxfThing): string {
  if (thing.kind === 'TEXT') return word(thing, 1);
  const whole = thing.pairs.flatMap(([code, value]) => (code === 3 || code === 1 ? [value] : [])).join('');
  return whole
    .replace(/\\P/g, ' ')
    .replace(/\\[A-Za-z][^;\\{}]{0,40};/g, '')
    .replace(/[{}]/g, '');
}

export const noteAt = (thing: DxfThing): Point => pointAt(thing, 10);
