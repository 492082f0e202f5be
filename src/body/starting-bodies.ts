import { mm, number, type Phrase, say } from '../words';
import { CHILDREN, MEN, type StartingRow, WOMEN } from './starting-rows';
import type { BodyInput } from './types';

/** A body to start from where there is no tape: the middle of many people, to be corrected. */
export interface StartingBody {
  /** What it was chosen by: the hip girth in millimetres, a child's age in years. */
  readonly by: number;
  /** How many people stand behind it. */
  readonly people: number;
  readonly figures: Omit<BodyInput, 'label' | 'nappy'>;
}

/** Whom the starting bodies are the middle of, and by what they are chosen. */
export type StartingKind = 'woman' | 'man' | 'child';

/**
 * Starting bodies by hip girth (850–1250 mm, as far as ten people stand behind a row) or by age (2–17 years). Each
 * figure is the median on its own among the people whose hip lies within 25 mm, or of that age. Girths of the leg are
 * left out on purpose: an estimate moves along when the hip is corrected, a filled field would not. So is the crotch
 * length, which is never drawn from an estimate.
 *
 * @source ANSUR II (NATICK/TR-15/007, 2014); UM-HSRI-77-17, 1977
 */
export const STARTING_BODIES: Readonly<Record<StartingKind, readonly StartingBody[]>> = {
  woman: WOMEN.map((row) => startingBody(row)),
  man: MEN.map((row) => startingBody(row)),
  child: CHILDREN.map((row) => startingBody(row, row[0])),
};

/**
 * Where a starting body comes from, in a sentence.
 *
 * @param kind whom it is the middle of
 * @param people how many stand behind it
 */
export function startingSource(kind: StartingKind, people: number): Phrase {
  if (kind === 'child')
    return say`Middle values of ${number(people)} children of that age, each measurement by itself (AnthroKids, UM-HSRI-77-17, 1977). Their inside leg is inferred from the fold of the seat, and children today are heavier.`;
  const whose = say`whose hip lies within ${mm(25)} of it, each measurement by itself, the waist at the navel (ANSUR II, NATICK/TR-15/007, 2014)`;
  return kind === 'woman'
    ? say`Middle values of ${number(people)} women ${whose}.`
    : say`Middle values of ${number(people)} men ${whose}.`;
}

function startingBody([by, people, waist, hip, rise, depth, inside, height]: StartingRow, age?: number): StartingBody {
  const figures = {
    waistGirth: waist,
    hipGirth: hip,
    bodyRise: rise,
    hipDepth: depth,
    insideLeg: inside,
    height,
    ...(age === undefined ? {} : { ageYears: age }),
  };
  return { by, people, figures };
}
