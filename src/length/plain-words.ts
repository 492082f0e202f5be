/**
 * What stands in no line of plain words: controls, which a terminal would obey; marks that turn the direction of what
 * follows them, and would show words in another order than they stand in; breaks between lines and paragraphs; halves of
 * characters, which no file may hold; and code points that are no characters (Unicode 16, sections 23.1–23.9).
 */
const NOT_PLAIN =
  /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufdd0-\ufdef\ufff9-\uffff]|[\u{1fffe}\u{1ffff}\u{2fffe}\u{2ffff}\u{10fffe}\u{10ffff}]/gu;

/**
 * Words that somebody else wrote, as one line that can stand anywhere: on a terminal, on paper, in a file of any kind.
 * What would not be words there becomes a space, and no two spaces follow one another.
 *
 * @param text as it was typed or read
 */
export const plainWords = (text: string): string => plainLetters(text).replace(/ {2,}/g, ' ').trim();

/**
 * The same letter by letter, for a part of a line: what would not be words becomes a space, and every space stays.
 *
 * @param text as it was typed or read
 */
export const plainLetters = (text: string): string => text.replace(NOT_PLAIN, ' ');

/**
 * The same for what has to stay exact, such as a path: what would not be words is spelt out, and nothing is left out.
 *
 * @param text as it was typed or read
 */
export const spelledOut = (text: string): string =>
  text.replace(NOT_PLAIN, (sign) => `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`);
