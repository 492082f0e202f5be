import type { Body } from '../body';
import type { CasingHeights, FinishedLeg, HemChoices } from '../edges';
import type { Leg } from '../leg';
import type { Mm, Phrase } from '../length';

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

/** The cloth, as far as checks ask for it. */
export interface ClothFigures {
  readonly kind: 'woven' | 'knit';
  /** Measured stretch of a knit, a fraction of its relaxed length. */
  readonly stretch: number;
}

/** Everything that the checks look at. */
export interface Subject {
  readonly body: Body;
  readonly cloth: ClothFigures;
  readonly leg: Leg;
  readonly finished: FinishedLeg;
  readonly casing: CasingHeights;
  readonly hem: HemChoices;
  readonly opening: Mm;
}
