import { expect, test } from 'vitest';
import { timeLeft } from '../../src/workbench/take/TakeProgress';

test('how long work still takes is told once it can be known, and only where it is long', () => {
  expect(timeLeft(1000, 0.001)).toBe('');
  expect(timeLeft(5000, 0)).toBe('');
  expect(timeLeft(5000, 0.5)).toBe('');
  expect(timeLeft(10_000, 0.3)).toBe('less than a minute left');
  expect(timeLeft(60_000, 0.1)).toBe('about 9 min left');
});
