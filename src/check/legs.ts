import type { Side } from '../leg';
import { say } from '../words';
import type { Check, Subject, Verdict } from './check';
import { checkLegsMeet } from './check-legs-meet';
import { runChecks } from './checks';

/** What the checks look at, and whose leg it is; undefined where both legs are cut from one pattern. */
export interface LegSubject extends Subject {
  readonly side: Side | undefined;
}

/**
 * The checks of a pair. Where the legs differ each check is run on both and the worse answer stands, with the leg that
 * it is about; and what is sewn to each other is compared.
 *
 * @param legs one leg for both sides, or the left one and the right one
 */
export function checksOfLegs(legs: readonly LegSubject[]): readonly Check[] {
  const [left, right] = legs;
  if (!left || !right) return left ? runChecks(left) : [];
  const found = legs.map(runChecks);
  const ids = new Set(found.flat().map(({ id }) => id));
  const both = [...ids].map((id) => worseOf(found.map((checks) => checks.find((check) => check.id === id))));
  const meet = checkLegsMeet(left, right);
  const after = both.findIndex(({ id }) => id === 'notches-meet') + 1;
  return both.toSpliced(after, 0, meet);
}

/** Figures of two legs that nobody would tell from each other, in the check’s own unit. @source tolerance */
const SAME = 0.05;
const WORST: readonly Verdict[] = ['good', 'doubtful', 'wrong'];

function worseOf([left, right]: readonly (Check | undefined)[]): Check {
  if (!left || !right) return (left ?? right) as Check;
  const rank = (check: Check): number => WORST.indexOf(check.verdict);
  const miss = (check: Check): number => Math.abs(check.measured - check.wanted);
  const leftIsWorse = rank(left) > rank(right) || (rank(left) === rank(right) && miss(left) > miss(right));
  const worse = leftIsWorse ? left : right;
  const same = Math.abs(left.measured - right.measured) < SAME && left.verdict === right.verdict;
  return same
    ? right
    : {
        ...worse,
        side: leftIsWorse ? 'left' : 'right',
        reason: leftIsWorse ? say`Left leg: ${worse.reason}` : say`Right leg: ${worse.reason}`,
      };
}
