import type { EdgeName, PieceKind, PieceRef } from '../edges';
import type { Side } from '../leg';
import type { Phrase } from '../words';
import type { Scene } from './pictures/scene';

/** How an edge is sewn: to another one, held down by stitching after it was turned, or sewn on from the right side. */
export type SewnHow = 'seamed' | 'heldDown' | 'topstitched';

/**
 * How a raw edge is kept from fraying: overlocked (or zigzagged) alone, in one with the edge it is sewn to, by the
 * serger as it sews, turned under, shut in between layers, or under the elastic that is sewn over it.
 */
export type FinishedHow = 'overlocked' | 'together' | 'serged' | 'turnedUnder' | 'enclosed' | 'underElastic';

/** Edges of one piece (of all its copies) on which a step works. */
export interface EdgeWork<How extends string> {
  readonly piece: PieceKind;
  /** Where left and right differ, of which of them. */
  readonly side?: Side | undefined;
  readonly edges: readonly EdgeName[];
  readonly how: How;
}

/** A setting of the machine. @source practice */
export interface Setting {
  readonly name: Phrase;
  readonly value: Phrase;
}

/** How long a step takes: a fixed part, and minutes for each metre of sewing. @source practice */
export interface StepTime {
  readonly fixedMinutes: number;
  readonly metres: number;
  readonly minutesPerMetre: number;
}

/** The parts of the work, in order. */
export type SewingPart = 'prepare' | 'flat' | 'seams' | 'waist' | 'hems' | 'finish';

/** One step of the sewing. */
export interface SewingStep {
  /** Unique and stable, e.g. `waist.fold`. */
  readonly id: string;
  readonly part: SewingPart;
  readonly title: Phrase;
  /** What to do, in order; plain imperative sentences. */
  readonly tasks: readonly Phrase[];
  /** Why it is done now and so; empty where nobody would ask. */
  readonly why: Phrase;
  readonly settings: readonly Setting[];
  /** How to see that it is right. */
  readonly check: Phrase;
  /** The pieces that are cut here. */
  readonly cuts: readonly PieceRef[];
  readonly sews: readonly EdgeWork<SewnHow>[];
  readonly finishes: readonly EdgeWork<FinishedHow>[];
  /** A few words on what hurts in this step; empty where nothing does. */
  readonly care: Phrase;
  readonly time: StepTime;
  readonly scene: Scene;
}

/** Minutes of a step, unrounded. */
export const stepMinutes = ({ time }: Pick<SewingStep, 'time'>): number =>
  time.fixedMinutes + time.metres * time.minutesPerMetre;
