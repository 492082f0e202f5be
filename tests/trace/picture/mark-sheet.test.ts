import { expect, test } from 'vitest';
import { paperSize } from '../../../src/sheets/paper-sizes';
import {
  cellsOfMark,
  differing,
  MARK_SHEET,
  MARKS_A_SHEET,
  MOST_SHEETS,
  markOfCells,
  marksOfSheet,
  sheetOfMark,
} from '../../../src/trace/picture/mark-sheet';

const NUMBERS = Array.from({ length: MARKS_A_SHEET * MOST_SHEETS }, (_, i) => i + 1);
const wordOf = (number: number) => cellsOfMark(number).reduce((sum, white, i) => (white ? sum | (1 << i) : sum), 0);
const quarter = (cells: readonly boolean[]) =>
  cells.map((_, i) => cells[(4 - (i % 5)) * 5 + Math.floor(i / 5)] as boolean);

test('any two marks differ in seven cells at least', () => {
  for (const a of NUMBERS)
    for (const b of NUMBERS) if (a !== b) expect(differing(wordOf(a), wordOf(b))).toBeGreaterThanOrEqual(7);
});

test('a mark is read however it lies, also with one cell misread, and its turn is told', () => {
  for (const number of NUMBERS) {
    let cells = cellsOfMark(number);
    for (const turns of [0, 3, 2, 1]) {
      expect(markOfCells(cells)).toEqual({ number, turns });
      const spoilt = cells.map((white, i) => (i === 12 ? !white : white));
      expect(markOfCells(spoilt)).toEqual({ number, turns });
      cells = quarter(cells);
    }
  }
});

test('cells that are no mark’s are hardly ever taken for one', () => {
  let state = 1;
  const random = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  let taken = 0;
  for (let i = 0; i < 20_000; i += 1) if (markOfCells(Array.from({ length: 25 }, () => random() < 0.5))) taken += 1;
  expect(taken).toBeLessThan(12);
  expect(markOfCells(Array.from({ length: 25 }, () => false))).toBeUndefined();
  expect(markOfCells(Array.from({ length: 25 }, () => true))).toBeUndefined();
});

test('the sheets hold five marks each, apart from each other, on A4 and Letter', () => {
  const all = Array.from({ length: MOST_SHEETS }, (_, i) => marksOfSheet(i + 1)).flat();
  expect(all.map(({ number }) => number)).toEqual(NUMBERS);
  for (const sheet of [1, MOST_SHEETS])
    expect(marksOfSheet(sheet).map(({ number }) => sheetOfMark(number))).toEqual([sheet, sheet, sheet, sheet, sheet]);
  for (const name of ['A4', 'Letter'] as const) {
    const { width, height } = paperSize(name, { width: 0, height: 0 });
    expect(width - MARK_SHEET.width).toBeGreaterThanOrEqual(30);
    expect(height - MARK_SHEET.height).toBeGreaterThanOrEqual(30);
  }
});
