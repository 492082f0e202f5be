import { inside, mm, number, type Problem, Refusal, say } from '../words';
import { type Measurement, measurementName, measurements } from './catalogue';
import { estimateMissing } from './estimate';
import { isChild } from './estimate-children';
import { bodyRemarks } from './plausibility';
import { insideLegFrom, insideLegOf } from './trousers';
import type { Body, BodyInput, Estimate, EstimatedKey } from './types';

/** How far the fullest hip may lie below the seat; a waist tied at the navel leaves little rise. @source practice */
const HIP_BELOW_SEAT = 100;
/** Where a knee may lie below the crotch, as shares of the inside leg: well beyond the 0.37–0.47 of ANSUR II. @source practice */
const KNEE_AT = [0.25, 0.6] as const;

/**
 * A body ready to draft from: the measured values as they are, estimates where the draft needs one.
 *
 * @param input what was measured
 * @throws Refusal naming every required measurement that is missing and every value outside its limits
 */
export function prepareBody(input: BodyInput): Body {
  const problems = bodyProblems(input);
  const { waistGirth, hipGirth, bodyRise, trouserInseam } = input;
  const insideLeg = insideLegOf(input);
  if (
    problems.length > 0 ||
    waistGirth === undefined ||
    hipGirth === undefined ||
    bodyRise === undefined ||
    insideLeg === undefined
  ) {
    throw new Refusal(problems);
  }
  const figures = { ...input, waistGirth, hipGirth, bodyRise, insideLeg };
  const estimates: Estimate[] = [];
  if (input.insideLeg === undefined && trouserInseam !== undefined) estimates.push(insideLegFrom(trouserInseam));
  const known = (key: EstimatedKey): number => {
    const measured = input[key];
    if (measured !== undefined) return measured;
    const estimate = estimateMissing(key, figures);
    estimates.push(estimate);
    return estimate.value;
  };
  return {
    label: input.label,
    child: isChild(figures),
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
    remarks: bodyRemarks(input),
  };
}

/**
 * Everything about a body that keeps it from being drafted: missing required measurements, values outside the limits,
 * and measurements that contradict each other beyond any body.
 *
 * @param input what was measured
 */
export function bodyProblems(input: BodyInput): readonly Problem[] {
  const problems = measurements.flatMap((m) => valueProblem(m, input));
  if (problems.length > 0) return problems;
  const found: Problem[] = [];
  const { bodyRise, hipDepth, waistToKnee, crotchLength, frontCrotchLength } = input;
  const insideLeg = insideLegOf(input);
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
