import type { Draft, Measures } from './draft-types';

/** What one leg alone measures. */
const OF_ONE_LEG: readonly (keyof Measures)[] = ['hemGirthFinished', 'inseamFront', 'inseamBack', 'thighGirthFinished'];

/** Differences that nobody could sew aren't told, mm. @source tolerance */
const TOLD = 0.5;

/**
 * A finished measure in words: one figure, or the left leg's and the right one's where they differ.
 *
 * @param draft the draft
 * @param key which measure
 * @param words of a figure
 */
export function measureTold({ legs, measures }: Draft, key: keyof Measures, words: (value: number) => string): string {
  const [left, right] = legs.map((leg) => leg.measures[key]);
  if (left === undefined || right === undefined || !OF_ONE_LEG.includes(key)) return words(measures[key]);
  return Math.abs(left - right) < TOLD ? words(right) : `left ${words(left)}, right ${words(right)}`;
}
