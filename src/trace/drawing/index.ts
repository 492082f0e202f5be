export { blockFromReading, edgeRead } from './block';
export { type BlockReading, ROUND_PLACES } from './block-reading';
export type { Drawing, DrawnRun, DrawnWords } from './drawn';
export {
  READ_PLACES,
  type ReadPlace,
  readingScaled,
  uprightTurn,
  withEdgeNamed,
  withGrainAsDrawn,
  withNamesReversed,
  withNextCorner,
  withPressed,
  withRoundPlace,
} from './edited';
export { wordsOf } from './names';
export { outlinesOf } from './outlines';
export { outlineScaled, readingOf } from './reading';
export { DRAWING_UNITS, type DrawnSheet, drawnSheet } from './sheet';
export { isBlockSize, outlineReach, widestGap } from './size';
export { type BlocksTaken, blocksTaken, unreadTold } from './taken';
export { pointRound } from './way-round';
