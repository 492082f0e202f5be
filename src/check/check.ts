import type { Phrase } from '../length';

/** How a check came out. */
export type Verdict = 'good' | 'mind' | 'wrong';

/** One check of the finished draft, in the form of the report. */
export interface Check {
  /** Stable, e.g. `inseams-equal`. */
  readonly id: string;
  /** Its name for people, e.g. “Inseams equal”. */
  readonly name: string;
  readonly verdict: Verdict;
  readonly measured: number;
  readonly wanted: number;
  readonly tolerance: number;
  readonly unit: 'mm' | 'degrees' | 'share' | 'count';
  /** Why the verdict, in one sentence. */
  readonly reason: Phrase;
  /** What to change; empty where all is good. */
  readonly remedy: Phrase;
}
