export { type EdgePoint, type FollowedEdge, type MarkedPoint, wasFollowed } from './followed';
export { likelyPlace } from './likely-place';
export { type BlockLine, type DrawnLines, traceFromLines } from './lines';
export {
  type BlockMarks,
  edgeMarks,
  edgeThroughMarks,
  isFollowed,
  LANDMARKS,
  type Landmark,
  landmarksOf,
  marksMapped,
  traceFromMarks,
  withEdgePoint,
} from './marks';
export { middleOf, movedOnto } from './rigid';
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
