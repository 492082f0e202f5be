import type { Mm } from '../length';
import type { Estimate, MeasurementKey } from './types';

const SURVEY = 'ANSUR II (NATICK/TR-15/007, 2014), regression over 6,068 adults, sexes pooled';

/** What every body brings. */
export interface RequiredFigures {
  readonly waistGirth: Mm;
  readonly hipGirth: Mm;
  readonly bodyRise: Mm;
  readonly insideLeg: Mm;
  readonly height: Mm | undefined;
}

/** One line of the survey's regressions: y = intercept + waist·W + hip·H + tall·(stature, or waist height). */
interface Line {
  readonly intercept: number;
  readonly waist: number;
  readonly hip: number;
  readonly tall: number;
  readonly spread: Mm;
}

// Set A (with stature) and set B (with waist height = rise + inside leg) of the survey's regressions, pooled.
const LINES: Readonly<
  Record<'thighGirth' | 'kneeGirth' | 'footEntryGirth', { readonly stature: Line; readonly waistHeight: Line }>
> = {
  thighGirth: {
    stature: { intercept: -87.6126, waist: 0.04352, hip: 0.6587, tall: -0.00116, spread: 19.7 },
    waistHeight: { intercept: -100.6145, waist: 0.04149, hip: 0.65889, tall: 0.01228, spread: 19.7 },
  },
  // The survey measured just above the kneecap; a mid-knee is 0.95 of that (comparison with three other surveys).
  kneeGirth: {
    stature: { intercept: -2.2493, waist: 0.02262, hip: 0.30833, tall: 0.0309, spread: 16.8 },
    waistHeight: { intercept: 9.5146, waist: 0.02959, hip: 0.30409, tall: 0.03799, spread: 16.9 },
  },
  footEntryGirth: {
    stature: { intercept: -25.7269, waist: 0.04997, hip: 0.00871, tall: 0.17713, spread: 11.9 },
    waistHeight: { intercept: 25.3969, waist: 0.08868, hip: -0.01704, tall: 0.23602, spread: 12.2 },
  },
};

/** The share of the inside leg that lies between crotch and knee: 1 − knee height ÷ crotch height, survey mean 0.573. */
const KNEE_BELOW_CROTCH = 0.427;

/**
 * Estimates one measurement that was not taken, from those that every body brings.
 *
 * @param key which; girths from the hip and the height, hip depth from the rise, knee level from rise and inside leg
 * @param from the required figures, millimetres
 * @returns value, standard deviation and source; children's own lines come with the children's survey
 */
export function estimateMissing(
  key: 'hipDepth' | 'thighGirth' | 'kneeGirth' | 'footEntryGirth' | 'waistToKnee',
  from: RequiredFigures,
): Estimate {
  if (key === 'hipDepth') return made(key, 0.87013 * from.bodyRise - 18.15, 20.4);
  if (key === 'waistToKnee') return made(key, from.bodyRise + KNEE_BELOW_CROTCH * from.insideLeg, 11.4);
  const { stature, waistHeight } = LINES[key];
  const line = from.height === undefined ? waistHeight : stature;
  const tall = from.height ?? from.bodyRise + from.insideLeg;
  return made(
    key,
    line.intercept + line.waist * from.waistGirth + line.hip * from.hipGirth + line.tall * tall,
    line.spread,
  );
}

const made = (key: MeasurementKey, value: number, spread: number): Estimate => ({ key, value, spread, source: SURVEY });
