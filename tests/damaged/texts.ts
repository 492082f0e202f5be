import type { Chance } from '../fuzz/random';

/** What stands in no file that a program wrote, and in many that were damaged or made to do damage. */
const BLOCKS = [
  '[',
  '{',
  ',',
  ']',
  '}',
  '"',
  '\\',
  '<',
  '>',
  '&',
  ' ',
  '\n',
  '\u0000',
  '0',
  '9',
  '-',
  '/*',
  '<g>',
  '{"a":',
];
const MOST_REPEATS = 3000;

/** A whole number below another. */
export const below = ({ next }: Chance, end: number): number => Math.floor(next() * end);

type Change = (text: string, chance: Chance) => string;

const spliced = (text: string, from: number, length: number, put: string): string =>
  text.slice(0, from) + put + text.slice(from + length);

/** A slice of the text, mostly short. */
const slice = (text: string, chance: Chance): readonly [from: number, length: number] => {
  const from = below(chance, text.length + 1);
  return [from, below(chance, Math.min(text.length - from, chance.oneOf([2, 20, 400])) + 1)];
};

const CHANGES: readonly Change[] = [
  (text, chance) => spliced(text, below(chance, text.length), 1, String.fromCharCode(below(chance, 128))),
  (text, chance) => spliced(text, below(chance, text.length), 1, String.fromCharCode(below(chance, 0x10000))),
  (text, chance) => text.slice(0, below(chance, text.length + 1)),
  (text, chance) => spliced(text, ...slice(text, chance), ''),
  (text, chance) => {
    const [from, length] = slice(text, chance);
    return spliced(text, from, 0, text.slice(from, from + length));
  },
  (text, chance) => {
    const [from, length] = slice(text, chance);
    const [to] = slice(text, chance);
    return spliced(text, to, 0, text.slice(from, from + length));
  },
  (text, chance) =>
    spliced(text, below(chance, text.length), 0, chance.oneOf(BLOCKS).repeat(1 + below(chance, MOST_REPEATS))),
  (text, chance) => spliced(text, below(chance, text.length), 0, chance.oneOf(BLOCKS)),
  (text) => `\ufeff${text}`,
];

/** The text damaged in one to four places, without a thought of what it says. */
export function damagedText(text: string, chance: Chance): string {
  let damaged = text;
  for (let i = 1 + below(chance, 4); i > 0; i -= 1) damaged = chance.oneOf(CHANGES)(damaged, chance);
  return damaged;
}

/** The bytes of a text; sometimes cut within a letter, with bits flipped, or in another encoding. */
export function damagedBytes(text: string, chance: Chance): Uint8Array {
  const bytes = new Uint8Array(chance.happens(0.05) ? Buffer.from(`\ufeff${text}`, 'utf16le') : Buffer.from(text));
  if (chance.happens(0.3))
    for (let i = 1 + below(chance, 3); i > 0 && bytes.length > 0; i -= 1) {
      const at = below(chance, bytes.length);
      bytes[at] = (bytes[at] ?? 0) ^ (1 << below(chance, 8));
    }
  return chance.happens(0.1) ? bytes.slice(0, below(chance, bytes.length + 1)) : bytes;
}
