import type { Body } from '../body';
import type { Mm } from '../length';
import type { Phrase } from '../words';

/** How a rule is known: read in its document, quoted by somebody, from memory, or what the trade does. */
export type Sureness = 'read' | 'quoted' | 'memory' | 'practice';

/** Where a caution comes from. */
export interface CautionSource {
  readonly document: string;
  /** Section or clause; empty where there is none. */
  readonly clause: string;
  readonly sure: Sureness;
}

/** One caution for safety, as data. */
export interface Caution {
  /** Stable, e.g. `childrens-sleepwear`. */
  readonly id: string;
  readonly title: Phrase;
  readonly sentence: Phrase;
  readonly source: CautionSource;
  /** The fields of the project that raised it, the one that chose it first; empty where nothing in particular did. */
  readonly raisedBy: readonly string[];
}

/** What cautions depend on. */
export interface CautionChoices {
  readonly body: Pick<Body, 'child' | 'waistGirth'> & { readonly ageYears: number | undefined };
  /** Undefined where nobody was asked: then it may be. */
  readonly forSleeping: boolean | undefined;
  /** How much of a waist cord hangs free at each end with the opening laid flat at its widest; undefined without a cord. */
  readonly cordEnds: Mm | undefined;
  /** Whether a cord is drawn through the hems. */
  readonly hemCords: boolean;
  /** Whether elastic holds the waist, and the hems. */
  readonly elastic: boolean;
  readonly hemElastic: boolean;
}

/** What cautions compare, from the finished pattern. */
export interface CautionMeasures {
  /** The longest extent of the finished pair, folded and sewn. */
  readonly largestExtent: Mm;
  readonly waistOpening: Mm;
}
