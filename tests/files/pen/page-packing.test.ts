import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packedPages } from '../../../src/files/pen/page-packing';
import { between, chance, PATIENCE } from '../../properties/seed';

const PAGE = { width: 283, height: 400 };
const GAP = 3;

test('rectangles lie on their page, apart from each other, none lost, on no more pages than one each', {
  timeout: PATIENCE,
}, () => {
  const parcels = fc.array(fc.record({ width: between(5, 280), height: between(5, 400) }), {
    minLength: 1,
    maxLength: 30,
  });
  fc.assert(
    fc.property(parcels, fc.constantFrom('seldom', 'freely'), (all, turn) => {
      const packed = packedPages(all, PAGE, GAP, turn) ?? [];
      expect(packed).toHaveLength(all.length);
      const boxes = packed.map(({ page, left, top, turned }, i) => {
        const { width = 0, height = 0 } = all[i] ?? {};
        const [w, h] = turned ? [height, width] : [width, height];
        return { page, left, top, right: left + w, bottom: top + h };
      });
      for (const [i, a] of boxes.entries()) {
        expect(
          Math.min(a.left, a.top, PAGE.width - a.right + 1e-9, PAGE.height - a.bottom + 1e-9),
        ).toBeGreaterThanOrEqual(0);
        for (const b of boxes.slice(i + 1)) {
          if (a.page !== b.page) continue;
          const apart = Math.max(b.left - a.right, a.left - b.right, b.top - a.bottom, a.top - b.bottom);
          expect(apart).toBeGreaterThanOrEqual(GAP - 1e-9);
        }
      }
      const pages = new Set(packed.map(({ page }) => page));
      expect([...pages].sort((a, b) => a - b)).toEqual(Array.from({ length: pages.size }, (_, i) => i));
    }),
    chance('packed pages', 100),
  );
});

test('what shares a page does, what is too large for it is refused', () => {
  const four = Array.from({ length: 4 }, () => ({ width: 140, height: 190 }));
  expect(packedPages(four, PAGE, GAP, 'seldom')?.every(({ page }) => page === 0)).toBe(true);
  expect(packedPages([{ width: 401, height: 10 }], PAGE, GAP, 'seldom')).toBeUndefined();
  expect(packedPages([{ width: 390, height: 280 }], PAGE, GAP, 'seldom')).toEqual([
    { page: 0, left: 0, top: 0, turned: true },
  ]);
});
