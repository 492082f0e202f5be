import type { Blocks, Corrections, Proportions } from '../block';
import type { Body } from '../body';
import {
  type CasingChoices,
  type FinishedLeg,
  type HemChoices,
  type HemFinish,
  USABLE_STRETCH,
  type WaistFinish,
} from '../edges';
import type { JoinedBlocks, Leg, LegChoices, Side } from '../leg';
import type { Mm } from '../length';
import type { PairByNumbers } from '../trace';
import type { Phrase } from '../words';

/** How a check came out. */
export type Verdict = 'good' | 'doubtful' | 'wrong';

/** The fields of the project that a remedy may set, and to what; the room of the project doesn't compile with one that it has not. */
interface Remedied {
  'block.riseEase': Mm;
  'cloth.layout': 'best';
  'cloth.oneWay': boolean;
  'cloth.piecedTip': Mm;
  'cloth.width': Mm;
  'fit.sittingPull': Mm;
  'hem.finish': HemFinish;
  'leg.lowerCrotch': Mm;
  'leg.shape': 'pyjama' | { readonly hemGirth: Mm };
  'leg.spread': Mm;
  'leg.straighten': number | 'auto';
  'paper.margin': Mm;
  'paper.overlap': Mm;
  'paper.printerMargin': Mm | 'auto';
  'waist.elasticLength': Mm;
  'waist.finish': WaistFinish;
  'waist.turnOfCloth': Mm;
}

/** One field of the project set to another value: a path such as `leg.spread`, and what to write there. */
export type FieldChange = {
  [Path in keyof Remedied]: { readonly path: Path; readonly value: Remedied[Path] };
}[keyof Remedied];

/** A remedy that can be applied in one go. */
export interface Fix {
  /** What it does, as the words on a button. */
  readonly label: Phrase;
  readonly changes: readonly FieldChange[];
}

/** One check of the finished draft, in the form of the report. */
export interface Check {
  /** Stable, e.g. `inseams-equal`. */
  readonly id: string;
  /** Its name for people, e.g. “Inseams equal”. */
  readonly name: Phrase;
  readonly verdict: Verdict;
  readonly measured: number;
  /** What was wanted; where a range is wanted, the end of it that is nearer. 0 where nothing could be compared. */
  readonly wanted: number;
  readonly tolerance: number;
  readonly unit: 'mm' | 'degrees' | 'share' | 'count';
  /** Why the verdict, in one sentence. */
  readonly reason: Phrase;
  /** What to change; empty where all is good. */
  readonly remedy: Phrase;
  /** Whose leg it is about, where the legs differ and it is not about both. */
  readonly side?: Side;
  /** The remedy as a change of the project, where one change makes this check better. */
  readonly fix?: Fix;
}

/** The cloth, as far as checks ask for it. */
export interface ClothFigures {
  readonly kind: 'woven' | 'knit';
  /** Measured stretch of a knit, a fraction of its relaxed length. */
  readonly stretch: number;
}

/** What a knit gives at an edge that was sewn, a fraction of its relaxed length; 0 for a woven. */
export const usableStretch = ({ kind, stretch }: ClothFigures): number =>
  kind === 'knit' ? USABLE_STRETCH * stretch : 0;

/** The cloth as it lies before cutting. */
export interface ClothOnTable extends ClothFigures {
  readonly width: Mm;
  /** Fraction of the width lost in the first wash. */
  readonly shrinkWidth: number;
  readonly washFirst: boolean;
  /** Of a check along the grain, and of stripes across; 0 where there is none. */
  readonly repeat: Mm;
  readonly repeatAcross: Mm;
}

/** Everything that the checks look at. */
export interface Subject {
  readonly body: Body;
  readonly cloth: ClothOnTable;
  readonly blocks: Blocks;
  /** The blocks as they were before anything was corrected after wearing. */
  readonly uncorrected: Blocks;
  /** What drafted blocks were drawn by; undefined where they were brought along. */
  readonly proportions: Proportions | undefined;
  /** Whether the blocks were brought along, and not drafted here. */
  readonly traced: boolean;
  /** Blocks by numbers: what their table told; undefined for others. */
  readonly numbers?: PairByNumbers | undefined;
  /** What was corrected after wearing. */
  readonly corrections: Corrections;
  readonly joined: JoinedBlocks;
  readonly leg: Leg;
  readonly choices: LegChoices;
  readonly finished: FinishedLeg;
  readonly waist: CasingChoices;
  readonly hem: HemChoices;
  readonly opening: Mm;
  /** The finished hip of both legs, where they differ; twice this leg's, if left out. */
  readonly hip?: Mm;
  /** The elastic or the knit band at the waist, as it is cut; undefined where there is neither. */
  readonly elasticLength: Mm | undefined;
  /** The cord at the waist, as it is cut; undefined where there is none. */
  readonly cordLength: Mm | undefined;
  /** Of who wears it, where it was said. */
  readonly ageYears: number | undefined;
}
