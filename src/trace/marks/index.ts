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
export { blocksFromTrace, refuseBroken } from './traced';
export {
  BLOCK_EDGES,
  type CurvePoints,
  FARTHEST,
  MOST_EDGE_CURVES,
  mapPair,
  type Pair,
  pairOf,
  pointOf,
  type TracedBlock,
  type TracedPair,
  tracedEdge,
  tracedEdges,
  tracedOutline,
} from './traced-block';
