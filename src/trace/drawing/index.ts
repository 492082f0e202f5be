export { blockFromReading, frontOfTwo } from './block';
export { type BlockReading, type ReadPart, ROUND_PLACES, type RoundPlace } from './block-reading';
export type { Drawing, DrawnOutline, DrawnRun, DrawnWords } from './drawn';
export { outlinesOf } from './outlines';
export { outlineScaled, readingOf } from './reading';
export { isBlockSize, outlineReach, widestGap } from './size';
export { type BlocksTaken, blocksTaken, hipDepth, unreadTold } from './taken';
