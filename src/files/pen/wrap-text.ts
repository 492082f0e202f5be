import type { WidthOf } from '../../drawing';
import type { Mm } from '../../length';

/**
 * Breaks a text into lines no wider than `width`: at spaces, and inside a word only where it alone is wider.
 *
 * @param taken of the first line's width, by what stands before the text
 * @returns at least one line
 */
export function wrapText(text: string, width: Mm, pt: number, widthOf: WidthOf, taken: Mm = 0): readonly string[] {
  const lines: string[] = [];
  let line = '';
  const fits = (s: string) => widthOf(s, pt) <= width - (lines.length === 0 ? taken : 0);
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    let rest = word;
    while (!fits(rest)) {
      const letters = [...rest];
      let count = 1;
      while (count < letters.length && fits(letters.slice(0, count + 1).join(''))) count += 1;
      lines.push(letters.slice(0, count).join(''));
      rest = letters.slice(count).join('');
    }
    line = rest;
  }
  return line === '' && lines.length > 0 ? lines : [...lines, line];
}
