import { beforeAll, describe, expect, test } from 'vitest';
import { every } from '../outside/every';
import { alwaysLines } from './contract/always-lines';
import { tracedCases } from './contract/cases';
import { hemLines } from './contract/hem-lines';
import { legLines } from './contract/leg-lines';
import { linesTried, type Tried, triedText } from './contract/line';
import { wornLines } from './contract/worn-lines';
import { enough, PATIENCE } from './seed';

// Blocks brought along obey every line of the contract that doesn't name the fit: here blocks as they were drafted, so
// that nothing but where they came from is another.

const lines = [...legLines, ...hemLines, ...wornLines, ...alwaysLines].filter(({ fit }) => !fit);
let book: ReadonlyMap<string, Tried>;

beforeAll(
  () => {
    book = linesTried(lines, tracedCases('contract, traced', 40));
  },
  every ? 6 * 3_600_000 : 5 * PATIENCE,
);

describe('blocks brought along', () => {
  test.each(lines.map(({ name }) => name))('%s', (name) => {
    const tried = book.get(name) as Tried;
    console.log(triedText(name, tried));
    expect(tried.missed, triedText(name, tried)).toBe(0);
    expect(tried.compared).toBeGreaterThanOrEqual(Math.floor(enough(20)));
  });
});
