export { type BlockLine, type DrawnLines, traceFromLines } from './lines';
export {
  type BlockMarks,
  edgeMarks,
  edgeThroughMarks,
  LANDMARKS,
  type Landmark,
  type MarkedPoint,
  marksMapped,
  traceFromMarks,
  withEdgePoint,
} from './marks';
export {
  BLOCK_EDGES,
  blocksFromTrace,
  type CurvePoints,
  FARTHEST,
  MOST_EDGE_CURVES,
  type Pair,
  type TracedBlock,
} from './traced';
export { crotchTrued, type TracedPair } from './true-crotch';
