import type { Mm } from '../length';
import { mm, say } from '../words';
import { estimateAlone } from './estimate-alone';
import { childEstimate, isChild } from './estimate-children';
import { spreadOf, takenIn } from './given';
import { KNEE_BELOW_CROTCH } from './proportions';
import type { Estimate, EstimatedKey, EstimateFigures, Known, MeasurementKey } from './types';

const SURVEY = say`ANSUR II (NATICK/TR-15/007, 2014), regression over 6,068 adults, sexes pooled`;

/** One line of the survey's regressions: y = intercept + waist·W + hip·H + tall·(stature, or waist height). */
interface Line {
  readonly intercept: number;
  readonly waist: number;
  readonly hip: number;
  readonly tall: number;
  readonly spread: Mm;
}

/** The survey's regressions, sexes pooled: with stature, and with waist height = rise + inside leg. @source ANSUR II, 2014 */
const LINES: Readonly<
  Record<Exclude<EstimatedKey, 'hipDepth' | 'waistToKnee'>, { readonly stature: Line; readonly waistHeight: Line }>
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
  calfGirth: {
    stature: { intercept: 11.3683, waist: 0.05441, hip: 0.21149, tall: 0.06356, spread: 19.2 },
    waistHeight: { intercept: 35.5302, waist: 0.06897, hip: 0.20252, tall: 0.07822, spread: 19.4 },
  },
  ankleGirth: {
    stature: { intercept: 13.1841, waist: 0.01826, hip: 0.0785, tall: 0.06696, spread: 11.6 },
    waistHeight: { intercept: 39.0664, waist: 0.03384, hip: 0.06904, tall: 0.08179, spread: 11.8 },
  },
  footEntryGirth: {
    stature: { intercept: -25.7269, waist: 0.04997, hip: 0.00871, tall: 0.17713, spread: 11.9 },
    waistHeight: { intercept: 25.3969, waist: 0.08868, hip: -0.01704, tall: 0.23602, spread: 12.2 },
  },
};

/** Hip depth from the rise, navel level. @source ANSUR II, 2014, pooled regression */
const HIP_DEPTH = { ofRise: 0.87013, intercept: -18.15, spread: 20.4 } as const;
/** How far a knee lies off its share of the inside leg, mm, standard deviation. @source ANSUR II, 2014 */
const KNEE_SPREAD = 11.4;
/** Crotch length from rise and hip, navel level. @source ANSUR II, 2014, pooled regression */
const CROTCH_LENGTH = { ofRise: 0.9297, ofHip: 0.3893, intercept: 32.6, spread: 25.7 } as const;

/**
 * Estimates one measurement that was not taken, from those that every body brings. Adults by the survey of adults,
 * children by the survey of children; what no survey of children took is inferred and says so.
 *
 * A figure among them that is an estimate itself widens the spread, and the hip depth then leans on what was measured.
 *
 * @param key which; girths from the hip and the height, hip depth from the rise, knee level from rise and inside leg
 * @param from the required figures, millimetres; age in years
 * @returns value, standard deviation, source, and whether people like this one were measured for it
 */
export function estimateMissing(key: EstimatedKey, from: EstimateFigures): Estimate {
  if (isChild(takenIn(from))) return childEstimate(key, from);
  if (key === 'hipDepth') return hipDepthEstimate(from);
  const lengths = ['bodyRise', 'insideLeg'] as const;
  if (key === 'waistToKnee') {
    const spread = Math.hypot(KNEE_SPREAD, spreadOf(from, 'bodyRise'), KNEE_BELOW_CROTCH * spreadOf(from, 'insideLeg'));
    return made(key, from.bodyRise + KNEE_BELOW_CROTCH * from.insideLeg, spread, lengths);
  }
  const { stature, waistHeight } = LINES[key];
  const line = from.height === undefined ? waistHeight : stature;
  const tall = from.height ?? from.bodyRise + from.insideLeg;
  const unsure = from.height === undefined ? Math.hypot(...lengths.map((one) => spreadOf(from, one))) : 0;
  return made(
    key,
    line.intercept + line.waist * from.waistGirth + line.hip * from.hipGirth + line.tall * tall,
    Math.hypot(line.spread, line.tall * unsure),
    ['waistGirth', 'hipGirth', ...(from.height === undefined ? lengths : (['height'] as const))],
  );
}

/** From the rise, which is surest, where that was measured. */
function hipDepthEstimate(from: EstimateFigures): Estimate {
  const taken = takenIn(from);
  const alone = taken.bodyRise === undefined ? estimateAlone('hipDepth', taken) : undefined;
  return (
    alone ?? made('hipDepth', HIP_DEPTH.ofRise * from.bodyRise + HIP_DEPTH.intercept, HIP_DEPTH.spread, ['bodyRise'])
  );
}

/**
 * What the crotch length of an adult like this one comes to at navel level: information beside an empty field, which
 * never drives the fit, because two such bodies in three still lie 26 mm to either side.
 *
 * @param measured of the body, millimetres
 * @returns 0.93 rise + 0.39 hip + 33 where the rise was measured, else by whatever was; undefined for children, of whom
 *   nobody measured it
 * @source ANSUR II, 2014
 */
export function crotchLengthExpected(measured: Known): Estimate | undefined {
  if (isChild(measured)) return undefined;
  const { bodyRise, hipGirth } = measured;
  if (bodyRise === undefined || hipGirth === undefined) return estimateAlone('crotchLength', measured);
  const { ofRise, ofHip, intercept, spread } = CROTCH_LENGTH;
  const sum = say`0.93 × rise ${mm(bodyRise)} + 0.39 × hip ${mm(hipGirth)} + ${mm(intercept)}`;
  return {
    ...made('crotchLength', ofRise * bodyRise + ofHip * hipGirth + intercept, spread, ['bodyRise', 'hipGirth']),
    sum,
  };
}

const made = (key: MeasurementKey, value: number, spread: number, from: Estimate['from']): Estimate => ({
  key,
  value,
  spread,
  from,
  source: SURVEY,
  basis: 'survey',
});
