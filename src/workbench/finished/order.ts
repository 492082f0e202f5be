import type { Check, Verdict } from '../../check';

const RANK: Readonly<Record<Verdict, number>> = { wrong: 0, doubtful: 1, good: 2 };

/** Checks with what wants a look first; the rest in the order of the work. */
export function inOrder(checks: readonly Check[]): readonly Check[] {
  return checks.toSorted((a, b) => RANK[a.verdict] - RANK[b.verdict]);
}
