export { type PairByNumbers, pairByNumbers, pairOfNumbers, withDarts } from './blocks';
export type { Contradiction } from './contradictions';
export { isStraightTape, numbersOf, tapesOn } from './measured';
export {
  type BlockNumbers,
  DART_LIMITS,
  type DartNumbers,
  MOST_DARTS,
  type NumbersPair,
  TAPE_KEYS,
  TAPE_LENGTHS,
  type TapeKey,
  type TapeLength,
  tapeLength,
} from './table';
export { contradictionTold } from './told';
export { TAPE_PLACES } from './where';
