import { describe, expect, test } from 'vitest';
import {
  curveCurvature,
  curveFrom,
  curvePoint,
  curvesNear,
  curveTangent,
  distance,
  flattenCurves,
  pathFoot,
  pathLength,
  point,
} from '../../src/plane';
import { curvesThrough } from '../../src/plane/spline';

const quarter = (count: number, radius = 100) =>
  Array.from({ length: count }, (_, i) => {
    const angle = (Math.PI / 2) * (i / (count - 1));
    return point(radius * Math.cos(angle), radius * Math.sin(angle));
  });

describe('a curve through points', () => {
  test('goes through every one of them, with one direction and one bend', () => {
    const points = [point(0, 0), point(30, 40), point(60, 45), point(100, 20), point(120, -30)];
    const curves = curvesThrough(points);
    expect(curves).toHaveLength(4);
    curves.forEach((curve, i) => {
      expect(curve[0]).toEqual(points[i]);
      expect(curve[3]).toEqual(points[i + 1]);
      const next = curves[i + 1];
      if (!next) return;
      expect(distance(curveTangent(curve, 1), curveTangent(next, 0))).toBeLessThan(1e-9);
      expect(curveCurvature(curve, 1)).toBeCloseTo(curveCurvature(next, 0), 9);
    });
  });

  test('is straight through two points, and through points on a line', () => {
    const two = curvesThrough([point(0, 0), point(90, 30)]);
    expect(pathLength(two)).toBeCloseTo(Math.hypot(90, 30), 9);
    const [a] = curvesThrough([point(0, 0), point(10, 10), point(40, 40), point(45, 45)]);
    expect(a?.every(({ x, y }) => Math.abs(x - y) < 1e-9)).toBe(true);
  });

  test('keeps a quarter of a circle of 100 mm within a third of a millimetre from five points', () => {
    const off = (count: number) =>
      Math.max(
        ...curvesThrough(quarter(count)).flatMap((curve) =>
          [0.25, 0.5, 0.75].map((t) => Math.abs(distance(curvePoint(curve, t), point(0, 0)) - 100)),
        ),
      );
    expect(off(5)).toBeLessThan(0.35);
    expect(off(9)).toBeLessThan(off(5) / 4);
  });
});

describe('a curve near points that a hand marked', () => {
  const own = curveFrom(point(0, 0), point(0, 1), 60, point(80, 90), point(1, -0.1), 70);
  const marks = (count: number, tremble: number) =>
    Array.from({ length: count }, (_, i) => {
      const { x, y } = curvePoint(own, i / (count - 1));
      const end = i === 0 || i === count - 1;
      return point(x + (end ? 0 : tremble * Math.cos(7 * i)), y + (end ? 0 : tremble * Math.sin(11 * i)));
    });
  const bends = (curves: readonly (typeof own)[]) =>
    curves.flatMap((curve) => [0.05, 0.3, 0.5, 0.7, 0.95].map((t) => Math.sign(curveCurvature(curve, t))));

  test('is the one cubic that they lie on', () => {
    const [found, ...more] = curvesNear(marks(7, 0), 1);
    expect(more).toEqual([]);
    const line = flattenCurves(found ? [found] : []);
    for (const p of marks(40, 0)) expect(pathFoot(line, p).distance).toBeLessThan(0.5);
  });

  test('smooths out a tremble of the hand that would make a spline bend to and fro', () => {
    const trembling = marks(12, 0.6);
    const near = curvesNear(trembling, 1);
    expect(near).toHaveLength(1);
    expect(new Set(bends(near)).size).toBe(1);
    expect(new Set(bends(curvesThrough(trembling))).size).toBe(2);
    const line = flattenCurves(near);
    for (const p of trembling) expect(pathFoot(line, p).distance).toBeLessThan(1);
  });

  test('goes through every mark where no one cubic comes near them', () => {
    const wave = Array.from({ length: 9 }, (_, i) => point(20 * i, 10 * Math.sin(2 * i)));
    const near = curvesNear(wave, 1);
    expect(near).toHaveLength(8);
    near.forEach((curve, i) => {
      expect(curve[0]).toEqual(wave[i]);
    });
    expect(curvesNear([point(0, 0), point(5, 5), point(10, 0)], 1)).toHaveLength(2);
  });
});
