import type { Mm, Term } from '../length';

/** How the items of a list follow on each other: waist, hip {and, or, nothing but a comma} thigh. */
export type Joined = 'and' | 'or' | 'comma';

/** One value of a sentence, printed in the reader's unit and language. */
export type PhraseValue =
  | Phrase
  | { readonly own: string }
  | { readonly inside: Phrase }
  | { readonly mm: Mm }
  | { readonly part: Mm }
  | { readonly rounding: Mm; readonly terms: readonly Term[] }
  | { readonly amount: Mm }
  | { readonly degrees: number }
  | { readonly share: number }
  | { readonly number: number; readonly decimals: number }
  | { readonly list: readonly Phrase[]; readonly joined: Joined };

/**
 * A sentence as data. It keeps its template, by which other languages find their own words, and its values, so that it can
 * be said in centimetres or in inches.
 */
export interface Phrase {
  /** English, each value's place as `{0}`, `{1}`, …; empty where nothing is said. */
  readonly template: string;
  readonly values: readonly PhraseValue[];
}
