import type { Language } from './language';
import { translated } from './translated';

const LETTERS: Readonly<Record<string, string>> = {
  a: 'å',
  e: 'é',
  i: 'î',
  o: 'ö',
  u: 'ü',
  y: 'ÿ',
  A: 'Å',
  E: 'É',
  I: 'Î',
  O: 'Ö',
  U: 'Ü',
  Y: 'Ÿ',
};
/** Many languages need a third more room than English. */
const LONGER = 0.3;

const accented = (text: string): string => text.replace(/[aeiouy](?![^{]*\})/gi, (letter) => LETTERS[letter] ?? letter);

/** A message of the made-up language: every vowel accented, a third longer, in brackets. */
function madeUp(template: string): string {
  const words = accented(template.replaceAll("'", '’'));
  return `«${words}${'~'.repeat(Math.round(LONGER * template.length))}»`;
}

/**
 * A language that nobody speaks: what shows a plain vowel was not said through the catalogue, what ends without its
 * bracket has no room. For tests, and for looking.
 */
export const madeUpLanguage = (): Language => ({ ...translated('en-GB', madeUp), ofLocale: accented });
