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
export { chordSlant, downWith, type Hollow, hollowLine, LEG_HOLLOW, type Slant } from './hollow';
export { type Meeting, outlineArea, outlineCrossings, pathMeetings } from './meetings';
export { turnBetween } from './parallel';
export { parallelOutline, parallelRun } from './parallel-outline';
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
} from './path';
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
  size,
  subtract,
  turned,
  unit,
} from './point';
export { curveReaimed, pathReaimed } from './reaim';
export { solveBetween } from './solve';
export { TOLERANCE } from './tolerances';
export type * from './types';
