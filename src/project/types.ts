import type { BodyGiven } from '../body';
import type { Sides } from '../leg';
import type { Units } from '../length';
import type { PrintedSheets } from '../sheets';
import type { BroughtBlocks } from '../trace';
import type { Choices } from './fields';
import type { VERSION } from './migrate';

/** The project: what the person typed, every default filled in. Millimetres, degrees, fractions. */
export interface Project extends Omit<Choices, 'block' | 'pocket' | 'fit' | 'sides.left' | 'sides.right'> {
  readonly format: 'legwork-project';
  readonly version: typeof VERSION;
  readonly name: string;
  readonly units: Units;
  readonly body: BodyGiven;
  readonly block: (Choices['block'] & { readonly source: 'drafted' }) | BroughtBlocks;
  readonly pocket: Choices['pocket'] | null;
  readonly fit: Choices['fit'] | null;
  /** What one side of the body has more than the other; null where they are alike. */
  readonly sides: Sides | null;
  /** The pattern as it was last printed, as far as that is known. */
  readonly lastPrint?: LastPrint | undefined;
}

export type ShapeName = Extract<Project['leg']['shape'], string>;

/** What came to paper on one day: its sheets, and what was chosen then. */
export interface Print extends PrintedSheets {
  /** The day, as people there count it: `2026-11-30`. */
  readonly on: string;
  readonly project: Omit<Project, 'lastPrint'>;
}

/** The pattern as it was last printed, kept with its project. */
export interface LastPrint extends Print {
  /** The print before, which counts again where this one was only saved and never printed. */
  readonly before?: Print | undefined;
}
