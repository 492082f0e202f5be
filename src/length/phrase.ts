import { formatAmount } from './amount';
import { formatLength, type Mm, plain, type Units } from './length';

/** One piece of a sentence: words, or a value that is printed in the reader's unit. */
export type PhrasePart =
  | string
  | { readonly mm: Mm }
  | { readonly amount: Mm }
  | { readonly degrees: number }
  | { readonly share: number }
  | { readonly number: number; readonly decimals: number };

/** A sentence as data: it keeps its values, so that it can be said in centimetres or in inches. */
export type Phrase = readonly PhrasePart[];

/** A length inside {@link say}. */
export const mm = (value: Mm): PhrasePart => ({ mm: value });

/** A length to buy inside {@link say}, rounded up to what a shop cuts. */
export const amount = (value: Mm): PhrasePart => ({ amount: value });

/** An angle in degrees inside {@link say}. */
export const degrees = (value: number): PhrasePart => ({ degrees: value });

/** A fraction 0…1 inside {@link say}, printed as a percentage. */
export const share = (value: number): PhrasePart => ({ share: value });

/**
 * A bare number inside {@link say}.
 *
 * @param value the number
 * @param decimals how many decimals at most (default 2)
 */
export const number = (value: number, decimals = 2): PhrasePart => ({ number: value, decimals });

/**
 * Builds a phrase: say`The hip line is ${mm(490)} wide.`
 *
 * @param words the fixed words
 * @param values words, values, or whole phrases to put in between
 */
export function say(words: TemplateStringsArray, ...values: readonly (PhrasePart | Phrase)[]): Phrase {
  return words.flatMap((text, i) => {
    const value = values[i];
    const after = value === undefined ? [] : Array.isArray(value) ? (value as Phrase) : [value as PhrasePart];
    return text === '' ? after : [text, ...after];
  });
}

/**
 * Prints a phrase in the reader's unit.
 *
 * @param phrase the sentence
 * @param units the display units
 */
export function printPhrase(phrase: Phrase, units: Units): string {
  return phrase
    .map((part) => {
      if (typeof part === 'string') return part;
      if ('mm' in part) return formatLength(part.mm, units);
      if ('amount' in part) return formatAmount(part.amount, units);
      if ('degrees' in part) return `${plain(part.degrees, 1)}°`;
      if ('share' in part) return `${plain(part.share * 100, 1)} %`;
      return plain(part.number, part.decimals);
    })
    .join('');
}
