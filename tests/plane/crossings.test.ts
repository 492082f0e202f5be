import fc from 'fast-check';
import { expect, test } from 'vitest';
import { curveCrossings } from '../../src/plane/crossings';
import { distance } from '../../src/plane/point';
import type { Curve, Point } from '../../src/plane/types';
import { chance } from '../properties/seed';

const at = (x: number, y: number): Point => ({ x, y });

test('neighbours that run on into each other meet in their common end alone, whichever way they are drawn', () => {
  const first: Curve = [at(0, 0), at(30, 5), at(60, 20), at(100, 20)];
  const second: Curve = [at(100, 20), at(130, 20), at(150, 60), at(150, 110)];
  const turned = ([a, b, c, d]: Curve): Curve => [d, c, b, a];
  expect(curveCrossings(first, second)).toEqual([{ at: at(100, 20), t: 1, u: 0 }]);
  expect(curveCrossings(second, first)).toEqual([{ at: at(100, 20), t: 0, u: 1 }]);
  expect(curveCrossings(turned(first), second)).toEqual([{ at: at(100, 20), t: 0, u: 0 }]);
  expect(curveCrossings(first, turned(second))).toEqual([{ at: at(100, 20), t: 1, u: 1 }]);
});

test('neighbours that come back over each other meet there too', () => {
  const first: Curve = [at(0, 0), at(40, 0), at(80, 0), at(120, 0)];
  const second: Curve = [at(120, 0), at(180, -60), at(80, -60), at(60, 60)];
  expect(curveCrossings(first, second)).toHaveLength(2);
});

const SIDES = [
  [1, 1],
  [1, -1],
  [-1, 1],
  [-1, -1],
] as const;

test('whether curves share an end or miss it by a hair, they cross as often elsewhere', () => {
  const coordinate = fc.integer({ min: 0, max: 200 });
  const place = fc.record({ x: coordinate, y: coordinate });
  const elsewhere = (first: Curve, second: Curve, end: Point) =>
    curveCrossings(first, second).filter(({ at: p }) => distance(p, end) > 0.5).length;
  fc.assert(
    fc.property(fc.tuple(place, place, place, place, place, place, place), ([a, b, c, shared, e, f, g]) => {
      const first: Curve = [a, b, c, shared];
      // Where two curves touch, a hair to one side they cross and to the other they don't.
      const missing = SIDES.map(([x, y]) => at(shared.x + 1e-5 * x, shared.y + 1e-5 * y));
      const counts = missing.map((start) => elsewhere(first, [start, e, f, g], shared));
      expect(counts).toContain(elsewhere(first, [shared, e, f, g], shared));
    }),
    chance('crossings of neighbours', 400),
  );
});
