import { expect, test } from 'vitest';
import type { Curve, Point } from '../../src/plane';
import { flat, footOn, holds, largestLoop, polylineLength, widthAt } from './flat';

const p = (x: number, y: number): Point => ({ x, y });
const square = [p(-10, 0), p(10, 0), p(10, 20), p(-10, 20), p(-10, 0)];
/** A quarter of a circle of radius 100, within 0.03 mm. */
const K = 55.228475;
const quarter: Curve = [p(100, 0), p(100, K), p(K, 100), p(0, 100)];

test('a polyline of a curve is as long as the curve, and no chord leaves it', () => {
  const points = flat([quarter]);
  expect(Math.abs(polylineLength(points) - 50 * Math.PI)).toBeLessThan(0.03);
  for (const [i, a] of points.slice(0, -1).entries()) {
    const b = points[i + 1] as Point;
    const sag = 100 - Math.hypot((a.x + b.x) / 2, (a.y + b.y) / 2);
    expect(Math.abs(sag)).toBeLessThan(0.04);
  }
});

test('a simple ring has no loop; a figure of eight and a small twist have one, as large as it is', () => {
  expect(largestLoop(square)).toBe(0);
  expect(largestLoop([p(0, 0), p(10, 10), p(10, 0), p(0, 10), p(0, 0)])).toBeCloseTo(10 + 2 * Math.hypot(5, 5));
  const twisted = [p(-10, 0), p(10, 0), p(10, 10), p(9, 11), p(10, 11), p(9, 10), p(8.5, 20), p(-10, 20), p(-10, 0)];
  expect(largestLoop(twisted)).toBeCloseTo(1 + 2 * Math.hypot(0.5, 0.5));
});

test('a ring holds what it goes round, and nothing else', () => {
  expect(holds(square, p(0, 10))).toBe(true);
  expect(holds(square, p(11, 10))).toBe(false);
  expect(widthAt(square, 5)).toBe(20);
  expect(widthAt(square, 25)).toBeUndefined();
});

test('the foot of a point lies straight across, or at an end', () => {
  const line = [p(0, 0), p(10, 0)];
  expect(footOn(line, p(3, -4))).toEqual({ away: 4, arc: 3, beside: 4, atEnd: false });
  expect(footOn(line, p(13, 4))).toEqual({ away: 5, arc: 10, beside: -4, atEnd: true });
});
