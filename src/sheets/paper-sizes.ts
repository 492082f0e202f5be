import { type Mm, Refusal } from '../length';

/** One size of paper, upright. */
export interface PaperSize {
  readonly name: string;
  readonly width: Mm;
  readonly height: Mm;
}

/**
 * The sizes of paper that can be printed on, upright, in millimetres.
 *
 * Sources: ISO 216 for A4…A0; ANSI/ASME Y14.1 for Letter (its A), Tabloid (B) and C, D, E (8½ × 11, 11 × 17,
 * 17 × 22, 22 × 34, 34 × 44 in); Legal is 8½ × 14 in, by custom.
 */
export const PAPER_SIZES: readonly PaperSize[] = [
  { name: 'A4', width: 210, height: 297 },
  { name: 'A3', width: 297, height: 420 },
  { name: 'A2', width: 420, height: 594 },
  { name: 'A1', width: 594, height: 841 },
  { name: 'A0', width: 841, height: 1189 },
  { name: 'Letter', width: 215.9, height: 279.4 },
  { name: 'Legal', width: 215.9, height: 355.6 },
  { name: 'Tabloid', width: 279.4, height: 431.8 },
  { name: 'ANSI C', width: 431.8, height: 558.8 },
  { name: 'ANSI D', width: 558.8, height: 863.6 },
  { name: 'ANSI E', width: 863.6, height: 1117.6 },
];

/**
 * The size of that name.
 *
 * @param name as in {@link PAPER_SIZES}
 * @throws Refusal where the name is in no table; it says which names are
 */
export function paperSize(name: string): PaperSize {
  const found = PAPER_SIZES.find((size) => size.name === name);
  if (found) return found;
  const names = PAPER_SIZES.map((size) => size.name).join(', ');
  throw new Refusal([
    { field: 'paper.sheet', value: name, phrase: [`not a known paper size; choose one of ${names}`] },
  ]);
}
