export { STEEPEST_INSEAM } from './construct';
export { blocksCorrected, type CorrectedBlocks, type Corrections, NO_CORRECTIONS } from './corrections';
export { correctionsWorking } from './corrections-working';
export { crotchCorner } from './crotch';
export { crotchLengthOf, type DraftedBlocks, draftBlocks } from './draft';
export { ANKLE_HEIGHT, type BlockOptions, LEAST_BACK_RAISE, type Proportions } from './proportions';
export { BLOCK_EDGES, blocksFromTrace, type CurvePoints, type Pair, type TracedBlock } from './traced';
export type * from './types';
export { blockWorking, tracedWorking } from './working';
