import { MM_PER_INCH, type Mm, type Units } from './length';

/** The one step to which a length is rounded wherever people read it: what a tape shows, 1 mm or ⅛ in. */
export const SHOWN_STEP: Readonly<Record<Units, Mm>> = { cm: 1, inch: MM_PER_INCH / 8 };

/** Of a step: halves that reckoning in another order makes a hair smaller are rounded up all the same. */
const HAIR = 1e-6;
/** What is nearer to nothing is nothing, and isn't told to be little, mm. */
const NOTHING: Mm = 0.05;

/**
 * A length in whole steps, halves away from 0.
 *
 * @param mm millimetres
 * @param units the display units
 */
export const shownSteps = (mm: Mm, units: Units): number =>
  Math.sign(mm) * Math.floor(Math.abs(mm) / SHOWN_STEP[units] + 0.5 + HAIR);

/** Whether a length is something, and is shown as 0 all the same. */
export const lessThanStep = (mm: Mm, units: Units): boolean => Math.abs(mm) >= NOTHING && shownSteps(mm, units) === 0;

/** One term of a sum as it is shown: a length, and how often it is taken; negative where it is taken off. */
export interface Term {
  readonly mm: Mm;
  /** 1 where it isn't said. */
  readonly times?: number;
}

/**
 * What the rounded terms of a sum miss of the rounded sum, so that it can be said beside them: 25.4 + 1.5 mm is shown as
 * 1 in + 0 in, and 1⅛ in.
 *
 * @param sum its true value, millimetres
 * @param terms as they are shown beside it
 * @param units the display units
 * @returns millimetres, a whole number of steps; 0 where they add up as they are shown
 */
export function roundingOf(sum: Mm, terms: readonly Term[], units: Units): Mm {
  const added = terms.reduce((all, { mm, times = 1 }) => all + times * shownSteps(mm, units), 0);
  return Math.round(shownSteps(sum, units) - added) * SHOWN_STEP[units];
}
