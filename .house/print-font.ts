import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import subsetFont from 'subset-font';

/** Ranges of Unicode that a pattern, its working and people's own names for things may need in print. */
const RANGES: readonly (readonly [first: number, last: number])[] = [
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

/** Single characters: Greek letters and signs of the formulas, and marks of the drawing. */
const SINGLES = 'Δαβγδθλπφ€№™Ω∆−√∞≈≠≤≥∠∥⊥■□▲△▶▷▼▽◀◁◆◇○●✓✗';

/** The characters of the print font, in order. */
export const printCharacters: readonly string[] = [
  ...RANGES.flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)),
  ),
  ...SINGLES,
];

/** Where the print font is kept; the app, the command line and the tests all read this one file. */
export const printFontFile = fileURLToPath(new URL('../public/fonts/legwork-print.ttf', import.meta.url));

/** Makes the print font: DejaVu Sans without the glyphs and the screen hints that a pattern never needs. */
export async function makePrintFont(): Promise<Buffer> {
  const whole = readFileSync(fileURLToPath(import.meta.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')));
  // Letter pairs and ligatures go too: the PDF writer sets glyph by glyph and would measure otherwise than it prints.
  return subsetFont(whole, printCharacters.join(''), { targetFormat: 'truetype', noHinting: true, keepFeatures: [] });
}
