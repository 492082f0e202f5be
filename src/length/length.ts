/** A length in millimetres. Everything inside the program is in millimetres; other units live only in this room. */
export type Mm = number;

/** The display units of a project. */
export type Units = 'cm' | 'inch';

/** One international inch, exactly (agreement of 1959). */
export const MM_PER_INCH = 25.4;

/** The sizes of the units that lengths are written in. */
export const MM_PER = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  ft: 12 * MM_PER_INCH,
} as const satisfies Readonly<Record<string, Mm>>;

/** The unit words that may follow a number, each with the key of its size. */
const UNIT_WORDS: Readonly<Record<string, keyof typeof MM_PER>> = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  "''": 'in',
  ft: 'ft',
  feet: 'ft',
  foot: 'ft',
  "'": 'ft',
  '′': 'ft',
  '’': 'ft',
};

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const;

export type ParsedLength =
  | { readonly ok: true; readonly mm: Mm }
  | { readonly ok: false; readonly reason: 'empty' | 'not-a-length' };

/**
 * Reads a length as people write it: `40 1/8`, `40⅛`, `40-1/8 in`, `102cm`, `102,5`, `1020 mm`, `3 ft 4 in`.
 *
 * @param text what was typed
 * @param units the unit of a number that has none written after it
 * @returns millimetres, or why the text is no length; a sign is kept, limits are the caller's
 */
export function parseLength(text: string, units: Units): ParsedLength {
  let rest = text.trim().toLowerCase();
  for (const [glyph, fraction] of Object.entries(VULGAR)) rest = rest.replaceAll(glyph, ` ${fraction}`);
  rest = rest.replaceAll('⁄', '/').replaceAll('−', '-').replace(/\s+/g, ' ').trim();
  if (rest === '') return { ok: false, reason: 'empty' };
  const sign = rest.startsWith('-') ? -1 : 1;
  rest = rest.replace(/^[-+] ?/, '');
  let total = 0;
  let parts = 0;
  let previousSize = Number.POSITIVE_INFINITY;
  while (rest !== '') {
    const match = /^(\d+)[ -]+(\d+)\/(\d+)|^(\d+)\/(\d+)|^(\d+(?:[.,]\d*)?|[.,]\d+)/.exec(rest);
    if (!match) return { ok: false, reason: 'not-a-length' };
    const value = numberFrom(match);
    rest = rest.slice(match[0].length).trimStart();
    const word = /^(inches|inch|in|feet|foot|ft|mm|cm|m|''|["″”'′’])\.?(?![a-z])/.exec(rest);
    const unit = word ? UNIT_WORDS[word[1] ?? ''] : units === 'inch' ? 'in' : 'cm';
    const size = unit && MM_PER[unit];
    if (size === undefined || !Number.isFinite(value) || size >= previousSize)
      return { ok: false, reason: 'not-a-length' };
    if (!word && (rest !== '' || parts > 0)) return { ok: false, reason: 'not-a-length' };
    if (word) rest = rest.slice(word[0].length).trimStart();
    total += value * size;
    previousSize = size;
    parts += 1;
  }
  return { ok: true, mm: sign * total };
}

function numberFrom(match: RegExpExecArray): number {
  const [, whole, over, under, over2, under2, decimal] = match;
  if (decimal !== undefined) return Number(decimal.replace(',', '.'));
  if (over2 !== undefined) return Number(over2) / Number(under2);
  return Number(whole) + Number(over) / Number(under);
}

/** Whole and eighths with their sign: `−2⅜`. */
export function eighthsText(eighths: number): string {
  const whole = Math.floor(Math.abs(eighths) / 8);
  const part = EIGHTHS[Math.abs(eighths) % 8] ?? '';
  return `${eighths < 0 ? '−' : ''}${whole === 0 && part !== '' ? '' : whole}${part}`;
}

/**
 * A number without needless zeros and with a true minus sign.
 *
 * @param value the number
 * @param decimals how many decimals at most
 */
export function plain(value: number, decimals: number): string {
  const fixed = value.toFixed(decimals);
  const short = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  return short === '-0' ? '0' : short.replace('-', '−');
}
