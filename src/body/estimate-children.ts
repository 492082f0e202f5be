import type { Mm } from '../length';
import { type Phrase, say } from '../words';
import { spreadOf } from './given';
import { KNEE_BELOW_CROTCH } from './proportions';
import { insideLegOf } from './trousers';
import type { Estimate, EstimatedKey, EstimateFigures, Known } from './types';

/** AnthroKids: where the estimates of children come from. */
const SURVEY = say`Anthropometry of Infants, Children and Youths to Age 18 for Product Safety Design (UM-HSRI-77-17, 1977), 2–20 years, sexes together`;

/** Smaller than every adult of the survey: taken for a child. @source ANSUR II, 2014 */
const SMALLER = { height: 1400, waistHeight: 805, insideLeg: 610, hipGirth: 737 } as const;

/**
 * Whether the lines for children hold: under 18 years, or of unknown age and smaller than any adult of the survey: by the
 * height, the height of the waist or, where that was not measured, the inside leg and the hip.
 */
export function isChild({ ageYears, height, bodyRise, hipGirth, ...legs }: Known): boolean {
  const insideLeg = insideLegOf(legs);
  if (ageYears !== undefined) return ageYears < 18;
  if (height !== undefined) return height < SMALLER.height;
  if (bodyRise !== undefined && insideLeg !== undefined) return bodyRise + insideLeg < SMALLER.waistHeight;
  return [
    [insideLeg, SMALLER.insideLeg],
    [hipGirth, SMALLER.hipGirth],
  ].some(([value, adult]) => value !== undefined && adult !== undefined && value < adult);
}

/** y = intercept + waist·W + hip·H + stature·S. */
interface Line {
  readonly intercept: number;
  readonly waist: number;
  readonly hip: number;
  readonly stature: number;
  readonly spread: Mm;
}

/** The children's survey's regressions, sexes together. @source UM-HSRI-77-17, 1977 */
const LINES: Readonly<Record<'thighGirth' | 'calfGirth' | 'ankleGirth' | 'hipDepth', Line>> = {
  thighGirth: { intercept: -35.9, waist: 0.1311, hip: 0.6098, stature: -0.0428, spread: 17.4 },
  calfGirth: { intercept: 1.4, waist: 0.0978, hip: 0.211, stature: 0.0483, spread: 13.2 },
  ankleGirth: { intercept: 38.8, waist: 0.0784, hip: 0.0849, stature: 0.0267, spread: 9.9 },
  // Waist height less hip height, line by line; the spread is that of the difference on the 1,278 who have both.
  hipDepth: { intercept: 16.3, waist: -0.1419, hip: 0.1928, stature: 0.0433, spread: 19.0 },
};

/** Mid-knee ÷ calf of adults, mean. @source ANSUR II, 2014 */
const KNEE_OF_CALF = 1.0;
/**
 * Heel and instep of adults from ankle and stature, no constant, so that the line holds for small bodies as well: an
 * ankle alone says too much of a foot, because a young one is plump.
 *
 * @source ANSUR II, 2014, least squares; SD 10.6 mm
 */
const FOOT_OF = { ankle: 0.557, stature: 0.121 } as const;
/**
 * How far adults' proportions miss children, as a share of the girth, standard deviation. Tried on what was measured of
 * both: calves from thigh and ankle come out 6–11 % too wide under ten years, thighs from hip and calf 3–10 %.
 *
 * @source ANSUR II, UM-HSRI-77-17
 */
const FROM_ADULTS = 0.08;
/** What a child's shin's top lies off its line on the stature, millimetres. @source UM-HSRI-77-17, 1977 */
const SHIN_SPREAD = 15.8;

/**
 * Estimates a child's measurement. Thigh, calf, ankle and hip depth were measured of children. Knee, foot entry and
 * knee level were not, in any source that covers them, and yet a leg can't be drawn without a knee width and a hem that
 * a foot passes. So they are inferred by adults' proportions, with a spread that says how far those miss children, and
 * marked as inferred: the knee as wide as the calf, the foot from ankle and stature, the knee level at an adult's share
 * of the inside leg (the top of the shin stands at 0.54–0.55 of the crotch height from four years on, 0.57 at two). A
 * measured calf or ankle is used where there is one.
 */
export function childEstimate(key: EstimatedKey, from: EstimateFigures): Estimate {
  if (key === 'kneeGirth') {
    const calf = knownOr('calfGirth', from);
    const source = say`inferred: as wide as the calf, as on adults (ANSUR II, 2014); no survey of children took the knee. Calf: ${calf.source}`;
    return inferred(key, KNEE_OF_CALF * calf.value, KNEE_OF_CALF * calf.spread, ['calfGirth'], source);
  }
  if (key === 'footEntryGirth') {
    const ankle = knownOr('ankleGirth', from);
    const value = FOOT_OF.ankle * ankle.value + FOOT_OF.stature * statureOf(from);
    const source = say`inferred: 0.557 × ankle + 0.121 × height, as on adults (ANSUR II, 2014); no survey of children took the foot entry. Ankle: ${ankle.source}`;
    const spread = Math.hypot(FOOT_OF.ankle * ankle.spread, FOOT_OF.stature * statureSpread(from));
    return inferred(key, value, spread, ['ankleGirth', 'height'], source);
  }
  if (key === 'waistToKnee') {
    const value = from.bodyRise + KNEE_BELOW_CROTCH * from.insideLeg;
    const source = say`inferred: the knee at an adult’s share of the inside leg (ANSUR II, 2014); shin heights of children agree`;
    const spread = Math.hypot(SHIN_SPREAD, spreadOf(from, 'bodyRise'), KNEE_BELOW_CROTCH * spreadOf(from, 'insideLeg'));
    return { key, value, spread, from: ['bodyRise', 'insideLeg'], source, basis: 'inference' };
  }
  const { intercept, waist, hip, stature, spread } = LINES[key];
  const value = intercept + waist * from.waistGirth + hip * from.hipGirth + stature * statureOf(from);
  const unsure = Math.hypot(spread, stature * statureSpread(from));
  return { key, value, spread: unsure, from: ['waistGirth', 'hipGirth', 'height'], source: SURVEY, basis: 'survey' };
}

/** A child's waist height on the stature: 0.6911 × stature − 138.2. @source UM-HSRI-77-17, 1977 */
const WAIST_HEIGHT = { ofStature: 0.6911, intercept: -138.2 } as const;

/** A child's stature, or what its waist height (rise + inside leg) makes of it by the survey's line. */
function statureOf({ height, bodyRise, insideLeg }: EstimateFigures): Mm {
  return height ?? (bodyRise + insideLeg - WAIST_HEIGHT.intercept) / WAIST_HEIGHT.ofStature;
}

/** How far that may be off where rise or inside leg are estimates themselves. */
const statureSpread = (from: EstimateFigures): Mm =>
  from.height === undefined
    ? Math.hypot(spreadOf(from, 'bodyRise'), spreadOf(from, 'insideLeg')) / WAIST_HEIGHT.ofStature
    : 0;

interface Girth {
  readonly value: Mm;
  readonly spread: Mm;
  readonly source: Phrase;
}

function knownOr(key: 'calfGirth' | 'ankleGirth', from: EstimateFigures): Girth {
  const measured = from[key];
  return measured === undefined ? childEstimate(key, from) : { value: measured, spread: 0, source: say`measured` };
}

/** A girth by adults' proportions: what it was taken from may be off, and so may the proportion. */
const inferred = (key: EstimatedKey, value: Mm, spread: Mm, from: Estimate['from'], source: Phrase): Estimate => ({
  key,
  value,
  spread: Math.hypot(spread, FROM_ADULTS * value),
  from,
  source,
  basis: 'inference',
});
