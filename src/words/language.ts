import type { Joined, PhraseValue } from './types';

/** A language that Legwork speaks. */
export interface Language {
  /** As in BCP 47, e.g. `en-GB`; numbers and lists are written by it. */
  readonly locale: string;
  /** By which another world of the page, such as a worker, asks for it again. */
  readonly name?: string;
  /**
   * A message in this language.
   *
   * @param template the English, as it stands in the catalogue
   * @param texts its values as they are printed
   * @param values the same before, for words that follow a number
   * @returns nothing where the English stands
   */
  readonly message: (template: string, texts: readonly string[], values: readonly PhraseValue[]) => string | undefined;
  /** A name as it is written within a sentence. */
  readonly within: (name: string) => string;
  /** What is said with the locale's own words, such as the “and” of a list, where those are not said as they are. */
  readonly ofLocale?: (text: string) => string;
}

/** English is what the source is written in: it has no messages to load. */
export const ENGLISH: Language = {
  locale: 'en-GB',
  message: () => undefined,
  within: (name) => name.charAt(0).toLowerCase() + name.slice(1),
};

/** One reader sits before a page or a terminal, so there is one language at a time, chosen before anything is said. */
let spoken = ENGLISH;

/** From now on everything is printed in this language. */
export function speak(language: Language): void {
  spoken = language;
}

/** The name of the language that is spoken, by which it is asked for again; empty for English. */
export const spokenName = (): string => spoken.name ?? '';

/** What is spoken, as a page says it of itself: `en`. */
export const spokenLanguage = (): string => new Intl.Locale(spoken.locale).language;

/** A message in the language that is spoken, or nothing where that is English. */
export const inLanguage = (...[template, texts, values]: Parameters<Language['message']>): string | undefined =>
  template === '' ? '' : spoken.message(template, texts, values);

/** A name as the language writes it within a sentence. */
export const withinSentence = (name: string): string => spoken.within(name);

const LISTS = { and: 'conjunction', or: 'disjunction', comma: 'unit' } as const;

/** “waist, hip and thigh”, as the language joins them. */
export function listed(items: readonly string[], joined: Joined): string {
  const parts = new Intl.ListFormat(spoken.locale, { type: LISTS[joined] }).formatToParts(items);
  return parts.map(({ type, value }) => (type === 'literal' ? localeWords(value) : value)).join('');
}

/** The reader's own calendar day, as the language writes it: “24 November 2026”. */
export const dated = (date: Date): string =>
  localeWords(new Intl.DateTimeFormat(spoken.locale, { day: 'numeric', month: 'long', year: 'numeric' }).format(date));

const DAY = 86_400;
/** Each unit of time, in seconds. */
const UNITS = [
  ['day', DAY],
  ['hour', 3600],
  ['minute', 60],
  ['second', 1],
] as const;

/** “5 min ago” or “yesterday”, as the language says it; in whole units of the largest that fits. */
export function timeAgo(seconds: number): string {
  const [unit, size] = UNITS.find(([, length]) => seconds >= length) ?? ['second', 1];
  const format = new Intl.RelativeTimeFormat(spoken.locale, { style: 'short', numeric: 'auto' });
  return localeWords(format.format(-Math.floor(seconds / size), unit));
}

const localeWords = (text: string): string => spoken.ofLocale?.(text) ?? text;
