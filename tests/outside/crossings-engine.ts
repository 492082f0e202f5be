import { type Curve, curveIsStraight, type Point } from '../../src/plane';
import { loadEngine } from '../../src/plane/engine';

const paper = await loadEngine();

/** A closed run of curves as a path of the reference engine; straight curves lose their handles, as it wants them. */
function enginePath(curves: readonly Curve[]): paper.Path {
  const arms = curves.map((curve) => (curveIsStraight(curve) ? NO_ARMS : armsOf(curve)));
  const segments = curves.map(
    ([a], i) =>
      new paper.Segment(new paper.Point(a.x, a.y), (arms.at(i - 1) ?? NO_ARMS).into, (arms[i] ?? NO_ARMS).out),
  );
  return new paper.Path({ segments, closed: true, insert: false });
}

const NO_ARMS = { out: new paper.Point(0, 0), into: new paper.Point(0, 0) };

const armsOf = ([a, b, c, d]: Curve) => ({
  out: new paper.Point(b.x - a.x, b.y - a.y),
  into: new paper.Point(c.x - d.x, c.y - d.y),
});

const points = (found: paper.CurveLocation[]): readonly Point[] =>
  found.map(({ point }) => ({ x: point.x, y: point.y }));

/** Points in which a closed run crosses itself, by the reference engine; smooth joins are among them. */
export const engineSelfCrossings = (curves: readonly Curve[]): readonly Point[] =>
  points(enginePath(curves).getIntersections(null as never));

/** Points in which two closed runs meet, by the reference engine. */
export const engineCrossings = (first: readonly Curve[], second: readonly Curve[]): readonly Point[] =>
  points(enginePath(first).getIntersections(enginePath(second)));

/** The area inside a closed run, by the reference engine. */
export const engineArea = (curves: readonly Curve[]): number => enginePath(curves).area;

/** Path data of an SVG file, as the reference engine reads it. */
export function engineReading(data: string): {
  readonly length: number;
  readonly area: number;
  readonly closed: boolean;
} {
  const path = paper.PathItem.create(data) as paper.Path;
  return { length: path.length, area: Math.abs(path.area), closed: path.closed };
}
