import { beforeAll, describe, expect, test } from 'vitest';
import { every } from '../outside/every';
import { alwaysLines } from './contract/always-lines';
import { cases } from './contract/cases';
import { fitLines } from './contract/fit-lines';
import { hemLines } from './contract/hem-lines';
import { legLines } from './contract/leg-lines';
import { type Line, linesTried, type Tried, triedText } from './contract/line';
import { wornLines } from './contract/worn-lines';
import { enough, PATIENCE } from './seed';

// What each choice moves and what it doesn't, drafted with and without a measured crotch length, on random bodies and on
// people of the surveys. `LEGWORK_RUNS=10` tries ten times as many, `LEGWORK_EVERY=1` everybody of the surveys.

const lines: readonly Line[] = [...legLines, ...hemLines, ...wornLines, ...fitLines, ...alwaysLines];
let book: ReadonlyMap<string, Tried>;

beforeAll(
  () => {
    book = linesTried(lines, cases('contract', 200));
  },
  every ? 6 * 3_600_000 : 5 * PATIENCE,
);

describe('every choice moves what its name says, and nothing else', () => {
  test.each(lines.map(({ name }) => name))('%s', (name) => {
    const tried = book.get(name) as Tried;
    console.log(triedText(name, tried));
    expect(tried.missed, triedText(name, tried)).toBe(0);
    expect(tried.compared).toBeGreaterThanOrEqual(Math.floor(enough(5)));
  });
});
