import { describe, expect, test } from 'vitest';
import { wrapText } from '../../../src/files/pen/wrap-text';

/** Every letter as wide as the font size in tenths of a millimetre. */
const widthOf = (text: string, pt: number) => ([...text].length * pt) / 10;
const wrap = (text: string, letters: number) => wrapText(text, letters, 10, widthOf);

describe('breaking lines', () => {
  test.each([
    ['one two three', 7, ['one two', 'three']],
    ['one two three', 13, ['one two three']],
    ['unbreakable', 4, ['unbr', 'eaka', 'ble']],
    ['a unbreakable b', 4, ['a', 'unbr', 'eaka', 'ble', 'b']],
    ['', 4, ['']],
    ['x', 0.5, ['x']],
  ])('%j in %d letters', (text, letters, lines) => {
    expect(wrap(text, letters)).toEqual(lines);
  });

  test('no letter is lost or added, whatever the width', () => {
    const text = 'the quick brown fox jumps over the extraordinarily lazy dog';
    for (let letters = 1; letters < 70; letters += 1)
      expect(wrap(text, letters).join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
  });
});
