import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Piece } from '../../src/edges';
import { type Curve, flattenCurves, outlineCurves, parallelOutline, pathThrough, point } from '../../src/plane';
import { between, chance, PATIENCE } from '../properties/seed';
import { bandsOver } from './allowance-bands';
import { type Pair, ringIsSimple } from './reference-geometry';

/** What the cut line promises, millimetres. */
const PROMISED = 0.05;

const allowance = fc.constantFrom(0, 3, 6, 10, 15, 25, 40);

/** A centre line, a hollow of nearly one radius after a small turn, an inseam at nearly a right angle to its end. */
const hollows = fc.record({
  radius: between(20, 80),
  /** Its width for its height: a crotch curve is tightest next to the centre. */
  long: between(1, 2.2),
  /** Degrees that the hollow turns away from the centre line, and the inseam from the right angle. */
  turn: between(-2, 2),
  slant: between(-12, 12),
  crotch: allowance,
  inseam: allowance,
});

test(
  'a cut line has no slit or spur whatever the radius of a hollow and the widths on both sides of it',
  () => {
    fc.assert(
      fc.property(hollows, ({ radius, long, turn, slant, crotch, inseam }) => {
        const wide = radius * long;
        // An allowance as wide as the hollow itself would lie on the other side of it.
        fc.pre(crotch < Math.min(wide, 1.5 * radius));
        const [bendTurn, inseamTurn] = [Math.tan((turn * Math.PI) / 180), Math.tan((slant * Math.PI) / 180)];
        const k = 0.5523;
        const bend: Curve = [
          point(0, 0),
          point(k * radius * bendTurn, k * radius),
          point(wide * (1 - k), radius),
          point(wide, radius),
        ];
        const outline = [
          { name: 'waist', curves: pathThrough(point(-150, -130), point(0, -130)) },
          { name: 'centre', curves: pathThrough(point(0, -130), point(0, 0)) },
          { name: 'crotch', curves: [bend] },
          { name: 'inseam', curves: pathThrough(point(wide, radius), point(wide + 150 * inseamTurn, radius + 150)) },
          { name: 'hem', curves: pathThrough(point(wide + 150 * inseamTurn, radius + 150), point(-150, radius + 150)) },
          { name: 'side', curves: pathThrough(point(-150, radius + 150), point(-150, -130)) },
        ];
        const widths: Readonly<Record<string, number>> = { centre: crotch, crotch, inseam };
        const away = (name: string) => widths[name] ?? 10;
        const cutLine = parallelOutline(outline, away).map((edge) => ({ ...edge, allowance: away(edge.name) }));
        const ring = flattenCurves(outlineCurves(cutLine), 0.01).map(({ x, y }): Pair => [x, y]);
        expect(ringIsSimple(ring)).toBe(true);
        const miss = bandsOver({ stitchLine: outline, cutLine } as unknown as Piece);
        expect(`${miss.off > PROMISED ? `${miss.off.toFixed(3)} off at ${miss.edge}` : 'within its bands'}`).toBe(
          'within its bands',
        );
      }),
      chance('hollows', 150),
    );
  },
  PATIENCE,
);
