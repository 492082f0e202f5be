import { describe, expect, it } from 'vitest';
import { exactText, fieldText, formatLength, type ParsedLength, parseLength, roundingOf } from '../../src/length';
import { mm, part, printPhrase, printProblem, rounding, say, share, UNSAID } from '../../src/words';

const read = (text: string, units: 'cm' | 'inch' = 'inch'): number => {
  const parsed: ParsedLength = parseLength(text, units);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.reason}`);
  return parsed.mm;
};

describe('reading a length', () => {
  // The inch is 25.4 mm exactly (international yard and pound agreement, 1959).
  it.each([
    ['40 1/8', 40.125 * 25.4],
    ['40⅛', 40.125 * 25.4],
    ['40-1/8 in', 40.125 * 25.4],
    ['5⁄8', 0.625 * 25.4],
    ['5 5/8"', 5.625 * 25.4],
    ['3 ft 4 in', 40 * 25.4],
    ['3\' 4 1/2"', 40.5 * 25.4],
    ['102cm', 1020],
    ['102,5 cm', 1025],
    ['1020 mm', 1020],
    ['1.02 m', 1020],
    ['1 m 2 cm', 1020],
    ['  40  ', 1016],
    ['-½', -12.7],
    ['−1 cm', -10],
    ['.5', 12.7],
  ])('takes %s', (text, wanted) => {
    expect(read(text)).toBeCloseTo(wanted, 9);
  });

  it('takes a bare number in the project’s unit', () => {
    expect(read('102', 'cm')).toBe(1020);
    expect(read('40', 'inch')).toBe(1016);
  });

  it.each(['', ' ', 'forty', '4 0', '12 cm 3 m', '1/0', '5 5', '1e9', '12kg', '3 4 in', '--3'])(
    'does not guess at “%s”',
    (text) => {
      expect(parseLength(text, 'cm').ok).toBe(false);
    },
  );

  it('reads back what a file holds within 0.05 mm, in both units', () => {
    for (let length = 0.3; length < 2000; length += 7.77) {
      for (const units of ['cm', 'inch'] as const)
        expect(Math.abs(read(exactText(length, units), units) - length)).toBeLessThanOrEqual(0.05 + 1e-9);
    }
  });
});

describe('printing a length', () => {
  it.each([
    [1024, 'cm', '102.4 cm'],
    [3.2, 'cm', '0.3 cm'],
    [-12, 'cm', '−1.2 cm'],
    [15.875, 'inch', '⅝ in'],
    [1019.175, 'inch', '40⅛ in'],
    [1, 'inch', '0 in'],
    [26.5, 'cm', '2.7 cm'],
    [-26.5, 'cm', '−2.7 cm'],
    [0, 'inch', '0 in'],
  ] as const)('%f mm in %s is %s', (length, units, wanted) => {
    expect(formatLength(length, units)).toBe(wanted);
  });

  it.each([
    [12.5, 'cm', '1.25'],
    [12.34, 'cm', '1.2'],
    [15.875, 'cm', '1.6'],
    [4.7625, 'inch', '3/16'],
    [29.0625 * 25.4, 'inch', '29 1/16'],
    [738, 'inch', '29'],
    [-3.175, 'inch', '−⅛'],
  ] as const)('a field shows %f mm in %s as %s: rounded, save where half a step was typed', (length, units, wanted) => {
    expect(fieldText(length, units)).toBe(wanted);
    if (wanted.includes('/')) expect(read(fieldText(length, units), units)).toBeCloseTo(length, 6);
  });

  it('says what the rounded terms of a sum miss of the rounded sum', () => {
    expect(roundingOf(27.4, [{ mm: 26 }, { mm: 1.4 }], 'inch')).toBeCloseTo(3.175, 9);
    expect(roundingOf(40, [{ mm: 20, times: 2 }], 'inch')).toBeCloseTo(3.175, 9);
    expect(roundingOf(3, [{ mm: 2.6 }, { mm: 0.6 }], 'cm')).toBe(-1);
    expect(roundingOf(100, [{ mm: 60 }, { mm: 40 }], 'cm')).toBe(0);
    expect(printPhrase(say`${part(26)} + ${part(1.4)}${rounding(27.4, 26, 1.4)}`, 'inch')).toBe(
      '1 in + 0 in + rounding ⅛ in',
    );
    expect(printPhrase(say`${part(26)} + ${part(1.4)}${rounding(27.4, 26, 1.4)}`, 'cm')).toBe('2.6 cm + 0.1 cm');
  });

  it('tells what is less than a step to be so, and nothing to be nothing', () => {
    expect(printPhrase(say`off by ${mm(0.3)}`, 'cm')).toBe('off by less than 0.1 cm');
    expect(printPhrase(say`off by ${mm(1.5)}`, 'inch')).toBe('off by less than ⅛ in');
    expect(printPhrase(say`off by ${mm(0)}`, 'cm')).toBe('off by 0 cm');
  });

  it('keeps the values in a sentence, for either unit', () => {
    const phrase = say`Spread by ${mm(12.7)}, ${share(0.025)} more${say`, at ${mm(254)}`}.`;
    expect(printPhrase(phrase, 'inch')).toBe('Spread by ½ in, 2.5 % more, at 10 in.');
    expect(printPhrase(phrase, 'cm')).toBe('Spread by 1.3 cm, 2.5 % more, at 25.4 cm.');
  });

  it('names field, value and limit of a problem in one line', () => {
    const line = printProblem({ field: 'body.hipGirth', value: -3, phrase: say`must be at least ${mm(400)}.` }, 'cm');
    expect(line).toBe('body.hipGirth: -3: must be at least 40 cm.');
    expect(printProblem({ field: 'a', value: 'x'.repeat(500), phrase: UNSAID }, 'cm').length).toBeLessThan(80);
  });
});
