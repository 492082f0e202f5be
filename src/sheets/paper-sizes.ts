import { MM_PER_INCH, type Mm } from '../length';
import { number, own, type Phrase, Refusal, say } from '../words';

/** One size of paper, upright. */
export interface PaperSize {
  readonly name: string;
  readonly width: Mm;
  /** Of a roll: as long as one page can be. */
  readonly height: Mm;
  /** Cut to the length that is needed. */
  readonly roll: boolean;
}

/** A PDF page can't be longer or wider (14,400 points: ISO 32000-1, annex C); writers cut it off without a word. */
export const LARGEST_PAGE: Mm = 5080;
/** A sheet of one's own below this holds no marks. */
export const SMALLEST_PAGE: Mm = 150;

const sheet = (name: string, width: Mm, height: Mm): PaperSize => ({ name, width, height, roll: false });
const inches = (name: string, width: number, height: number): PaperSize =>
  sheet(name, width * MM_PER_INCH, height * MM_PER_INCH);
const roll = (width: number): PaperSize => ({
  name: `Roll ${width} in`,
  width: width * MM_PER_INCH,
  height: LARGEST_PAGE,
  roll: true,
});

/**
 * The sizes of paper that can be printed on, upright, in millimetres.
 *
 * @source ISO 216 for A4…A0; ANSI/ASME Y14.1 for Letter (its A), Tabloid (B) and C, D, E; Legal is 8½ × 14 in, and rolls
 *   are 24, 36 and 42 in wide, by custom
 */
export const PAPER_SIZES: readonly PaperSize[] = [
  sheet('A4', 210, 297),
  sheet('A3', 297, 420),
  sheet('A2', 420, 594),
  sheet('A1', 594, 841),
  sheet('A0', 841, 1189),
  inches('Letter', 8.5, 11),
  inches('Legal', 8.5, 14),
  inches('Tabloid', 11, 17),
  inches('ANSI C', 17, 22),
  inches('ANSI D', 22, 34),
  inches('ANSI E', 34, 44),
  roll(24),
  roll(36),
  roll(42),
];

/** What `sheet` says where the paper is of the person's own size. */
export const OWN_SIZE = 'own';
/** The name of such a size. */
const OWN_NAME = 'own size';

/**
 * The size of that name.
 *
 * @param name as in {@link PAPER_SIZES}, or {@link OWN_SIZE}
 * @param sides the sides of a sheet of one's own
 * @throws Refusal where the name is in no table; it says which names are
 */
export function paperSize(name: string, sides: { readonly width: Mm; readonly height: Mm }): PaperSize {
  if (name === OWN_SIZE) {
    const [width, height] = [Math.min(sides.width, sides.height), Math.max(sides.width, sides.height)];
    return sheet(OWN_NAME, width, height);
  }
  const found = PAPER_SIZES.find((size) => size.name === name);
  if (found) return found;
  const names = [...PAPER_SIZES.map((size) => size.name), OWN_SIZE].join(', ');
  throw new Refusal([
    { field: 'paper.sheet', value: name, phrase: say`not a known paper size; choose one of ${own(names)}` },
  ]);
}

/** What people call a size: an own one by words, a roll by its width, any other as its standard does. */
export function paperName(name: string): Phrase {
  if (name === OWN_NAME) return say`own size`;
  const [, width] = /^Roll (\d+) in$/.exec(name) ?? [];
  return width ? say`Roll ${number(Number(width))} in` : say`${own(name)}`;
}
