import type { Mm } from '../length';
import type { Phrase } from '../words';

/** The measurements of the catalogue, by their keys in the project file. */
export type MeasurementKey =
  | 'waistGirth'
  | 'hipGirth'
  | 'bodyRise'
  | 'insideLeg'
  | 'trouserInseam'
  | 'hipDepth'
  | 'highHipGirth'
  | 'crotchLength'
  | 'frontCrotchLength'
  | 'thighGirth'
  | 'kneeGirth'
  | 'calfGirth'
  | 'ankleGirth'
  | 'footEntryGirth'
  | 'waistToKnee'
  | 'outsideLeg'
  | 'height'
  | 'ageYears';

/** What is known of a body: any of the catalogue, in millimetres (age in years). */
export type Known = { readonly [K in MeasurementKey]?: number | undefined };

/** What the person typed: any of the catalogue, in millimetres (age in years). */
export type BodyInput = { readonly label: string; readonly nappy?: boolean } & {
  readonly [K in MeasurementKey]?: number;
};

/** What a draft can't do without and nobody knows by heart: in the place of a number its estimate may be asked for. */
export type AskedKey = 'bodyRise' | 'insideLeg';

/** What a fitted block that somebody owns tells of its wearer, in the place of a tape. */
export type BlockToldKey = 'waistGirth' | 'hipGirth' | 'hipDepth' | AskedKey;

/** A body as a project holds it: numbers where a tape was, `estimated` where somebody asked for that. */
export type BodyGiven = Omit<BodyInput, AskedKey> & { readonly [K in AskedKey]?: number | 'estimated' } & {
  /** What is taken from brought blocks where no number of a tape stands. */
  readonly fromBlock?: readonly BlockToldKey[];
};

/** What brought blocks tell of their wearer, by measurement. */
export type BlockTold = { readonly [K in BlockToldKey]?: Estimate };

/** What every body brings, and what else an estimate may lean on. */
export type EstimateFigures = Required<Pick<BodyInput, 'waistGirth' | 'hipGirth' | 'bodyRise' | 'insideLeg'>> & {
  readonly [K in 'height' | 'ageYears' | 'calfGirth' | 'ankleGirth' | 'crotchLength' | 'trouserInseam']?:
    | number
    | undefined;
} & {
  /** Those of the figures that are estimates themselves. */
  readonly asked?: readonly Estimate[];
};

/** The measurements that the draft needs and may estimate. */
export type EstimatedKey =
  | 'hipDepth'
  | 'thighGirth'
  | 'kneeGirth'
  | 'calfGirth'
  | 'ankleGirth'
  | 'footEntryGirth'
  | 'waistToKnee';

/** A value that nobody measured, with the rule it comes from. */
export interface Estimate {
  readonly key: MeasurementKey;
  readonly value: number;
  /** Standard deviation of the estimate, in the measurement's unit. */
  readonly spread: number;
  /** The measurements that it follows when they change. */
  readonly from: readonly MeasurementKey[];
  /** The sum by which it was found, with the values put in; unsaid where the source says it. */
  readonly sum?: Phrase;
  /** Where the rule comes from. */
  readonly source: Phrase;
  /**
   * `survey`: this measurement was taken of people like this one. `inference`: it was not; the value comes from other
   * people's proportions, and a check that needs the measurement judges by the spread as well. `trousers`: trousers that
   * fit were measured in its place. `block`: it is what blocks of the wearer's own imply.
   */
  readonly basis: 'survey' | 'inference' | 'trousers' | 'block';
}

/** Something about a body that is worth a second look with the tape: never an error, and no value is changed for it. */
export interface Remark {
  /** Stable, e.g. `waist-hip`. */
  readonly id: string;
  /** The measurements it is about; the first is the one most likely misread. */
  readonly keys: readonly MeasurementKey[];
  /** What was found and what people measure, in one sentence or two. */
  readonly phrase: Phrase;
  /** Where the rule comes from. */
  readonly source: Phrase;
}

/** A body ready to draft from: what was measured, and estimates for the rest. */
export interface Body {
  readonly label: string;
  /** Whether it is estimated by the lines for children. */
  readonly child: boolean;
  readonly waistGirth: Mm;
  readonly hipGirth: Mm;
  readonly bodyRise: Mm;
  readonly insideLeg: Mm;
  /** Of trousers that fit, where those were measured: a full length is as long. */
  readonly trouserInseam: Mm | undefined;
  readonly hipDepth: Mm;
  readonly thighGirth: Mm;
  readonly kneeGirth: Mm;
  readonly calfGirth: Mm;
  readonly ankleGirth: Mm;
  readonly footEntryGirth: Mm;
  readonly waistToKnee: Mm;
  /** Undefined where it was not measured: these three are never estimated into the draft. */
  readonly highHipGirth: Mm | undefined;
  readonly crotchLength: Mm | undefined;
  readonly frontCrotchLength: Mm | undefined;
  readonly nappy: boolean;
  readonly estimates: readonly Estimate[];
  readonly remarks: readonly Remark[];
}
