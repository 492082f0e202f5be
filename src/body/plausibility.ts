import { inside, mm, part, rounding, say } from '../words';
import { measurementName } from './catalogue';
import { isChild } from './estimate-children';
import { measuredOf } from './given';
import { RATIO_RULES, type RatioRule } from './ratio-rules';
import { insideLegFrom, TROUSERS_SHORTER } from './trousers';
import type { BodyGiven, BodyInput, Remark } from './types';

const ADULTS = say`ANSUR II (NATICK/TR-15/007, 2014), least and most of 6,068 adults`;

/**
 * What about a body is worth a second look with the tape. Only measured values are compared, an estimate is never held
 * against a measurement; no value is changed, and no body is refused for a remark.
 *
 * @param given what was measured, millimetres and years
 * @returns one remark for each rule that raised one, with its measurements and its source; empty for most people
 */
export function bodyRemarks(given: BodyGiven): readonly Remark[] {
  const input = measuredOf(given);
  const people = isChild(input) ? 'children' : 'adults';
  return [
    ...RATIO_RULES.filter((rule) => rule.people === 'all' || rule.people === people).flatMap((rule) =>
      ratioRemark(rule, input),
    ),
    ...OTHER_RULES.flatMap((rule) => rule(input) ?? []),
  ];
}

function ratioRemark({ id, part, of, lowest, highest, source }: RatioRule, input: BodyInput): readonly Remark[] {
  const [value, whole] = [input[part], input[of]];
  if (value === undefined || whole === undefined) return [];
  if (value >= lowest * whole && value <= highest * whole) return [];
  const phrase = say`${measurementName(part)} ${mm(value)} beside ${inside(measurementName(of))} ${mm(whole)}: on measured people it is ${mm(lowest * whole)} to ${mm(highest * whole)}. Measure both again.`;
  return [{ id, keys: [part, of], phrase, source }];
}

type Rule = (input: BodyInput) => Remark | undefined;

/** The tape over the hip is longer than the straight height; sitting adds to the rise what standing doesn't have. @source practice */
const SUM = { less: 50, more: 60 } as const;

const outsideSum: Rule = ({ outsideLeg, bodyRise, insideLeg }) => {
  if (outsideLeg === undefined || bodyRise === undefined || insideLeg === undefined) return undefined;
  const sum = bodyRise + insideLeg;
  if (outsideLeg >= sum - SUM.less && outsideLeg <= sum + SUM.more) return undefined;
  const phrase = say`Rise and inside leg together are ${part(bodyRise)} + ${part(insideLeg)}${rounding(sum, bodyRise, insideLeg)} = ${part(sum)}, the outside leg ${part(outsideLeg)}; they should meet within ${part(SUM.more)}. One of the three was misread.`;
  return { id: 'outside-sum', keys: ['outsideLeg', 'bodyRise', 'insideLeg'], phrase, source: say`practice` };
};

/** Least and greatest crotch height ÷ waist height; a waist 45 mm above the navel takes the least from 0.73 to 0.70. @source ANSUR II, 2014; wider still for children */
const INSIDE_SHARE = [0.68, 0.885] as const;

const insideShare: Rule = ({ bodyRise, insideLeg }) => {
  if (bodyRise === undefined || insideLeg === undefined) return undefined;
  const share = insideLeg / (bodyRise + insideLeg);
  if (share >= INSIDE_SHARE[0] && share <= INSIDE_SHARE[1]) return undefined;
  const at = (of: number) => mm((bodyRise * of) / (1 - of));
  const phrase = say`Inside leg ${mm(insideLeg)} with body rise ${mm(bodyRise)}: with that rise legs measure ${at(INSIDE_SHARE[0])} to ${at(INSIDE_SHARE[1])}. Measure both again, and look at the unit.`;
  return {
    id: 'inside-rise',
    keys: ['insideLeg', 'bodyRise'],
    phrase,
    source: say`${ADULTS} (0.73–0.88 of the waist height), wider for a natural waist and for children`,
  };
};

/** Least and greatest knee height ÷ crotch height. @source ANSUR II, 2014 */
const KNEE_SHARE = [0.53, 0.63] as const;

/** The same of trousers, where they were measured and the leg wasn't. */
const trouserShare: Rule = ({ bodyRise, insideLeg, trouserInseam }) => {
  if (bodyRise === undefined || insideLeg !== undefined || trouserInseam === undefined) return undefined;
  const leg = insideLegFrom(trouserInseam).value;
  const share = leg / (bodyRise + leg);
  if (share >= INSIDE_SHARE[0] && share <= INSIDE_SHARE[1]) return undefined;
  const at = (of: number) => mm((bodyRise * of) / (1 - of) - TROUSERS_SHORTER);
  const phrase = say`Trouser inseam ${mm(trouserInseam)} with body rise ${mm(bodyRise)}: with that rise trousers measure ${at(INSIDE_SHARE[0])} to ${at(INSIDE_SHARE[1])}. Measure both again, and look at the unit.`;
  return { id: 'trousers-rise', keys: ['trouserInseam', 'bodyRise'], phrase, source: say`${ADULTS}; practice` };
};

/** How far above the floor the hem of full-length trousers may end, with the crotch at the body's, mm. @source practice */
const TROUSER_HEM = { least: 0, most: 130 } as const;

const trousersBeside: Rule = ({ insideLeg, trouserInseam }) => {
  if (insideLeg === undefined || trouserInseam === undefined) return undefined;
  const [least, most] = [insideLeg - TROUSER_HEM.most, insideLeg - TROUSER_HEM.least];
  if (trouserInseam >= least && trouserInseam <= most) return undefined;
  const phrase = say`Trouser inseam ${mm(trouserInseam)} beside inside leg ${mm(insideLeg)}: full-length trousers then measure ${mm(least)} to ${mm(most)}. Was one written down for the other?`;
  return { id: 'trousers-leg', keys: ['trouserInseam', 'insideLeg'], phrase, source: say`practice` };
};

const kneeShare: Rule = (input) => {
  const { waistToKnee, bodyRise, insideLeg } = input;
  if (isChild(input) || waistToKnee === undefined || bodyRise === undefined || insideLeg === undefined)
    return undefined;
  const height = bodyRise + insideLeg - waistToKnee;
  if (height >= KNEE_SHARE[0] * insideLeg && height <= KNEE_SHARE[1] * insideLeg) return undefined;
  const at = (share: number) => mm(bodyRise + (1 - share) * insideLeg);
  const phrase = say`Waist to knee ${mm(waistToKnee)}: with this rise and inside leg the knee lies ${at(KNEE_SHARE[1])} to ${at(KNEE_SHARE[0])} below the waist.`;
  return {
    id: 'knee-level',
    keys: ['waistToKnee', 'insideLeg'],
    phrase,
    source: say`${ADULTS}: knee height ÷ crotch height`,
  };
};

/** How far the abdomen may lie outside what waist and hip are, either way. @source practice */
const HIGH_HIP = { least: 0.94, most: 1.15 } as const;

const highHip: Rule = ({ highHipGirth, waistGirth, hipGirth }) => {
  if (highHipGirth === undefined || waistGirth === undefined || hipGirth === undefined) return undefined;
  const least = HIGH_HIP.least * Math.min(waistGirth, hipGirth);
  const most = HIGH_HIP.most * Math.max(waistGirth, hipGirth);
  if (highHipGirth >= least && highHipGirth <= most) return undefined;
  const phrase = say`High hip ${mm(highHipGirth)} lies halfway between waist ${mm(waistGirth)} and hip ${mm(hipGirth)}; it should measure ${mm(least)} to ${mm(most)}.`;
  return { id: 'high-hip', keys: ['highHipGirth', 'waistGirth', 'hipGirth'], phrase, source: say`practice` };
};

const frontAlone: Rule = ({ frontCrotchLength, crotchLength }) => {
  if (frontCrotchLength === undefined || crotchLength !== undefined) return undefined;
  const phrase = say`The front part of the crotch length counts only beside the whole: measure that too.`;
  return { id: 'front-alone', keys: ['frontCrotchLength'], phrase, source: say`practice` };
};

const underTwo: Rule = ({ ageYears }) => {
  if (ageYears === undefined || ageYears >= 2) return undefined;
  const phrase = say`Nobody under two years was measured for the estimates: measure what can be measured.`;
  return {
    id: 'under-two',
    keys: ['ageYears'],
    phrase,
    source: say`AnthroKids (UM-HSRI-77-17, 1977) begins at 2 years`,
  };
};

const OTHER_RULES: readonly Rule[] = [
  outsideSum,
  insideShare,
  trouserShare,
  trousersBeside,
  kneeShare,
  highHip,
  frontAlone,
  underTwo,
];
