import type { Mm } from '../length';

/** The measurements of the catalogue, by their keys in the project file. */
export type MeasurementKey =
  | 'waistGirth'
  | 'hipGirth'
  | 'bodyRise'
  | 'insideLeg'
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

/** A value that nobody measured, with the rule it comes from. */
export interface Estimate {
  readonly key: MeasurementKey;
  readonly value: number;
  /** Standard deviation of the estimate, in the measurement's unit. */
  readonly spread: number;
  /** Where the rule comes from. */
  readonly source: string;
}

/** A body ready to draft from: what was measured, and estimates for the rest. */
export interface Body {
  readonly label: string;
  readonly waistGirth: Mm;
  readonly hipGirth: Mm;
  readonly bodyRise: Mm;
  readonly insideLeg: Mm;
  readonly hipDepth: Mm;
  readonly thighGirth: Mm;
  readonly kneeGirth: Mm;
  readonly footEntryGirth: Mm;
  readonly waistToKnee: Mm;
  /** Undefined where it was not measured: these three are never estimated into the draft. */
  readonly highHipGirth: Mm | undefined;
  readonly crotchLength: Mm | undefined;
  readonly frontCrotchLength: Mm | undefined;
  readonly nappy: boolean;
  readonly estimates: readonly Estimate[];
}
