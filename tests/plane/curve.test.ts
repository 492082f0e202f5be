import { describe, expect, it } from 'vitest';
import {
  type Curve,
  curveBounds,
  curveCurvature,
  curveLength,
  curveMeetsLine,
  curvePoint,
  curveTimeAt,
  distance,
  flattenCurves,
  hollowLine,
  linesMeet,
  mirrored,
  outlineArea,
  outlineCrossings,
  pathFoot,
  pathFrom,
  pathLength,
  pathThrough,
  pathUpTo,
  point,
  solveBetween,
  straight,
  turned,
} from '../../src/plane';

// A quarter of the unit circle by the usual four-arc handle; its true length differs by less than 3e-4 of the radius.
const KAPPA = 0.5522847498307936;
const quarter = (r: number): Curve => [point(r, 0), point(r, KAPPA * r), point(KAPPA * r, r), point(0, r)];
const wave: Curve = [point(0, 0), point(120, -40), point(20, 260), point(180, 200)];

describe('a curve', () => {
  it('has the arc length that a fine polyline has', () => {
    let sum = 0;
    const steps = 200_000;
    for (let i = 1; i <= steps; i += 1) sum += distance(curvePoint(wave, (i - 1) / steps), curvePoint(wave, i / steps));
    expect(curveLength(wave)).toBeCloseTo(sum, 5);
  });

  it('finds the parameter of an arc length', () => {
    const whole = curveLength(wave);
    for (const share of [0, 0.1, 0.5, 0.93, 1])
      expect(curveLength(wave, curveTimeAt(wave, share * whole))).toBeCloseTo(share * whole, 5);
  });

  it('has the curvature of the circle that it follows, clockwise positive', () => {
    expect(curveCurvature(quarter(80), 0.5)).toBeCloseTo(1 / 80, 3);
    expect(curveCurvature(straight(point(0, 0), point(9, 4)), 0.3)).toBeCloseTo(0, 9);
  });

  it('has a box that no point of it leaves, and that touches it', () => {
    const box = curveBounds(wave);
    const points = Array.from({ length: 2001 }, (_, i) => curvePoint(wave, i / 2000));
    expect(Math.min(...points.map((p) => p.x))).toBeCloseTo(box.left, 2);
    expect(Math.max(...points.map((p) => p.x))).toBeCloseTo(box.right, 2);
    expect(Math.min(...points.map((p) => p.y))).toBeCloseTo(box.top, 2);
    expect(Math.max(...points.map((p) => p.y))).toBeCloseTo(box.bottom, 2);
  });

  it('meets a line where it crosses it, once for each crossing', () => {
    const s: Curve = [point(0, 0), point(100, 300), point(100, -300), point(200, 20)];
    const level = curveMeetsLine(s, point(0, 1e-3), point(1, 0));
    expect(level).toHaveLength(3);
    for (const t of level) expect(curvePoint(s, t).y).toBeCloseTo(1e-3, 6);
    expect(curveMeetsLine(s, point(0, 500), point(1, 0))).toEqual([]);
  });
});

describe('a path', () => {
  const path = [straight(point(0, 0), point(100, 0)), quarter(50)].map((c) => c) as Curve[];
  it('is cut by arc length and carried on straight past its end', () => {
    const whole = pathLength(path);
    expect(pathLength(pathUpTo(path, 130))).toBeCloseTo(130, 6);
    expect(pathLength(pathFrom(path, 130))).toBeCloseTo(whole - 130, 6);
    expect(pathLength(pathUpTo(path, whole + 40))).toBeCloseTo(whole + 40, 6);
  });

  it('is sampled so that no chord leaves it by more than was allowed, and not by a hundredth of it', () => {
    const points = flattenCurves([wave], 0.02);
    let worst = 0;
    for (let i = 0; i <= 5000; i += 1) worst = Math.max(worst, pathFoot(points, curvePoint(wave, i / 5000)).distance);
    expect(worst).toBeLessThanOrEqual(0.02);
    expect(worst).toBeGreaterThan(0.002);
  });
});

describe('an outline', () => {
  it('knows its area, and whether it crosses itself', () => {
    const square = pathThrough(point(0, 0), point(10, 0), point(10, 10), point(0, 10), point(0, 0));
    const bow = pathThrough(point(0, 0), point(10, 10), point(10, 0), point(0, 10), point(0, 0));
    expect(outlineArea(square)).toBeCloseTo(100, 9);
    expect(outlineCrossings(square)).toEqual([]);
    expect(outlineCrossings(bow)).toHaveLength(1);
    expect(() => outlineCrossings(square.slice(0, 3))).toThrow(/open/);
  });
});

describe('points and solving', () => {
  it('turns clockwise as seen on the paper, and mirrors in a line', () => {
    expect(turned(point(1, 0), point(0, 0), Math.PI / 2)).toEqual({
      x: expect.closeTo(0, 12),
      y: expect.closeTo(1, 12),
    });
    expect(mirrored(point(3, 7), point(0, 0), point(1, 1))).toEqual({
      x: expect.closeTo(7, 12),
      y: expect.closeTo(3, 12),
    });
    expect(linesMeet(point(0, 0), point(1, 0), point(5, -3), point(0, 1))).toEqual({ x: 5, y: 0 });
    expect(linesMeet(point(0, 0), point(1, 0), point(5, -3), point(2, 0))).toBeUndefined();
  });

  it('finds a root, and the nearer end where there is none', () => {
    expect(solveBetween((x) => x * x * x - 2, 0, 5, 1e-12)).toBeCloseTo(2 ** (1 / 3), 9);
    expect(solveBetween((x) => x + 10, 0, 5, 1e-9)).toBe(0);
  });

  it('draws a hollow line that starts slanting more than its chord, ends as told and bends one way', () => {
    const line = hollowLine(point(0, 0), point(-100, 700), 0);
    const signs = Array.from({ length: 101 }, (_, i) => Math.sign(Math.round(curveCurvature(line, i / 100) * 1e9)));
    expect(new Set(signs.filter((s) => s !== 0)).size).toBe(1);
    expect((line[1].x - line[0].x) / (line[1].y - line[0].y)).toBeCloseTo((-100 / 700) * 1.3, 9);
    expect(line[3].x - line[2].x).toBeCloseTo(0, 9);
  });
});
