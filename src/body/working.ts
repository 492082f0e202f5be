import { mm, type PhrasePart, say } from '../length';
import type { WorkingStep } from '../plane';
import { measurements } from './catalogue';
import type { Body } from './types';

/** What is said about the body: what was measured, and each estimate with its spread and source. */
export function bodyWorking(body: Body): readonly WorkingStep[] {
  const length = (value: number): PhrasePart => mm(value);
  return [
    {
      id: 'body.measured',
      station: 'body',
      sentence: say`These four decide the draft: waist ${length(body.waistGirth)}, hip ${length(body.hipGirth)}, body rise ${length(body.bodyRise)}, inside leg ${length(body.insideLeg)}.`,
      formula: [],
      lines: [],
    },
    ...body.estimates.map((estimate): WorkingStep => {
      const name = measurements.find((m) => m.key === estimate.key)?.name ?? estimate.key;
      return {
        id: `body.estimate.${estimate.key}`,
        station: 'body',
        sentence: say`${name} was not measured; two bodies in three like this one lie within ${mm(estimate.spread)} of ${mm(estimate.value)}.`,
        formula: say`Source: ${estimate.source}.`,
        lines: [],
      };
    }),
  ];
}
