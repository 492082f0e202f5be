import { describe, expect, it } from 'vitest';
import {
  type Curve,
  curveBounds,
  curveCurvature,
  curveIsStraight,
  curveLength,
  curveMeetsLine,
  curvePart,
  curvePoint,
  curveSplit,
  curveTangent,
  curveTimeAt,
  distance,
  type Point,
  point,
} from '../../src/plane';
import { curveNearest, curveVelocity } from '../../src/plane/curve';

const wave: Curve = [point(0, 0), point(120, -40), point(20, 260), point(180, 200)];
const arch: Curve = [point(10, 20), point(30, -60), point(140, -80), point(150, 40)];
const CURVES = [wave, arch, [...wave].reverse() as unknown as Curve];
const steps = Array.from({ length: 21 }, (_, i) => i / 20);
const near = ({ x, y }: Point, digits = 9) => ({ x: expect.closeTo(x, digits), y: expect.closeTo(y, digits) });

/** By differences, with no formula of the curve's own. */
const slopeAt = (curve: Curve, t: number): Point => {
  const [a, b] = [curvePoint(curve, t - 1e-5), curvePoint(curve, t + 1e-5)];
  return point((b.x - a.x) / 2e-5, (b.y - a.y) / 2e-5);
};

describe('how a curve travels', () => {
  it('starts and ends where it says, and moves as its points do', () => {
    for (const curve of CURVES) {
      expect(curvePoint(curve, 0)).toEqual(curve[0]);
      expect(curvePoint(curve, 1)).toEqual(curve[3]);
      for (const t of steps) expect(curveVelocity(curve, t)).toEqual(near(slopeAt(curve, t), 4));
    }
  });

  it('has the direction of its movement, of length 1', () => {
    for (const curve of CURVES)
      for (const t of steps) {
        const { x, y } = slopeAt(curve, t);
        expect(curveTangent(curve, t)).toEqual(near(point(x / Math.hypot(x, y), y / Math.hypot(x, y)), 6));
      }
  });

  it('bends as three of its points do', () => {
    for (const curve of CURVES)
      for (const t of [0.1, 0.35, 0.6, 0.9]) {
        const [a, b, c] = [curvePoint(curve, t - 1e-3), curvePoint(curve, t), curvePoint(curve, t + 1e-3)];
        const area = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
        const round = (2 * area) / (distance(a, b) * distance(b, c) * distance(a, c));
        expect(curveCurvature(curve, t)).toBeCloseTo(round, 4);
      }
  });

  it('has no bend where it stands still', () => {
    const stands: Curve = [point(0, 0), point(0, 0), point(50, 10), point(90, 0)];
    expect(curveCurvature(stands, 0)).toBe(0);
  });

  // A handle without length is what a drawing program writes for a corner.
  it('goes towards the next point that differs where a handle has no length', () => {
    const [a, b, d] = [point(0, 0), point(30, 40), point(130, 40)];
    expect(curveTangent([a, a, b, d], 0)).toEqual(near(point(0.6, 0.8)));
    expect(curveTangent([a, a, a, b], 0)).toEqual(near(point(0.6, 0.8)));
    expect(curveTangent([a, b, d, d], 1)).toEqual(near(point(1, 0)));
    expect(curveTangent([d, b, b, b], 1)).toEqual(near(point(-1, 0)));
    expect(curveTangent([d, a, b, b], 1)).toEqual(near(point(0.6, 0.8)));
  });
});

describe('a part of a curve', () => {
  it('lies on the curve, place by place', () => {
    for (const curve of CURVES)
      for (const [from, to] of [
        [0, 0.3],
        [0.25, 0.8],
        [0.6, 1],
        [0, 1],
      ] as const) {
        const part = curvePart(curve, from, to);
        for (const t of steps) expect(curvePoint(part, t)).toEqual(near(curvePoint(curve, from + (to - from) * t)));
      }
  });

  it('and the other part are the whole', () => {
    for (const curve of CURVES) {
      const [first, second] = curveSplit(curve, 0.37);
      for (const t of steps) {
        expect(curvePoint(first, t)).toEqual(near(curvePoint(curve, 0.37 * t)));
        expect(curvePoint(second, t)).toEqual(near(curvePoint(curve, 0.37 + 0.63 * t)));
      }
      expect(curveLength(first) + curveLength(second)).toBeCloseTo(curveLength(curve), 5);
    }
  });
});

describe('the length of a curve', () => {
  const measured = (curve: Curve, to: number) => {
    let sum = 0;
    for (let i = 1; i <= 20_000; i += 1)
      sum += distance(curvePoint(curve, (to * (i - 1)) / 20_000), curvePoint(curve, (to * i) / 20_000));
    return sum;
  };

  it('up to any of its places is what a fine polyline says', () => {
    for (const curve of CURVES)
      for (const t of [0.1, 0.5, 0.77, 1]) expect(curveLength(curve, t)).toBeCloseTo(measured(curve, t), 4);
    expect([curveLength(wave, 0), curveLength(wave, -0.5)]).toEqual([0, 0]);
  });

  it('up to a place of a straight line counts how unevenly its handles make it travel', () => {
    const uneven: Curve = [point(0, 0), point(10, 0), point(20, 0), point(100, 0)];
    for (const t of [0.2, 0.5, 0.9]) expect(curveLength(uneven, t)).toBeCloseTo(curvePoint(uneven, t).x, 6);
    expect(curveLength(uneven)).toBe(100);
  });

  it('is right round a cusp and a tight loop, where speed falls to nothing', () => {
    const cusp: Curve = [point(0, 0), point(100, 100), point(0, 100), point(100, 0)];
    const loop: Curve = [point(0, 0), point(200, 150), point(-100, 150), point(100, 0)];
    for (const curve of [cusp, loop]) expect(curveLength(curve)).toBeCloseTo(measured(curve, 1), 3);
  });

  it('finds its place again, and the ends for what lies beyond', () => {
    for (const curve of CURVES) {
      for (const t of steps) expect(curveTimeAt(curve, curveLength(curve, t))).toBeCloseTo(t, 6);
      expect([curveTimeAt(curve, -3), curveTimeAt(curve, 1e4)]).toEqual([0, 1]);
    }
    const cusp: Curve = [point(0, 0), point(100, 100), point(0, 100), point(100, 0)];
    expect(curveTimeAt(cusp, curveLength(cusp, 0.5))).toBeCloseTo(0.5, 2);
  });
});

describe('a straight line', () => {
  it('is told from one that bends by a hair on either handle', () => {
    const [a, d] = [point(0, 0), point(90, 120)];
    const on = (share: number, off = 0) => point(90 * share - 0.8 * off, 120 * share + 0.6 * off);
    expect(curveIsStraight([a, on(0.2), on(0.9), d])).toBe(true);
    for (const off of [1e-5, -1e-5]) {
      expect(curveIsStraight([a, on(0.2, off), on(0.9), d])).toBe(false);
      expect(curveIsStraight([a, on(0.2), on(0.9, off), d])).toBe(false);
    }
  });
});

describe('the box of a curve', () => {
  const boxOf = (curve: Curve) => {
    const all = Array.from({ length: 4001 }, (_, i) => curvePoint(curve, i / 4000));
    const [xs, ys] = [all.map((p) => p.x), all.map((p) => p.y)];
    return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
  };

  it.each([
    ['a wave', wave],
    ['an arch', arch],
    ['one that goes back beyond its start', [point(0, 0), point(-60, 10), point(20, 90), point(50, 100)]],
    ['one that runs on beyond its end', [point(0, 0), point(20, 90), point(110, 10), point(50, 100)]],
    ['a parabola, whose slope is no square', [point(0, 0), point(30, 60), point(60, 60), point(90, 0)]],
    ['one with a level end', [point(0, 0), point(30, 0), point(60, 40), point(90, -5)]],
    ['a straight line', [point(5, 9), point(4, 8), point(2, 6), point(1, 5)]],
    ['an upright one', [point(5, 0), point(5, 80), point(5, -30), point(5, 60)]],
  ] as const)('of %s is touched on all four sides and never left', (_, curve) => {
    const found = curveBounds(curve);
    const wanted = boxOf(curve);
    for (const side of ['left', 'top', 'right', 'bottom'] as const)
      expect(found[side], side).toBeCloseTo(wanted[side], 3);
  });
});

describe('where a curve meets a line', () => {
  it('is found at its very ends, too, and once each', () => {
    const flat: Curve = [point(0, 0), point(40, 60), point(80, 60), point(120, 0)];
    expect(curveMeetsLine(flat, point(0, 0), point(1, 0))).toEqual([0, 1]);
    expect(curveMeetsLine(flat, point(-50, 0), point(-1, 0))).toEqual([0, 1]);
    expect(curveMeetsLine(flat, point(0, 20), point(1, 0))).toHaveLength(2);
    expect(curveMeetsLine(flat, point(60, 0), point(0, 1))).toEqual([expect.closeTo(0.5, 9)]);
    expect(curveMeetsLine(flat, point(0, -1), point(1, 0))).toEqual([]);
  });

  it('of a slanting line is on both', () => {
    for (const [x, y] of [
      [1, 0.3],
      [-0.2, 1],
      [1, -2],
    ] as const)
      for (const curve of CURVES) {
        const on = curvePoint(curve, 0.4);
        const found = curveMeetsLine(curve, on, point(x, y));
        expect(found.some((t) => Math.abs(t - 0.4) < 1e-6)).toBe(true);
        for (const t of found) {
          const { x: px, y: py } = curvePoint(curve, t);
          expect((px - on.x) * y - (py - on.y) * x).toBeCloseTo(0, 6);
        }
      }
  });
});

describe('the nearest place of a curve', () => {
  it('is no farther than any other near the guess', () => {
    for (const curve of CURVES)
      for (const t of [0.2, 0.5, 0.8]) {
        const on = curvePoint(curve, t);
        const p = point(on.x + 6, on.y - 4);
        const found = distance(p, curvePoint(curve, curveNearest(curve, p, t)));
        for (let other = t - 0.1; other <= t + 0.1; other += 0.002)
          expect(found).toBeLessThanOrEqual(distance(p, curvePoint(curve, other)) + 1e-9);
      }
  });

  it('is an end for what lies beyond it', () => {
    expect(curveNearest(wave, point(-20, 5), 0.05)).toBe(0);
    expect(curveNearest(wave, point(220, 185), 0.95)).toBe(1);
  });
});
