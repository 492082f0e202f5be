export { arcCurves, bulgeCurves } from './arc';
export { type BSpline, splineCurves } from './b-spline';
export {
  boxesMeet,
  boxGrown,
  boxHolds,
  boxInside,
  boxMeetsSegment,
  boxRound,
  boxShared,
  curvesBounds,
  segmentWithin,
} from './box';
export {
  curveBounds,
  curveCurvature,
  curveFrom,
  curveIsStraight,
  curveLength,
  curveMap,
  curveMeetsLine,
  curvePart,
  curvePoint,
  curveReverse,
  curveSplit,
  curveTangent,
  curveTimeAt,
  straight,
} from './curve';
export { curvesAlong, curvesNear } from './fit';
export { chordSlant, downWith, type Hollow, hollowLine, hollowLineWithin, type Slant, slantExcess } from './hollow';
export {
  type FourSeen,
  type Homography,
  homographyAfter,
  homographyInverse,
  homographyPoint,
  homographyThrough,
  type Seen,
} from './homography';
export { insetOutline } from './inset';
export { loadPathReader } from './lazy-path-data';
export { leastSquares, type Row, type Solved } from './least-squares';
export { choleskyOf, forward, type Matrix, solvedBy } from './matrix';
export { outlineArea, outlineCrossings } from './meetings';
export { turnBetween } from './parallel';
export { parallelOutline } from './parallel-outline';
export {
  edgeLength,
  flattenCurves,
  outlineCurves,
  outlineEdge,
  pathAt,
  pathEnd,
  pathEndWay,
  pathFoot,
  pathFrom,
  pathLength,
  pathReverse,
  pathStart,
  pathStartWay,
  pathThrough,
  pathUpTo,
  pointsBounds,
  pointsHold,
} from './path';
export type { Affine } from './path-data';
export {
  add,
  between,
  cross,
  distance,
  dot,
  leftOf,
  linesMeet,
  mirrored,
  moved,
  point,
  scale,
  subtract,
  turned,
  unit,
} from './point';
export { curveReaimed, pathReaimed } from './reaim';
export { solveBetween } from './solve';
export { TOLERANCE } from './tolerances';
export { mapTuple } from './tuple';
export type * from './types';
