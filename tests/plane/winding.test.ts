import { expect, test } from 'vitest';
import { type Curve, pathReverse, pathThrough } from '../../src/plane';
import { windings } from '../../src/plane/winding';

/** A unit circle in four cubics, clockwise as seen; 0.5523 is the usual handle (from memory). */
const K = 0.5523;
const at = (x: number, y: number) => ({ x, y });
const CIRCLE: readonly Curve[] = [
  [at(0, -1), at(K, -1), at(1, -K), at(1, 0)],
  [at(1, 0), at(1, K), at(K, 1), at(0, 1)],
  [at(0, 1), at(-K, 1), at(-1, K), at(-1, 0)],
  [at(-1, 0), at(-1, -K), at(-K, -1), at(0, -1)],
];

test('a clockwise circle goes once round its inside and not round what is outside', () => {
  expect(windings(CIRCLE)(at(0, 0))).toBe(1);
  expect(windings(CIRCLE)(at(0.7, 0.7))).toBe(1);
  expect(windings(CIRCLE)(at(0.72, 0.72))).toBe(0);
  expect(windings(CIRCLE)(at(-2, 0))).toBe(0);
  expect(windings(CIRCLE)(at(0, -1.001))).toBe(0);
});

test('turned round it counts the other way, and twice round counts two', () => {
  expect(windings(pathReverse(CIRCLE))(at(0.1, 0.2))).toBe(-1);
  expect(windings([...CIRCLE, ...CIRCLE])(at(0.1, 0.2))).toBe(2);
});

test('a line to the right through corners counts each corner once', () => {
  const diamond = pathThrough(at(0, -2), at(2, 0), at(0, 2), at(-2, 0), at(0, -2));
  expect(windings(diamond)(at(0, 0))).toBe(1);
  expect(windings(diamond)(at(-3, 0))).toBe(0);
  expect(windings(diamond)(at(-3, -2))).toBe(0);
  expect(windings(diamond)(at(-3, 2))).toBe(0);
});

test('a way in and back on itself changes nothing', () => {
  const [first, ...others] = CIRCLE as readonly [Curve, ...Curve[]];
  const spur: Curve = [at(1, 0), at(0.8, 0), at(0.4, 0), at(0.2, 0)];
  const spurred = [first, spur, ...pathReverse([spur]), ...others];
  expect(windings(spurred)(at(0.5, 1e-6))).toBe(1);
  expect(windings(spurred)(at(0.5, -1e-6))).toBe(1);
});
