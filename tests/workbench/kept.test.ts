import { expect, it } from 'vitest';
import { ago, keptWords } from '../../src/workbench/shelf/kept';

it.each([
  [-5, 'just now'],
  [999, 'just now'],
  [3400, '3 sec ago'],
  [37_000, '30 sec ago'],
  [61_000, '1 min ago'],
  [7_200_000, '2 hr ago'],
  [90_000_000, 'yesterday'],
  [900_000_000, '10 days ago'],
])('%i ms are said as “%s”', (milliseconds, words) => {
  expect(ago(milliseconds)).toBe(words);
});

it('says in the bar how it stands', () => {
  expect(keptWords({ state: 'kept', at: 1000 }, 4000)).toBe('kept on this computer, 3 sec ago');
  expect(keptWords({ state: 'full', at: 1000 }, 4000)).toMatch(/not kept/);
  expect(keptWords({ state: 'elsewhere', at: 1000 }, 4000)).toMatch(/another tab/);
});
