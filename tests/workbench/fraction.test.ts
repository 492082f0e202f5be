import { describe, expect, it } from 'vitest';
import { MM_PER_INCH, parseLength } from '../../src/length';
import { FRACTIONS, withFraction, withSign } from '../../src/workbench/fields/fraction';

const inches = (text: string) => {
  const read = parseLength(text, 'inch');
  return read.ok ? read.mm / MM_PER_INCH : undefined;
};

describe('a fraction by one press', () => {
  it.each(['38', '38 ', '38¼', '38 3/4', '38 3/', '38.5', '38,', '38.'])('after “%s” is that of 38 inches', (typed) => {
    expect(FRACTIONS.map((one) => inches(withFraction(typed, one)))).toEqual(
      [1, 2, 3, 4, 5, 6, 7].map((n) => 38 + n / 8),
    );
  });

  it('stands alone where nothing was typed, and keeps a minus', () => {
    expect(inches(withFraction('', '⅝'))).toBeCloseTo(0.625, 12);
    expect(inches(withFraction('−1', '½'))).toBeCloseTo(-1.5, 12);
  });
});

it('a press turns a number’s sign, and back', () => {
  expect([withSign('1½'), withSign('−1½'), withSign('-2'), withSign('')]).toEqual(['−1½', '1½', '2', '−']);
  expect(inches(withSign('1½'))).toBeCloseTo(-1.5, 12);
});
