export { blocksFromNumbers, type PairByNumbers, pairByNumbers } from './blocks';
export type { Contradiction } from './contradictions';
export { numbersOf } from './measured';
export {
  type BlockNumbers,
  DART_LIMITS,
  MOST_DARTS,
  type NumbersPair,
  TAPE_KEYS,
  TAPE_LENGTHS,
  type TapeKey,
  type TapeLength,
  tapeLength,
} from './table';
