import type { Mm, Units } from '../../../length';
import type { Point } from '../../../plane';
import type { Draft, Limits } from '../../../project';
import type { Phrase } from '../../../words';

/** What can be taken hold of on the drawing: one number, and where it lies. */
export interface Handle {
  readonly key: string;
  /** What it sets, for those who listen. */
  readonly name: Phrase;
  /** Where its number lives in the project. */
  readonly path: string;
  /** Where the button lies on the drawing. */
  readonly at: (draft: Draft) => Point;
  /** The number that is set, millimetres. */
  readonly value: (draft: Draft) => Mm;
  readonly limits: (draft: Draft) => Limits;
  /** By how much the number grows where the button is pulled by one millimetre to the right, and down. */
  readonly pull: Point;
  /** What is written into the project for a number. */
  readonly written: (draft: Draft, value: Mm) => unknown;
  /** The number in words beside the button. */
  readonly words: (draft: Draft, units: Units) => string;
  /** What is said after them where there is room. */
  readonly detail?: (draft: Draft) => Phrase;
  /** What else to say of it, to those who listen and where there is room. */
  readonly note?: (draft: Draft, units: Units) => string;
  /** One step while it is dragged, by unit. */
  readonly step: Readonly<Record<Units, Mm>>;
  readonly side: 'left' | 'right' | 'above' | 'below';
}
