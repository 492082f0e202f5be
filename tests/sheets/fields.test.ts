import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fieldExtents, latticeOver, noExtents, runsOf } from '../../src/sheets/fields';
import { between, chance } from '../properties/seed';

/** What is gathered is kept as 32-bit numbers: half a thousandth of a millimetre in a metre. */
const KEPT = 1e-3;

const SIDE = 100;
const stretch = fc.tuple(between(0, SIDE), between(0, SIDE), between(0, SIDE), between(0, SIDE));

test('a run of fields holds what lies between its first and its last line, wherever it begins', () => {
  const cases = fc.tuple(fc.array(stretch, { minLength: 1, maxLength: 6 }), between(20, 60), between(0, 10));
  fc.assert(
    fc.property(cases, ([stretches, pitch, overlap]) => {
      const across = latticeOver(SIDE, pitch, overlap, 5);
      const down = latticeOver(SIDE, 2 * SIDE, 0, 1);
      // Points of a stretch that are no further apart than the stretch is long: its ends alone.
      const fields = fieldExtents(Float64Array.from(stretches.flat()), { left: 0, top: 0 }, across, down, 2 * SIDE);
      const row = noExtents(across.count);
      runsOf(fields, down, across.count)(0, row);
      const run = runsOf(row, across, 1);
      const points = stretches.flatMap(([ax, ay, bx, by]) => [
        { x: ax, y: ay },
        { x: bx, y: by },
      ]);
      for (let start = -4; start + across.pitch <= across.count; start += 1) {
        const from = start > 0 ? overlap + start * across.step : Number.NEGATIVE_INFINITY;
        const to = overlap + (start + across.pitch) * across.step;
        const inside = points.filter(({ x }) => x >= from && x < to);
        const found = noExtents(1);
        run(start, found);
        const least = (of: (p: { x: number; y: number }) => number) => Math.min(...inside.map(of));
        const wanted = [least(({ x }) => x), least(({ y }) => y), least(({ x }) => -x), least(({ y }) => -y)];
        for (const [i, number] of wanted.entries()) {
          if (number === Infinity) expect(found[i]).toBe(Infinity);
          else expect(Math.abs((found[i] as number) - number)).toBeLessThan(KEPT);
        }
      }
    }),
    chance('runs of fields', 300),
  );
});
