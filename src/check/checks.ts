import type { Check, Subject } from './check';
import { checkAllowances } from './check-allowances';
import { checkCrotch } from './check-crotch';
import { checkCutLine } from './check-cut-line';
import { checkHemEntry } from './check-hem-entry';
import { checkInseams } from './check-inseams';
import { checkPullOn } from './check-pull-on';
import { checkTurnings } from './check-turnings';

/** All checks in the order in which they are shown: what keeps a person from wearing it first. */
export const checks: readonly ((subject: Subject) => Check)[] = [
  checkPullOn,
  checkHemEntry,
  checkInseams,
  checkCrotch,
  checkTurnings,
  checkAllowances,
  checkCutLine,
];

/** Runs every check on a finished draft. */
export const runChecks = (subject: Subject): readonly Check[] => checks.map((check) => check(subject));
