export {
  blocksCorrected,
  type CorrectedBy,
  type Corrections,
  correctedBy,
  correctionMoves,
  NO_CORRECTIONS,
} from './corrections';
export { correctionsWorking } from './corrections-working';
export { crotchCorner } from './crotch';
export { type DraftedBlocks, draftBlocks } from './draft';
export { ANKLE_HEIGHT, FORK, LEAST_BACK_RAISE, SHIFT, SMALL_HIP, TILT, USUAL_SPREAD } from './figures';
export { STEEPEST_INSEAM } from './leg-lines';
export { type BlockOptions, type CrotchFit, netWidths, type Proportions, UNFITTED } from './proportions';
export { type BlockLine, type DrawnLines, traceFromLines } from './trace-lines';
export {
  type AllowancesOnPaper,
  type BlockMarks,
  type EdgePoint,
  edgeMarks,
  edgeThroughMarks,
  LANDMARKS,
  type Landmark,
  marksMapped,
  traceFromMarks,
  withEdgePoint,
} from './trace-marks';
export { crotchTrued, type TracedPair } from './trace-true';
export {
  BLOCK_EDGES,
  blocksFromTrace,
  type CurvePoints,
  FARTHEST,
  MOST_EDGE_CURVES,
  type Pair,
  type TracedBlock,
} from './traced';
export type * from './types';
export { blockWorking, tracedWorking } from './working';
