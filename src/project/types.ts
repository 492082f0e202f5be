import type { TracedBlock } from '../block';
import type { BodyInput } from '../body';
import type { Sides } from '../leg';
import type { Units } from '../length';
import type { Choices } from './fields';
import type { VERSION } from './migrate';

/** The project: what the person typed, every default filled in. Millimetres, degrees, fractions. */
export interface Project extends Omit<Choices, 'block' | 'pocket' | 'fit' | 'sides.left' | 'sides.right'> {
  readonly format: 'legwork-project';
  readonly version: typeof VERSION;
  readonly name: string;
  readonly units: Units;
  readonly body: BodyInput;
  readonly block:
    | (Choices['block'] & { readonly source: 'drafted' })
    | { readonly source: 'traced'; readonly front: TracedBlock; readonly back: TracedBlock };
  readonly pocket: Choices['pocket'] | null;
  readonly fit: Choices['fit'] | null;
  /** What one side of the body has more than the other; null where they are alike. */
  readonly sides: Sides | null;
}

export type ShapeName = Extract<Project['leg']['shape'], string>;
