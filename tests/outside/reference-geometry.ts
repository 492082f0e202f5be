import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory, { type Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import IsSimpleOp from 'jsts/org/locationtech/jts/operation/IsSimpleOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';

/** A general geometry library (JSTS, a port of the JTS Topology Suite), in the few words that the tests need. */
export type Pair = readonly [number, number];

const factory = new GeometryFactory();
const coordinates = (points: readonly Pair[]): Coordinate[] => points.map(([x, y]) => new Coordinate(x, y));

export const line = (points: readonly Pair[]): Geometry => factory.createLineString(coordinates(points));
export const lineLength = (points: readonly Pair[]): number => line(points).getLength();
export const fromLine = (to: Geometry, [x, y]: Pair): number =>
  DistanceOp.distance(to, factory.createPoint(new Coordinate(x, y)));
export const ringIsSimple = (points: readonly Pair[]): boolean => new IsSimpleOp(line(points)).isSimple();
export const ringArea = (points: readonly Pair[]): number => factory.createPolygon(coordinates(points)).getArea();

/** The points in which two polylines cross. */
export const lineCrossings = (a: readonly Pair[], b: readonly Pair[]): readonly Pair[] =>
  OverlayOp.intersection(line(a), line(b))
    .getCoordinates()
    .map(({ x, y }): Pair => [x, y]);

/** The x at which a polyline crosses a level, all of them. */
export function crossingsAt(points: readonly Pair[], y: number): readonly number[] {
  return points.slice(1).flatMap(([x2, y2], i) => {
    const [x1, y1] = points[i] as Pair;
    if ((y1 - y) * (y2 - y) > 0 || y1 === y2) return [];
    return [x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)];
  });
}

/** A point mirrored in the line through two others. */
export function mirroredIn([x, y]: Pair, [ax, ay]: Pair, [bx, by]: Pair): Pair {
  const [dx, dy] = [bx - ax, by - ay];
  const t = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
  return [2 * (ax + t * dx) - x, 2 * (ay + t * dy) - y];
}
