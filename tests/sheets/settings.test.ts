import { describe, expect, test } from 'vitest';
import { PAPER_SIZES, type PaperSettings, tilePieces } from '../../src/sheets';
import { printProblem, Refusal } from '../../src/words';
import { rectanglePiece } from '../drawing/leg-piece';
import { A4 } from './paper';

const refusalOf = (settings: object) => {
  try {
    tilePieces([rectanglePiece('casing', 100, 100)], { ...A4, ...settings } as PaperSettings);
  } catch (refused) {
    if (refused instanceof Refusal) return refused.problems;
    throw refused;
  }
  return [];
};

test.each([
  [{ sheet: 'A5' }, 'paper.sheet'],
  [{ sheet: '__proto__' }, 'paper.sheet'],
  [{ orientation: 'diagonal' }, 'paper.orientation'],
  [{ margin: -1 }, 'paper.margin'],
  [{ margin: 41 }, 'paper.margin'],
  [{ margin: Number.NaN }, 'paper.margin'],
  [{ overlap: -0.1 }, 'paper.overlap'],
  [{ overlap: 91 }, 'paper.overlap'],
  [{ overlap: Number.POSITIVE_INFINITY }, 'paper.overlap'],
  [{ margin: 40, overlap: 31 }, 'paper.overlap'],
  [{ scale: 0 }, 'paper.scale'],
  [{ scale: 1.01 }, 'paper.scale'],
  [{ correctX: 1.06 }, 'paper.correctX'],
  [{ correctY: 0.94 }, 'paper.correctY'],
])('%o is refused by name', (settings, field) => {
  const problems = refusalOf(settings);
  expect(problems.map((problem) => problem.field)).toEqual([field]);
  for (const problem of problems) expect(printProblem(problem, 'cm')).toMatch(/^paper\.\w+: .{20,}/);
});

test('every wrong field is named at once', () => {
  expect(refusalOf({ margin: -1, scale: 2, correctX: 3 }).map((p) => p.field)).toEqual([
    'paper.margin',
    'paper.scale',
    'paper.correctX',
  ]);
});

test.each([{ margin: 0, overlap: 0 }, { margin: 40, overlap: 30 }, { scale: 0.1 }, { correctX: 1.05, correctY: 0.95 }])(
  '%o is just possible',
  (settings) => {
    expect(refusalOf(settings)).toEqual([]);
  },
);

describe('the table of sizes', () => {
  test('each ISO 216 size is the one before it doubled, its sides rounded down', () => {
    const iso = PAPER_SIZES.filter((size) => size.name.startsWith('A') && !size.name.startsWith('ANSI'));
    expect(iso.map((size) => size.name)).toEqual(['A4', 'A3', 'A2', 'A1', 'A0']);
    for (let i = 1; i < iso.length; i += 1) {
      expect(iso[i]?.width).toBe(iso[i - 1]?.height);
      expect(Math.floor((iso[i]?.height ?? 0) / 2)).toBe(iso[i - 1]?.width);
    }
  });

  test.each([
    ['Letter', 8.5, 11],
    ['Legal', 8.5, 14],
    ['Tabloid', 11, 17],
    ['ANSI C', 17, 22],
    ['ANSI D', 22, 34],
    ['ANSI E', 34, 44],
  ])('%s is %d by %d inches', (name, width, height) => {
    const size = PAPER_SIZES.find((found) => found.name === name);
    expect(size?.width).toBeCloseTo(width * 25.4, 9);
    expect(size?.height).toBeCloseTo(height * 25.4, 9);
  });
});
