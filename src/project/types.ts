import type { BlockOptions, Corrections, TracedBlock } from '../block';
import type { MeasurementKey } from '../body';
import type { ClothChoices } from '../cloth';
import type { Allowances, CasingChoices, HemChoices, PocketChoices } from '../edges';
import type { LengthName } from '../leg';
import type { Mm, Units } from '../length';
import type { SewingMachine } from '../sewing';

export type ShapeName = 'block' | 'pyjama' | 'straight';

/** The project: what the person typed, every default filled in. Millimetres, degrees, fractions. */
export interface Project {
  readonly format: 'legwork-project';
  readonly version: 1;
  readonly name: string;
  readonly units: Units;
  readonly body: { readonly label: string } & { readonly [K in MeasurementKey]?: number };
  readonly use: { readonly forSleeping: boolean };
  readonly block:
    | ({ readonly source: 'drafted' } & BlockOptions)
    | { readonly source: 'traced'; readonly front: TracedBlock; readonly back: TracedBlock };
  readonly cloth: ClothChoices & { readonly stretch: number };
  readonly leg: {
    readonly spread: Mm;
    readonly straighten: number | 'auto';
    readonly raiseWaist: Mm;
    readonly lowerCrotch: Mm;
    readonly length: LengthName | { readonly inseam: Mm };
    readonly shape: ShapeName | { readonly hemGirth: Mm };
  };
  readonly waist: CasingChoices;
  readonly hem: HemChoices;
  readonly allowances: Allowances;
  readonly pocket: PocketChoices | null;
  readonly sewing: { readonly machine: SewingMachine };
  readonly fit: Corrections | null;
  /** How the pattern is thrown on the cloth: the cut line's width, and light lines on a dark ground or dark on light. */
  readonly projector: { readonly line: Mm; readonly ground: 'dark' | 'light' };
  readonly paper: {
    readonly sheet: string;
    readonly orientation: 'auto' | 'portrait' | 'landscape';
    readonly margin: Mm;
    readonly overlap: Mm;
    readonly ownWidth: Mm;
    readonly ownHeight: Mm;
    readonly scale: number;
    /** Of a sample below true size: whether the seam allowances are drawn smaller too. */
    readonly allowances: 'scaled' | 'full';
    readonly correctX: number;
    readonly correctY: number;
  };
}
