declare module 'jsts/org/locationtech/jts/geom/Coordinate.js' {
  export default class Coordinate {
    constructor(x: number, y: number);
    readonly x: number;
    readonly y: number;
  }
}
declare module 'jsts/org/locationtech/jts/geom/GeometryFactory.js' {
  import type Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
  export interface Geometry {
    getLength(): number;
    getArea(): number;
    getCoordinates(): readonly Coordinate[];
  }
  export default class GeometryFactory {
    createLineString(points: readonly Coordinate[]): Geometry;
    createPoint(point: Coordinate): Geometry;
    createPolygon(points: readonly Coordinate[]): Geometry;
  }
}
declare module 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js' {
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';

  const DistanceOp: { distance(a: Geometry, b: Geometry): number };
  export default DistanceOp;
}
declare module 'jsts/org/locationtech/jts/operation/IsSimpleOp.js' {
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
  export default class IsSimpleOp {
    constructor(geometry: Geometry);
    isSimple(): boolean;
  }
}
declare module 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js' {
  import type { Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';

  const OverlayOp: { intersection(a: Geometry, b: Geometry): Geometry };
  export default OverlayOp;
}
