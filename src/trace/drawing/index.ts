export { blockFromReading } from './block';
export type { Drawing, DrawnRun, DrawnWords } from './drawn';
export { wordsOf } from './names';
export { outlinesOf } from './outlines';
export { outlineScaled, readingOf } from './reading';
export { widestGap } from './size';
export { type BlocksTaken, blocksTaken } from './taken';
