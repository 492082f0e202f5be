import { describe, expect, test } from 'vitest';
import { flowSections, wrapText } from '../../../src/files/pen/text-flow';

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

describe('filling columns', () => {
  // Ten points are 4.516 mm from line to line: a column of 20 mm holds four lines.
  const column = (left: number) => ({ left, right: left + 20, top: 0, bottom: 20 });
  const section = (title: string, count: number) => ({
    title,
    sentences: Array.from({ length: count }, (_, i) => `${title}${i}`),
  });
  const flow = (sections: Parameters<typeof flowSections>[0], columns: number) =>
    flowSections(
      sections,
      Array.from({ length: columns }, (_, i) => column(i * 30)),
      10,
      widthOf,
    );

  test('a section goes on in the next column, and no line is lost', () => {
    const { lines, left } = flow([section('a', 6)], 2);
    expect(lines.map((line) => line.left)).toEqual(['a', 'a0', 'a1', 'a2', 'a3', 'a4', 'a5']);
    expect(lines.map((line) => line.box.left)).toEqual([0, 0, 0, 0, 30, 30, 30]);
    expect(left).toEqual([]);
  });

  test('a title never stands alone at the foot of a column', () => {
    const { lines } = flow([section('a', 2), section('b', 2)], 2);
    expect(lines.find((line) => line.left === 'b')?.box.left).toBe(30);
  });

  test('what finds no room comes back: the rest under its title, then whole sections', () => {
    const { left } = flow([section('a', 6), section('b', 1)], 1);
    expect(left).toEqual([
      { title: 'a', sentences: ['a3', 'a4', 'a5'] },
      { title: 'b', sentences: ['b0'] },
    ]);
  });

  test('a value that does not fit beside its name stands below it', () => {
    const row = { name: 'a name of size', value: 'a value' };
    const { lines } = flow([{ title: 't', rows: [row] }], 1);
    expect(lines.map(({ left, right }) => [left, right])).toEqual([
      ['t', ''],
      ['a name of size', ''],
      ['', 'a value'],
    ]);
    const wide = flowSections([{ title: 't', rows: [row] }], [{ ...column(0), right: 40 }], 10, widthOf);
    expect(wide.lines.map(({ left, right }) => [left, right])).toEqual([
      ['t', ''],
      ['a name of size', 'a value'],
    ]);
  });
});
