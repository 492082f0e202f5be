import { fieldText, MM_PER_INCH, parseLength, plain, type Units } from '../../length';
import { number, own, type Phrase, say } from '../../words';

/** What was read from a field, or one sentence that says why it can't be read. */
export type Reading =
  | { readonly ok: true; readonly value: number | undefined }
  | { readonly ok: false; readonly phrase: Phrase };

/** A kind of number that people type: how it is read, printed and stepped. Values are those of the project file. */
export interface Quantity {
  readonly read: (text: string, units: Units) => Reading;
  readonly print: (value: number, units: Units) => string;
  /** The limits in words, rounded inwards, so that what is said can also be typed. */
  readonly range: (lowest: number, highest: number, units: Units) => Phrase;
  /** The unit word that stands in the field. */
  readonly word: (units: Units) => Phrase;
  /** One press of an arrow key. */
  readonly step: (units: Units) => number;
}

/** A length in the project's unit, or in any other that is written after it. */
export const length: Quantity = {
  read(text, units) {
    const parsed = parseLength(text, units);
    if (parsed.ok) return { ok: true, value: parsed.mm };
    if (parsed.reason === 'empty') return { ok: true, value: undefined };
    return notRead(say`“${own(shortened(text))}” isn’t a length; write it like 102 cm, 40 1/8 in or 40⅛.`);
  },
  print: fieldText,
  range(lowest, highest, units) {
    if (units === 'cm') return say`${own(fieldText(lowest, units))} to ${own(fieldText(highest, units))} cm`;
    const eighth = MM_PER_INCH / 8;
    const [from, to] = [Math.ceil(lowest / eighth - 1e-6) * eighth, Math.floor(highest / eighth + 1e-6) * eighth];
    return say`${own(fieldText(from, units))} to ${own(fieldText(to, units))} in`;
  },
  word: (units) => (units === 'cm' ? say`cm` : say`in`),
  step: (units) => (units === 'cm' ? 1 : MM_PER_INCH / 8),
};

/** A fraction 0…1, typed and shown as a percentage. */
export const percentage: Quantity = {
  read: (text) =>
    readNumber(text.replace(/%\s*$/, ''), 0.01, text) ??
    notRead(say`“${own(shortened(text))}” is not a percentage; write it like 35.`),
  print: (value) => plain(value * 100, 1),
  range: (lowest, highest) => say`${number(lowest * 100, 0)} to ${number(highest * 100, 0)} %`,
  word: () => say`%`,
  step: () => 0.01,
};

/** An angle in degrees. */
export const angle: Quantity = {
  read: (text) =>
    readNumber(text.replace(/°\s*$/, ''), 1, text) ??
    notRead(say`“${own(shortened(text))}” is not an angle; write it like 1.5.`),
  print: (value) => plain(value, 1),
  range: (lowest, highest) => say`${number(lowest, 1)} to ${number(highest, 1)}°`,
  word: () => say`°`,
  step: () => 0.5,
};

export const years: Quantity = {
  read: (text) =>
    readNumber(text.replace(/years?\s*$/i, ''), 1, text) ??
    notRead(say`“${own(shortened(text))}” is not an age; write it like 34.`),
  print: (value) => plain(value, 1),
  range: (lowest, highest) => say`${number(lowest, 0)} to ${number(highest, 0)} years`,
  word: () => say`years`,
  step: () => 1,
};

/** The number in a text; undefined where there is none. */
export function readNumber(text: string, size: number, typed: string): Reading | undefined {
  const trimmed = text.trim();
  if (typed.trim() === '') return { ok: true, value: undefined };
  if (/^[+−-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(trimmed)) {
    return { ok: true, value: Number(trimmed.replace(',', '.').replace('−', '-')) * size };
  }
  return undefined;
}

export const notRead = (phrase: Phrase): Reading => ({ ok: false, phrase });

export function shortened(text: string): string {
  return text.length > 24 ? `${text.slice(0, 23)}…` : text;
}

/** The value on the grid of steps that is nearest: the start for going on by hand. */
export const nearestStep = (value: number, step: number): number => Math.round(value / step) * step;

/**
 * The next value on the grid of steps: a value between two steps goes to its neighbour first.
 *
 * @param value where it stands
 * @param step the size of one step
 * @param count how many steps, negative for down
 */
export function stepped(value: number, step: number, count: number): number {
  const place = value / step;
  const onGrid = Math.abs(place - Math.round(place)) < 1e-6;
  if (onGrid) return (Math.round(place) + count) * step;
  return (count > 0 ? Math.floor(place) + count : Math.ceil(place) + count) * step;
}
