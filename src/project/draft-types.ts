import type { Blocks, CorrectedBy, Corrections, Proportions } from '../block';
import type { Body } from '../body';
import type { EdgeChoices, FinishedLeg, Notions, Piece } from '../edges';
import type { JoinedBlocks, Leg, LegChoices } from '../leg';
import type { Mm } from '../length';
import type { Caution } from '../sewing';
import type { Search } from '../sheets';
import type { CutLeg } from './sides';
import type { Project } from './types';

/** The finished measures of the report, all of the printed curve; millimetres and degrees, `straighten` a fraction. */
export interface Measures {
  readonly hipGirthFinished: Mm;
  readonly waistOpening: Mm;
  readonly pullOnNeeded: Mm;
  readonly hemGirthFinished: Mm;
  readonly inseamFront: Mm;
  readonly inseamBack: Mm;
  readonly crotchLengthFinished: Mm;
  /** From the waist edge at the side down to the crotch. */
  readonly crotchDepthFinished: Mm;
  /** How far the crotch hangs below the body, whatever was raised or lowered at the waist. */
  readonly riseEase: Mm;
  readonly thighGirthFinished: Mm;
  readonly gapAtWaist: Mm;
  readonly gapAtKnee: Mm;
  readonly gapAtHem: Mm;
  readonly spread: Mm;
  readonly straighten: number;
  readonly leanFront: number;
  readonly leanBack: number;
  readonly casingHeight: Mm;
  readonly catch: Mm;
  readonly elasticLength: Mm;
  readonly crotchFit: Mm;
  readonly backCrotchDrop: Mm;
}

/** The blocks of a project, with the proportions they were drafted by where they were drafted. */
export interface ProjectBlocks {
  readonly blocks: Blocks;
  readonly proportions: Proportions | undefined;
  /** As they were before anything was corrected after wearing. */
  readonly uncorrected: Blocks;
  /** What each correction moved; undefined where nothing was corrected. */
  readonly corrections: Readonly<Record<keyof Corrections, CorrectedBy>> | undefined;
}

/** A cut leg with its own measures; those of girths that go round both legs as if the other one were like it. */
export interface DraftLeg extends CutLeg {
  readonly measures: Measures;
}

/**
 * Everything that one project becomes, as plain data that can be kept, copied and sent. What is asked of it later, such
 * as its checks, sheets, lay and working, is found by functions that remember what they answered.
 */
export interface Draft {
  readonly project: Project;
  readonly body: Body;
  readonly blocks: Blocks;
  /** What the blocks were drawn by; undefined where they were brought along. */
  readonly proportions: Proportions | undefined;
  /** One leg for both sides, or the left one and the right one where they differ. */
  readonly legs: readonly [DraftLeg, ...DraftLeg[]];
  /** The one leg, or the right one. */
  readonly leg: Leg;
  /** What the leg was made from: for showing how it came about, and what another number would give. */
  readonly joined: JoinedBlocks;
  readonly legChoices: LegChoices;
  /** The same leg with casing and hem, as the order of work folds and sews them. */
  readonly finished: FinishedLeg;
  readonly pieces: readonly Piece[];
  /** The same as they are put on paper: with wider allowances where a sample below true size keeps them full. */
  readonly printed: readonly Piece[];
  /** What is cut or bought to length beside the cloth. */
  readonly notions: Notions;
  readonly measures: Measures;
  readonly cautions: readonly Caution[];
  /** How long is searched for few sheets. */
  readonly search: Search;
  /** What came before, for telling how the draft came about. */
  readonly origin: {
    readonly drafted: ProjectBlocks;
    /** The leg that fits both sides. */
    readonly leg: Leg;
    readonly edges: EdgeChoices;
  };
}
