import fc from 'fast-check';
import { expect, test } from 'vitest';
import { distance, type Point } from '../../../src/plane';
import { bent, straightened, straightenedBy } from '../../../src/trace/camera/lens';
import { between, chance } from '../../properties/seed';

const lenses = fc.record({ k1: between(-0.05, 0.14), k2: between(-0.01, 0.05) });
const places = fc.record({ x: between(-0.8, 0.8), y: between(-0.6, 0.6) });

test('what a lens bends is straightened to where it was, from a barrel of 15 % to a cushion of 5 %', () => {
  fc.assert(
    fc.property(lenses, places, (lens, p) => {
      const back = bent(lens, straightened(lens, p));
      expect(back && distance(back, p)).toBeLessThan(1e-7);
    }),
    chance('lenses', 300),
  );
});

test('a barrel of 15 % has its corner, seen at 1, truly at 1.15', () => {
  const seen = straightened({ k1: 0.1, k2: 0.05 }, { x: 0.8, y: 0.6 });
  expect(Math.hypot(seen.x, seen.y)).toBeCloseTo(1.15, 12);
  expect(seen.y / seen.x).toBeCloseTo(0.75, 12);
});

test('a lens that folds its picture over shows nothing beyond the fold', () => {
  expect(bent({ k1: -0.5, k2: 0 }, { x: 2, y: 0 })).toBeUndefined();
  expect(bent({ k1: 0, k2: 0 }, { x: 0, y: 0 })).toEqual({ x: 0, y: 0 });
});

test('how a small step is moved is what the difference of two points says', () => {
  const [lens, p, step] = [{ k1: 0.1, k2: -0.03 }, { x: 0.4, y: -0.3 }, 1e-6];
  const by = straightenedBy(lens, p);
  const slope = (dx: number, dy: number): Point => {
    const [a, b] = [-1, 1].map((sign) => straightened(lens, { x: p.x + sign * dx, y: p.y + sign * dy })) as [
      Point,
      Point,
    ];
    return { x: (b.x - a.x) / (2 * step), y: (b.y - a.y) / (2 * step) };
  };
  expect(slope(step, 0).x).toBeCloseTo(by.xx, 8);
  expect(slope(step, 0).y).toBeCloseTo(by.xy, 8);
  expect(slope(0, step).y).toBeCloseTo(by.yy, 8);
});
