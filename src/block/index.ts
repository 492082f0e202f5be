export { crotchCorner, crotchCurve } from './crotch';
export { crotchLengthOf, type DraftedBlocks, draftBlocks } from './draft';
export type { BlockOptions, Proportions } from './proportions';
export type * from './types';
export { blockWorking } from './working';
