import { own, words } from '../words';
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
 * @param print a figure
 */
export function measureTold({ legs, measures }: Draft, key: keyof Measures, print: (value: number) => string): string {
  const [left, right] = legs.map((leg) => leg.measures[key]);
  if (left === undefined || right === undefined || !OF_ONE_LEG.includes(key)) return print(measures[key]);
  return Math.abs(left - right) < TOLD ? print(right) : words`left ${own(print(left))}, right ${own(print(right))}`;
}
