import { expect, it } from 'vitest';
import { type Check, runChecks, type Subject } from '../../src/check';
import { isSaid } from '../../src/words';
import { changedBy, example, piecedExample, subjectOf, tracedExample } from './subject';

/** The example as the checks see it, its blocks brought along again as tracings, and its fork's tip sewn on again. */
export const whole: Subject = subjectOf(example);
export const traced: Subject = subjectOf(tracedExample);
export const pieced: Subject = subjectOf(piecedExample);

export const checkOf = (subject: Subject, id: string): Check | undefined => runChecks(subject).find((c) => c.id === id);

/** What a check measures of the example. */
export const value = (id: string): number => checkOf(whole, id)?.measured ?? Number.NaN;

/** The example with another body in it, its leg unchanged. */
export const withBody = (body: Partial<Record<keyof Subject['body'], unknown>>): Subject =>
  ({ ...whole, body: { ...whole.body, ...body } }) as Subject;

/** A check and one of its verdicts, a subject that gets it, and what else changes with it. */
export type Spoilt = readonly [
  id: string,
  verdict: Check['verdict'],
  how: string,
  subject: () => Subject,
  also?: readonly string[],
];

/** One test for each: the verdict, that it says what to change, and that no other check changes. */
export function tried(all: readonly Spoilt[]): void {
  for (const [id, verdict, how, subject, also = []] of all) {
    it(`of ${id}: ${verdict} of ${how}, and no other verdict changes`, () => {
      const spoilt = subject();
      const check = checkOf(spoilt, id);
      expect(check?.verdict).toBe(verdict);
      expect(check && isSaid(check.remedy)).toBe(true);
      const before = id.startsWith('traced') ? traced : whole;
      expect(changedBy(spoilt, before).filter((other) => other !== id)).toEqual(also);
    });
  }
}
