import {
  formatAmount,
  formatLength,
  lessThanStep,
  type Mm,
  plain,
  roundingOf,
  SHOWN_STEP,
  type Term,
  type Units,
} from '../length';
import { filled } from './filled';
import { inLanguage, listed, withinSentence } from './language';
import type { Phrase, PhraseValue } from './types';

/** Nothing to say. */
export const UNSAID: Phrase = { template: '', values: [] };

/** Whether there is anything to say. */
export const isSaid = ({ template }: Phrase): boolean => template !== '';

/** Inside {@link say}: what is the same in every language, for a person typed it, or it is a sign, a size or a document's title. */
export const own = (text: string): PhraseValue => ({ own: text });

/** A name that stands alone elsewhere, inside a sentence of {@link say}: English then writes it small. */
export const inside = (name: Phrase): PhraseValue => ({ inside: name });

/** A length inside {@link say}. */
export const mm = (value: Mm): PhraseValue => ({ mm: value });

/** A length inside {@link say} that is reckoned with there, a term of a sum or the sum: in figures, however small. */
export const part = (value: Mm): PhraseValue => ({ part: value });

/**
 * Behind the terms of a sum inside {@link say}: “ + rounding ⅛ in” where they, as they are printed, miss the sum as it is
 * printed; nothing where they add up.
 *
 * @param sum its true value, printed beside the terms
 * @param terms as they are printed; a bare number is taken once
 */
export const rounding = (sum: Mm, ...terms: readonly (Mm | Term)[]): PhraseValue => ({
  rounding: sum,
  terms: terms.map((term) => (typeof term === 'number' ? { mm: term } : term)),
});

/** A length to buy inside {@link say}, rounded up to what a shop cuts. */
export const amount = (value: Mm): PhraseValue => ({ amount: value });

/** An angle in degrees inside {@link say}. */
export const degrees = (value: number): PhraseValue => ({ degrees: value });

/** A fraction 0…1 inside {@link say}, printed as a percentage. */
export const share = (value: number): PhraseValue => ({ share: value });

/**
 * A bare number inside {@link say}.
 *
 * @param value the number
 * @param decimals how many decimals at most (default 2)
 */
export const number = (value: number, decimals = 2): PhraseValue => ({ number: value, decimals });

/** “waist, hip and thigh” inside {@link say}. */
export const all = (list: readonly Phrase[]): PhraseValue => ({ list, joined: 'and' });

/** “waist, hip or thigh” inside {@link say}. */
export const either = (list: readonly Phrase[]): PhraseValue => ({ list, joined: 'or' });

/** “waist, hip, thigh” inside {@link say}. */
export const inRow = (list: readonly Phrase[]): PhraseValue => ({ list, joined: 'comma' });

/**
 * Builds a phrase: say`The hip line is ${mm(490)} wide.` Its words are a whole sentence, or a whole name: another language
 * puts them in another order. `npm run words` gathers the templates from the source.
 *
 * @param words the fixed words
 * @param values values, whole phrases to put in between, or what other people wrote
 */
export function say(words: TemplateStringsArray, ...values: readonly PhraseValue[]): Phrase {
  return { template: words.reduce((template, text, i) => `${template}{${i - 1}}${text}`), values };
}

/** One after another: sentences with a space between them, formulas with a comma; what is unsaid is left out. */
export function inTurn(phrases: readonly Phrase[], between = ' '): Phrase {
  const said = phrases.filter(isSaid);
  return { template: said.map((_, i) => `{${i}}`).join(between), values: said };
}

/**
 * Words that hold no length, at once: words`Save`. For what is shown where it stands; what is kept or handed on is a
 * {@link Phrase}.
 */
export const words = (fixed: TemplateStringsArray, ...values: readonly PhraseValue[]): string =>
  said(say(fixed, ...values));

/** A name, or another phrase that holds no length, at once. */
export const said = (phrase: Phrase): string => printPhrase(phrase, 'cm');

/**
 * Prints a phrase in the reader's unit and language.
 *
 * @param phrase the sentence
 * @param units the display units
 */
export function printPhrase({ template, values }: Phrase, units: Units): string {
  const texts = values.map((value) => valueText(value, units));
  return inLanguage(template, texts, values) ?? filled(template, texts);
}

/** What is less than a step is told to be so: a seam that is off by a hair isn't off by 0. */
const lengthText = (length: Mm, units: Units): string =>
  lessThanStep(length, units)
    ? printPhrase(say`less than ${own(formatLength(SHOWN_STEP[units], units))}`, units)
    : formatLength(length, units);

function roundingText(left: Mm, units: Units): string {
  if (left === 0) return '';
  const by = own(formatLength(Math.abs(left), units));
  return printPhrase(left > 0 ? say` + rounding ${by}` : say` − rounding ${by}`, units);
}

function valueText(value: PhraseValue, units: Units): string {
  if ('own' in value) return value.own;
  if ('template' in value) return printPhrase(value, units);
  if ('inside' in value) return withinSentence(printPhrase(value.inside, units));
  if ('mm' in value) return lengthText(value.mm, units);
  if ('part' in value) return formatLength(value.part, units);
  if ('rounding' in value) return roundingText(roundingOf(value.rounding, value.terms, units), units);
  if ('amount' in value) return formatAmount(value.amount, units);
  if ('degrees' in value) return `${plain(value.degrees, 1)}°`;
  if ('share' in value) return `${plain(value.share * 100, 1)} %`;
  if ('list' in value)
    return listed(
      value.list.map((one) => printPhrase(one, units)),
      value.joined,
    );
  return plain(value.number, value.decimals);
}
