import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Units } from '../../src/length';
import { draft } from '../../src/project';
import { printedSums, strangeLengths } from './printed-sums';
import { chance, enough, PATIENCE } from './seed';
import { drafts, printedWords } from './sums-said';

/** `npm run survey` tries 2,000 projects; `npm test` a share of them, the same each time. */
const RUNS = process.env.LEGWORK_EVERY === '1' ? 2000 : 120;
/** A lay takes longer than all else: of so many projects one is laid. */
const LAID = 12;

test.each(['inch', 'cm'] as const)(
  'every sum that a project shows in %s adds up as it is printed, and no length is written in another way',
  (units) => {
    let [drafted, sums] = [0, 0];
    fc.assert(
      fc.property(drafts(units), fc.integer({ min: 1, max: LAID }), (project, turn) => {
        const result = draft(project);
        if (!result.ok) return;
        drafted += 1;
        const words = printedWords(result.value, turn === 1);
        const found = words.flatMap((text) => printedSums(text, units));
        sums += found.length;
        expect(found.filter(({ addsUp }) => !addsUp)).toEqual([]);
        expect(words.filter((text) => strangeLengths(text, units).length > 0)).toEqual([]);
      }),
      chance(`sums in ${units}`, units === 'inch' ? RUNS : RUNS / 4),
    );
    console.log(`${drafted} drafted, ${sums} sums`);
    expect(sums).toBeGreaterThan(enough(8 * drafted));
  },
  PATIENCE,
);

test('a sum that is rounded off is found', () => {
  const off = (text: string, units: Units) => printedSums(text, units).map(({ addsUp }) => addsUp);
  expect(off('body 40⅛ in + 2 in = 42⅛ in', 'inch')).toEqual([true]);
  expect(off('body 40⅛ in + 2 in = 42¼ in', 'inch')).toEqual([false]);
  expect(off('body 40⅛ in + 2 in + rounding ⅛ in = 42¼ in', 'inch')).toEqual([true]);
  expect(off('2 × (cord ¼ in + ¼ in of room) + ⅛ in = 1⅛ in; 2 × 1 in = 2⅛ in', 'inch')).toEqual([true, false]);
  expect(off('It is 3 cm. So 2 × (20.1 cm + 3 cm) = 46.2 cm = 40 cm + 6.2 cm, and 9 cm.', 'cm')).toEqual([true]);
  expect(off('0.45 × foot 30 cm + 0.5 × knee 40 cm + 13 cm = 46.5 cm', 'cm')).toEqual([true]);
  expect(off('0.45 × foot 30 cm + 0.5 × knee 40 cm + 13 cm = 46.6 cm', 'cm')).toEqual([false]);
  expect(off('94 cm ÷ (1 − 5 %) = 98.9 cm', 'cm')).toEqual([true]);
  expect(strangeLengths('wide 0.28 in beside 3 mm', 'inch')).toEqual(['0.28 in', '3 mm']);
  expect(strangeLengths('3 mm, ⅛ in and 0.3 cm', 'cm')).toEqual(['3 mm', '⅛ in']);
});
