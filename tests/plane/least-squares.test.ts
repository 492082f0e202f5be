import { expect, test } from 'vitest';
import { leastSquares, type Row } from '../../src/plane';

/** Points on a circle of 40 round 10, 20; the unknowns are the middle and the radius. */
const POINTS = [0, 1, 2, 3, 4, 5].map((turn) => ({ x: 10 + 40 * Math.cos(turn), y: 20 + 40 * Math.sin(turn) }));
const rowsAt = ([x = 0, y = 0, r = 0]: readonly number[]): readonly Row[] =>
  POINTS.map((p) => {
    const away = Math.hypot(p.x - x, p.y - y);
    return { off: away - r, at: [0, 1, 2], by: [(x - p.x) / away, (y - p.y) / away, -1] };
  });

test('finds what leaves nothing off, from far away', () => {
  const found = leastSquares([60, -30, 5], [true, true, true], rowsAt);
  [10, 20, 40].forEach((wanted, i) => {
    expect(found?.unknowns[i]).toBeCloseTo(wanted, 6);
  });
});

test('keeps what is held', () => {
  const found = leastSquares([10, 20, 30], [true, true, false], rowsAt);
  expect(found?.unknowns[2]).toBe(30);
  expect(found?.cost).toBeGreaterThan(500);
});

test('finds nothing where the equations leave an unknown open, or the start makes no sense', () => {
  expect(leastSquares([1, 1], [true, true], ([x = 0]) => [{ off: x, at: [0], by: [1] }])).toBeUndefined();
  expect(leastSquares([1], [true], () => undefined)).toBeUndefined();
});
