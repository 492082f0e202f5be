import { inside, mm, number, type Problem, Refusal, say } from '../words';
import { type Measurement, measurementName, measurements } from './catalogue';
import { estimateMissing } from './estimate';
import { estimateAlone } from './estimate-alone';
import { isChild } from './estimate-children';
import { ASKED_KEYS, ESTIMATED, measuredOf, takenFromBlock, takenIn } from './given';
import { bodyRemarks } from './plausibility';
import { insideLegFrom } from './trousers';
import type { AskedKey, BlockTold, Body, BodyGiven, BodyInput, Estimate, EstimatedKey } from './types';

/** How far the fullest hip may lie below the seat; a waist tied at the navel leaves little rise. @source practice */
const HIP_BELOW_SEAT = 100;
/** Where a knee may lie below the crotch, as shares of the inside leg: well beyond the 0.37–0.47 of ANSUR II. @source practice */
const KNEE_AT = [0.25, 0.6] as const;

/**
 * A body ready to draft from: the measured values as they are, estimates where the draft needs one.
 *
 * @param given what was measured, of what the estimate was asked for, and what is taken from brought blocks
 * @param told what those tell
 * @throws Refusal naming every required measurement that is missing and every value outside its limits
 */
export function prepareBody(given: BodyGiven, told: BlockTold = {}): Body {
  const problems = bodyProblems(given, told);
  const taken = takenFromBlock(given, told);
  const input = knownOf(given, taken);
  const asked = askedEstimates(given, input);
  const { waistGirth, hipGirth, trouserInseam } = input;
  const [bodyRise, insideLeg] = (['bodyRise', 'insideLeg'] as const).map((key) => figureOf(key, input, asked));
  if (
    problems.length > 0 ||
    waistGirth === undefined ||
    hipGirth === undefined ||
    bodyRise === undefined ||
    insideLeg === undefined
  ) {
    throw new Refusal(problems);
  }
  const figures = { ...input, waistGirth, hipGirth, bodyRise, insideLeg, asked };
  const estimates: Estimate[] = [...taken, ...asked];
  const known = (key: EstimatedKey): number => {
    const measured = input[key];
    if (measured !== undefined) return measured;
    const estimate = estimateMissing(key, figures);
    estimates.push(estimate);
    return estimate.value;
  };
  return {
    label: input.label,
    child: isChild(takenIn(figures)),
    waistGirth,
    hipGirth,
    bodyRise,
    insideLeg,
    trouserInseam,
    hipDepth: known('hipDepth'),
    thighGirth: known('thighGirth'),
    kneeGirth: known('kneeGirth'),
    calfGirth: known('calfGirth'),
    ankleGirth: known('ankleGirth'),
    footEntryGirth: known('footEntryGirth'),
    waistToKnee: known('waistToKnee'),
    highHipGirth: input.highHipGirth,
    crotchLength: input.crotchLength,
    frontCrotchLength: input.frontCrotchLength,
    nappy: input.nappy ?? false,
    estimates,
    remarks: bodyRemarks(given),
  };
}

/** What is known of a body before anything is estimated: what was measured, and what its blocks tell. */
const knownOf = (given: BodyGiven, taken: readonly Estimate[]): BodyInput => ({
  ...measuredOf(given),
  ...Object.fromEntries(taken.map(({ key, value }) => [key, value])),
});

/** The estimates that stand in the place of measurements: told by trousers, or asked for and to be had from what is known. */
function askedEstimates(given: BodyGiven, known: BodyInput): readonly Estimate[] {
  return ASKED_KEYS.flatMap((key) => {
    if (known[key] !== undefined) return [];
    if (key === 'insideLeg' && known.trouserInseam !== undefined) return [insideLegFrom(known.trouserInseam)];
    return given[key] === ESTIMATED ? (estimateAlone(key, known) ?? []) : [];
  });
}

const figureOf = (key: AskedKey, measured: BodyInput, asked: readonly Estimate[]): number | undefined =>
  measured[key] ?? asked.find((one) => one.key === key)?.value;

/**
 * Everything about a body that keeps it from being drafted: missing required measurements, values outside the limits,
 * estimates that were asked for and would lie outside them, and measurements that contradict each other beyond any body.
 *
 * @param given what was measured, of what the estimate was asked for, and what is taken from brought blocks
 * @param told what those tell
 */
export function bodyProblems(given: BodyGiven, told: BlockTold = {}): readonly Problem[] {
  const input = knownOf(given, takenFromBlock(given, told));
  const asked = askedEstimates(given, input);
  const problems = measurements.flatMap((m) => (asked.some(({ key }) => key === m.key) ? [] : valueProblem(m, input)));
  if (problems.length > 0) return problems;
  const outside = asked.flatMap(outsideProblem);
  if (outside.length > 0) return outside;
  const found: Problem[] = [];
  const { hipDepth, waistToKnee, crotchLength, frontCrotchLength } = input;
  const [bodyRise, insideLeg] = (['bodyRise', 'insideLeg'] as const).map((key) => figureOf(key, input, asked));
  if (hipDepth !== undefined && bodyRise !== undefined && hipDepth > bodyRise + HIP_BELOW_SEAT) {
    const phrase = say`the fullest hip can’t lie more than ${mm(HIP_BELOW_SEAT)} below the seat; the body rise is ${mm(bodyRise)}.`;
    found.push({ field: 'body.hipDepth', value: hipDepth, phrase });
  }
  if (waistToKnee !== undefined && bodyRise !== undefined && insideLeg !== undefined) {
    const [lowest, highest] = KNEE_AT.map((share) => bodyRise + share * insideLeg) as [number, number];
    if (waistToKnee < lowest || waistToKnee > highest) {
      const phrase = say`with this rise and inside leg the knee lies between ${mm(lowest)} and ${mm(highest)} below the waist.`;
      found.push({ field: 'body.waistToKnee', value: waistToKnee, phrase });
    }
  }
  if (crotchLength !== undefined && frontCrotchLength !== undefined && frontCrotchLength >= crotchLength) {
    const phrase = say`the front part must be less than the whole crotch length of ${mm(crotchLength)}.`;
    found.push({ field: 'body.frontCrotchLength', value: frontCrotchLength, phrase });
  }
  return found;
}

/** An estimate that nothing can be drafted by: the body is unlike all who were measured. */
function outsideProblem({ key, value }: Estimate): readonly Problem[] {
  const m = measurements.find((one) => one.key === key);
  if (!m || (value >= m.lowest && value <= m.highest)) return [];
  const phrase = say`${m.name} can’t be estimated for a body like this one; measure it: ${inside(m.definition)}`;
  return [{ field: `body.${key}`, value: ESTIMATED, phrase }];
}

function valueProblem(m: Measurement, input: BodyInput): readonly Problem[] {
  const field = `body.${m.key}`;
  const value = input[m.key];
  if (value === undefined) {
    if (!m.required || (m.inPlace && input[m.inPlace] !== undefined)) return [];
    const needed = say`${m.name} is needed: ${inside(m.definition)}`;
    const phrase = m.inPlace ? say`${needed} ${measurementName(m.inPlace)} will do in its place.` : needed;
    return [{ field, value, phrase }];
  }
  if (value >= m.lowest && value <= m.highest) return [];
  const limit = (v: number) => (m.unit === 'mm' ? mm(v) : number(v, 0));
  return [{ field, value, phrase: say`${m.name} must lie between ${limit(m.lowest)} and ${limit(m.highest)}.` }];
}
