import type { Units } from '../../src/length';

// Reads sums as a person would, off the printed words alone: nothing here asks the program how it rounds.

const EIGHTHS = ' ⅛¼⅜½⅝¾⅞';
/** What a tape shows: tenths of a centimetre, eighths of an inch. */
const STEPS: Readonly<Record<Units, number>> = { cm: 10, inch: 8 };

type Token =
  | { readonly is: 'length' | 'number'; readonly value: number }
  | { readonly is: 'sign'; readonly sign: string }
  | { readonly is: 'stop' };

const TOKEN =
  /([−-]?)(\d+(?:\.\d+)?)?([⅛¼⅜½⅝¾⅞])? (cm|in)\b|(\d+(?:\.\d+)?) %|(\d+(?:\.\d+)?)(?![\d.]*[⅛¼⅜½⅝¾⅞])|([()]|[+−×÷=](?= ))|([.;:,])(?=\s|$)/g;

/** Lengths in steps of the tape, numbers, signs of reckoning and where a sentence stops; every other word is passed over. */
function tokens(text: string, units: Units): readonly Token[] {
  return [...text.matchAll(TOKEN)].flatMap(([, minus, whole, eighth, unit, percent, number, sign, stop]): Token[] => {
    if (unit !== undefined) {
      if (whole === undefined && eighth === undefined) return [];
      const size = Number(whole ?? 0) + (eighth ? EIGHTHS.indexOf(eighth) / 8 : 0);
      return [{ is: 'length', value: (minus ? -1 : 1) * size * STEPS[units] }];
    }
    if (percent !== undefined) return [{ is: 'number', value: Number(percent) / 100 }];
    if (number !== undefined) return [{ is: 'number', value: Number(number) }];
    if (sign !== undefined) return [{ is: 'sign', sign }];
    return stop === undefined ? [] : [{ is: 'stop' }];
  });
}

/** What stands on one side of an equals sign, reckoned; and whether a share was in it, so that it is nearly a whole step. */
interface Reckoned {
  readonly value: number;
  readonly broken: boolean;
}

/** Reckons what is written: products before sums, brackets first. Where an operand follows another, the sum begins anew. */
function reckoned(line: readonly Token[], last: boolean): Reckoned | undefined {
  let at = 0;
  let broken = false;
  const sign = (...signs: string[]): string | undefined => {
    const token = line[at];
    if (token?.is !== 'sign' || !signs.includes(token.sign)) return undefined;
    at += 1;
    return token.sign;
  };
  const operand = (): number | undefined => {
    if (sign('(')) {
      const inner = sum();
      sign(')');
      return inner;
    }
    const token = line[at];
    if (token?.is !== 'length' && token?.is !== 'number') return undefined;
    at += 1;
    if (!Number.isInteger(token.value) && token.is === 'number') broken = true;
    return token.value;
  };
  const product = (): number | undefined => {
    let value = operand();
    for (let by = sign('×', '÷'); by && value !== undefined; by = sign('×', '÷')) {
      const next = operand();
      if (next === undefined) return undefined;
      value = by === '×' ? value * next : value / next;
    }
    return value;
  };
  function sum(): number | undefined {
    let value = product();
    for (let by = sign('+', '−'); by && value !== undefined; by = sign('+', '−')) {
      const next = product();
      if (next === undefined) return undefined;
      value += by === '+' ? next : -next;
    }
    return value;
  }
  let value = sum();
  while (!last && at < line.length) {
    const before = at;
    const next = sum();
    if (at === before) at += 1;
    else if (next !== undefined) value = next;
  }
  return value === undefined ? undefined : { value, broken };
}

/** A sum as it is printed, and what it really comes to, in steps of the tape. */
export interface PrintedSum {
  readonly text: string;
  readonly sides: readonly number[];
  readonly addsUp: boolean;
}

/** Every “… = …” of a text: each side reckoned from its own printed figures. */
export function printedSums(text: string, units: Units): readonly PrintedSum[] {
  const lines: Token[][] = [[]];
  for (const token of tokens(text, units)) {
    if (token.is === 'stop') lines.push([]);
    else lines.at(-1)?.push(token);
  }
  return lines.flatMap((line) => {
    const parts: Token[][] = [[]];
    for (const token of line) {
      if (token.is === 'sign' && token.sign === '=') parts.push([]);
      else parts.at(-1)?.push(token);
    }
    if (parts.length < 2) return [];
    const sides = parts.flatMap((part, i) => reckoned(part, i > 0) ?? []);
    if (sides.length < 2) return [];
    // Where a share is in it, nobody can print it nearer than to half a step.
    const room = sides.some(({ broken }) => broken) ? 0.5 + 1e-6 : 1e-6;
    const values = sides.map(({ value }) => value);
    const addsUp = Math.max(...values) - Math.min(...values) <= room;
    return [{ text, sides: values, addsUp }];
  });
}

/** Lengths that are written in another way than the reader’s: decimals of inches, millimetres, the other unit. */
export const strangeLengths = (text: string, units: Units): readonly string[] =>
  text.match(units === 'cm' ? /[\d⅛¼⅜½⅝¾⅞] (?:in|mm)\b/g : /\d\.\d+ in\b|\d (?:cm|mm)\b/g) ?? [];
