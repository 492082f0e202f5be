import { expect, test } from 'vitest';
import { every } from '../outside/every';
import { combinations, covering } from './covering';

const all = combinations({
  hem: ['turned', 'faced', 'rib'],
  cloth: ['woven', 'knit'],
  rows: [1, 3],
  pocket: [0, 1, 2],
});
const choicesOf = (one: (typeof all)[number]) => Object.entries(one).map(([key, value]) => `${key}=${value}`);

/** Every three choices that meet somewhere, named. */
const threesOf = (those: typeof all) =>
  new Set(
    those
      .map(choicesOf)
      .flatMap((choices) =>
        choices.flatMap((a, i) =>
          choices.slice(i + 1).flatMap((b, j) => choices.slice(i + j + 2).map((c) => [a, b, c].join(' '))),
        ),
      ),
  );

test('a few of many show every three choices that meet in all, and no fewer of theirs do', () => {
  const few = covering(all, choicesOf, 3);
  expect(threesOf(few)).toEqual(threesOf(all));
  expect(all.length).toBe(3 * 2 * 2 * 3);
  if (!every) expect(few.length).toBeLessThan(all.length);
  for (const one of few)
    if (!every) expect(threesOf(few.filter((other) => other !== one)).size).toBeLessThan(threesOf(all).size);
});

test('two at a time need fewer, and what is alone is kept', () => {
  if (!every) expect(covering(all, choicesOf, 2).length).toBeLessThan(covering(all, choicesOf, 3).length);
  expect(covering([...all, { ...all[0], hem: 'odd' } as never], choicesOf, 2).map(({ hem }) => hem)).toContain('odd');
});
