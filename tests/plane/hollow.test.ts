import { expect, it } from 'vitest';
import { curveCurvature, curveTangent, type Hollow, hollowLine, point } from '../../src/plane';

const BLOCK: Hollow = { excess: 0.3, startHandle: 0.33, endHandle: 0.22 };

it.each([
  ['a leg', undefined],
  ['a block', BLOCK],
])(
  '%s keeps bending one way however steeply its line slants: inseams of blocks once bent back at the crotch',
  (_, hollow) => {
    for (const across of [20, 100, 200, 400]) {
      for (const end of [-0.1, 0, 0.05]) {
        const line = hollowLine(point(across, 0), point(0, 300), end, hollow);
        const bends = Array.from({ length: 101 }, (__, i) => curveCurvature(line, i / 100));
        expect(bends.every((bend) => bend < 1e-9) || bends.every((bend) => bend > -1e-9)).toBe(true);
        const way = curveTangent(line, 1);
        expect(way.x / way.y).toBeCloseTo(end, 9);
      }
    }
  },
);
