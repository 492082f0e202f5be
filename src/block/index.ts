export { waistLine } from './construct';
export {
  blocksCorrected,
  type CorrectedBy,
  type Corrections,
  correctedBy,
  correctionMoves,
  NO_CORRECTIONS,
} from './corrections';
export { correctionsWorking } from './corrections-working';
export { crotchCorner, crotchCurve } from './crotch';
export { type DraftedBlocks, draftBlocks } from './draft';
export { ANKLE_HEIGHT, FORK, LEAST_BACK_RAISE, SHIFT, SMALL_HIP, TILT, USUAL_SPREAD } from './figures';
export { inseamThrough, STEEPEST_INSEAM, sideLine } from './leg-lines';
export { type BlockOptions, type CrotchFit, netWidths, type Proportions, UNFITTED } from './proportions';
export type * from './types';
export { blockWorking, tracedWorking } from './working';
