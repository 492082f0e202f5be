import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import subsetFont from 'subset-font';
import { PRINTED, PRINTED_SINGLY, PRINTED_WIDE } from '../src/drawing';

const charactersOf = (ranges: typeof PRINTED): readonly string[] =>
  ranges.flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)),
  );

/** The characters of the print font, in order. */
export const printCharacters: readonly string[] = [...charactersOf(PRINTED), ...PRINTED_SINGLY];

/** Those of the wide print font, which is taken for names in other letters. */
export const widePrintCharacters: readonly string[] = [...new Set([...printCharacters, ...charactersOf(PRINTED_WIDE)])];

/** Where the print font is kept; the app, the command line and the tests all read this one file. */
export const printFontFile = fileURLToPath(new URL('../public/fonts/legwork-print.ttf', import.meta.url));

/** The same for the wide one. */
export const widePrintFontFile = fileURLToPath(new URL('../public/fonts/legwork-print-wide.ttf', import.meta.url));

/** Makes a print font: DejaVu Sans without the glyphs and the screen hints that it never needs. */
export async function makePrintFont(characters: readonly string[] = printCharacters): Promise<Buffer> {
  const whole = readFileSync(fileURLToPath(import.meta.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')));
  // Letter pairs and ligatures go too: the PDF writer sets glyph by glyph and would measure otherwise than it prints.
  return subsetFont(whole, characters.join(''), { targetFormat: 'truetype', noHinting: true, keepFeatures: [] });
}
