import { plainLetters } from '../length';
import { own, type Phrase, say } from '../words';

type Ranges = readonly (readonly [first: number, last: number])[];

/** What a pattern, its working and most names need in print, in ranges of Unicode: the small print font has these. */
export const PRINTED: Ranges = [
  [0x20, 0x7e], // ASCII
  [0xa0, 0xff], // Latin-1: ° × ÷ · ½ ¼ ¾
  [0x100, 0x17f], // Latin Extended-A
  [0x2009, 0x200a], // thin spaces
  [0x2010, 0x2027], // hyphens, dashes, quotation marks, bullet, ellipsis
  [0x202f, 0x203a], // narrow space, per mille, primes ′ ″, angle quotation marks
  [0x2044, 0x2044], // fraction slash
  [0x2070, 0x2071], // raised and lowered figures, first part
  [0x2074, 0x208e], // and the rest
  [0x2150, 0x215e], // ⅓ ⅔ ⅛ ⅜ ⅝ ⅞ and their like
  [0x2190, 0x2199], // arrows
];

/** Single characters beside them: Greek letters and signs of the formulas, and marks of the drawing. */
export const PRINTED_SINGLY = 'Δαβγδθλπφ€№™Ω∆−√∞≈≠≤≥∠∥⊥■□▲△▶▷▼▽◀◁◆◇○●✓✗';

/**
 * Letters of names that stand one after another and need no joining, stacking or turning: the wide print font has these,
 * too. Whatever is written otherwise can’t be set letter by letter.
 */
export const PRINTED_WIDE: Ranges = [
  [0x180, 0x24f], // Latin Extended-B
  [0x250, 0x2e9], // letters of phonetics, which some languages of Africa are written with
  [0x300, 0x34f], // accents that found no letter of their own
  [0x370, 0x3ff], // Greek
  [0x400, 0x525], // Cyrillic
  [0x531, 0x556], // Armenian capitals
  [0x559, 0x55f], // its accents
  [0x561, 0x587], // and its small letters
  [0x10d0, 0x10fc], // Georgian
  [0x1e00, 0x1efb], // Latin with two accents, as in Vietnamese
  [0x1f00, 0x1fff], // Greek with accents
];

const within = (code: number, ranges: Ranges): boolean => ranges.some(([first, last]) => code >= first && code <= last);

const isPrinted = (letter: string): boolean =>
  within(letter.codePointAt(0) ?? 0, PRINTED) || PRINTED_SINGLY.includes(letter);

/** A name as it is printed: one line, each accent on its letter where there is such a letter. */
export const printedLetters = (text: string): string => plainLetters(text).replace(/\s/g, ' ').normalize('NFC');

const lettersOf = (text: string): readonly string[] => [...new Set(printedLetters(text))];

/**
 * The font that has all letters of a text, so far as one has; it is six times as large, so it is taken only where it is needed.
 *
 * @param text everything that people wrote in what is printed
 */
export const printFontName = (text: string): string =>
  lettersOf(text).some((letter) => !isPrinted(letter) && within(letter.codePointAt(0) ?? 0, PRINTED_WIDE))
    ? 'legwork-print-wide.ttf'
    : 'legwork-print.ttf';

/** More letters than these are not read in a sentence. */
const MOST_TOLD = 8;

/**
 * Which letters of a name no print font has, to be said before it is printed.
 *
 * @returns nothing where all can be printed
 */
export function unprintedTold(name: string): Phrase | undefined {
  const lost = lettersOf(name).filter(
    (letter) =>
      !isPrinted(letter) && !within(letter.codePointAt(0) ?? 0, PRINTED_WIDE) && !/\p{Cf}|\p{Mn}/u.test(letter),
  );
  if (lost.length === 0) return undefined;
  const shown = own(`${lost.slice(0, MOST_TOLD).join(' ')}${lost.length > MOST_TOLD ? ' …' : ''}`);
  return say`“${own(name)}” has letters that PDFs can’t show, and prints each as a question mark: ${shown}. Latin, Greek, Cyrillic, Armenian and Georgian letters print.`;
}
