import type { WorkingStep } from '../plane';
import { mm, say, UNSAID } from '../words';
import { measurementName } from './catalogue';
import { crotchLengthExpected } from './estimate';
import { takenIn } from './given';
import type { Body, Estimate, Remark } from './types';

/** What is said about the body: what was measured, each estimate with its spread and source, and what is doubtful. */
export function bodyWorking(body: Body): readonly WorkingStep[] {
  return [
    {
      id: 'body.measured',
      station: 'body',
      sentence:
        body.trouserInseam === undefined
          ? say`These four decide the draft: waist ${mm(body.waistGirth)}, hip ${mm(body.hipGirth)}, body rise ${mm(body.bodyRise)}, inside leg ${mm(body.insideLeg)}.`
          : say`These decide the draft: waist ${mm(body.waistGirth)}, hip ${mm(body.hipGirth)}, body rise ${mm(body.bodyRise)}, inside leg ${mm(body.insideLeg)}, and for a full length the inseam of trousers that fit, ${mm(body.trouserInseam)}.`,
      formula: UNSAID,
      lines: [],
    },
    ...body.estimates.map(estimateTold),
    ...crotchTold(body),
    ...body.remarks.map(remarkTold),
  ];
}

function estimateTold({ key, value, spread, sum, source, basis }: Estimate): WorkingStep {
  const name = measurementName(key);
  const sentence =
    basis === 'trousers'
      ? say`${name} was not measured but reckoned from trousers that fit: ${mm(value)}, give or take ${mm(spread)}.`
      : basis === 'block'
        ? say`${name} was not measured but taken from your own blocks: ${mm(value)}, give or take ${mm(spread)}.`
        : basis === 'survey'
          ? say`${name} was not measured; two bodies in three like this one lie within ${mm(spread)} of ${mm(value)}.`
          : say`${name} was not measured, and no survey of children measured it; by adults’ proportions two in three lie within ${mm(spread)} of ${mm(value)}.`;
  const formula = sum ? say`${sum} = ${mm(value)}. Source: ${source}.` : say`Source: ${source}.`;
  return { id: `body.estimate.${key}`, station: 'body', sentence, formula, lines: [] };
}

function crotchTold(body: Body): readonly WorkingStep[] {
  if (body.crotchLength !== undefined || body.child) return [];
  const { waistGirth, hipGirth, bodyRise, insideLeg, trouserInseam, estimates: asked } = body;
  const expected = crotchLengthExpected(takenIn({ waistGirth, hipGirth, bodyRise, insideLeg, trouserInseam, asked }));
  if (!expected) return [];
  return [
    {
      id: 'body.crotch',
      station: 'body',
      sentence: say`The crotch length was not measured; two bodies in three like this one lie within ${mm(expected.spread)} of ${mm(expected.value)}. That is too wide to fit a crotch by, so nothing is drawn from it.`,
      formula: say`${expected.sum ?? UNSAID}, waist at the navel. Source: ${expected.source}.`,
      lines: [],
    },
  ];
}

const remarkTold = ({ id, phrase, source }: Remark): WorkingStep => ({
  id: `body.doubt.${id}`,
  station: 'body',
  sentence: phrase,
  formula: say`Look at it again; nothing was changed. Source: ${source}.`,
  lines: [],
});
