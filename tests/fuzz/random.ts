/** Chance that a small whole number repeats: everything of one draw comes from one of these. */
export interface Chance {
  /** 0 … 1, without 1. */
  readonly next: () => number;
  readonly between: (low: number, high: number) => number;
  /** Whether a thing happens that happens so often. */
  readonly happens: (share: number) => boolean;
  readonly oneOf: <T>(values: readonly T[]) => T;
  /** About 0, two times in three within 1. */
  readonly bell: () => number;
}

/**
 * Chance from a seed: a counter through the finishing steps of MurmurHash3, 32 bits (public domain). No library, so that
 * a seed of today still draws the same in years.
 *
 * @param seed a whole number
 */
export function chanceOf(seed: number): Chance {
  let state = mixed(seed ^ 0x5bd1e995);
  const next = () => {
    state = (state + 0x9e3779b9) >>> 0;
    return mixed(state) / 2 ** 32;
  };
  return {
    next,
    between: (low, high) => low + (high - low) * next(),
    happens: (share) => next() < share,
    oneOf: <T>(values: readonly T[]) => values[Math.floor(next() * values.length)] as T,
    // Twelve of 0 … 1 summed have the spread 1.
    bell: () => Array.from({ length: 12 }, next).reduce((sum, one) => sum + one, -6),
  };
}

function mixed(value: number): number {
  let h = value >>> 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}
