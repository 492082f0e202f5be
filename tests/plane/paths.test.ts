import { describe, expect, it } from 'vitest';
import {
  add,
  between,
  type Curve,
  cross,
  curvePoint,
  distance,
  dot,
  flattenCurves,
  leftOf,
  moved,
  outlineEdge,
  type Point,
  pathAt,
  pathEnd,
  pathEndWay,
  pathFoot,
  pathFrom,
  pathLength,
  pathReverse,
  pathStart,
  pathStartWay,
  pathThrough,
  pathUpTo,
  point,
  pointsBounds,
  pointsHold,
  scale,
  straight,
  subtract,
  turned,
  unit,
} from '../../src/plane';
import { size } from '../../src/plane/point';

const near = ({ x, y }: Point, digits = 6) => ({ x: expect.closeTo(x, digits), y: expect.closeTo(y, digits) });
const bend: Curve = [point(100, 0), point(150, 0), point(180, 60), point(180, 120)];
/** 100 mm level, a bend, then 50 mm down. */
const path = [straight(point(0, 0), point(100, 0)), bend, straight(point(180, 120), point(180, 170))];

describe('points', () => {
  const [a, b] = [point(3, -7), point(-2, 11)];
  it('add, subtract, stretch and lie between each other, in both coordinates', () => {
    expect([add(a, b), subtract(a, b), scale(a, -2)]).toEqual([point(1, 4), point(5, -18), point(-6, 14)]);
    expect([between(a, b, 0), between(a, b, 1), between(a, b, 0.25)]).toEqual([a, b, point(1.75, -2.5)]);
    expect(moved(a, point(0.6, 0.8), 10)).toEqual(near(point(9, 1)));
  });

  it('know how far, how long, along and across', () => {
    expect([distance(a, b), size(point(-5, 12))]).toEqual([expect.closeTo(Math.hypot(5, 18), 12), 13]);
    expect([dot(a, b), cross(a, b), cross(b, a)]).toEqual([-83, 19, -19]);
    expect([unit(point(-3, 4)), unit(point(0, 0))]).toEqual([point(-0.6, 0.8), point(0, 0)]);
    expect(leftOf(point(1, 0))).toEqual({ x: 0, y: -1 });
  });

  it('turn round another point and keep their distance from it', () => {
    const t = turned(a, b, 1.1);
    expect(distance(t, b)).toBeCloseTo(distance(a, b), 9);
    expect(Math.atan2(cross(subtract(a, b), subtract(t, b)), dot(subtract(a, b), subtract(t, b)))).toBeCloseTo(1.1, 9);
  });
});

describe('a run of curves', () => {
  it('starts, ends and points where its first and last curve do', () => {
    expect([pathStart(path), pathEnd(path)]).toEqual([point(0, 0), point(180, 170)]);
    expect([pathStartWay(path), pathEndWay(path)]).toEqual([near(point(1, 0)), near(point(0, 1))]);
    expect([pathStartWay([bend]), pathEndWay([bend])]).toEqual([near(point(1, 0)), near(point(0, 1))]);
  });

  it('says what is wrong where there is no curve', () => {
    expect(() => pathStart([])).toThrow('an empty path has no start');
    expect(() => pathEnd([])).toThrow('an empty path has no end');
  });

  it('turned round runs from its end to its start, as long as before', () => {
    const back = pathReverse(path);
    expect([pathStart(back), pathEnd(back)]).toEqual([point(180, 170), point(0, 0)]);
    expect(pathLength(back)).toBeCloseTo(pathLength(path), 6);
    expect(pathAt(back, 50).at).toEqual(near(point(180, 120)));
  });

  it('finds the place and direction at a length, and the ends for what lies beyond', () => {
    expect(pathAt(path, 30)).toEqual({ at: near(point(30, 0)), way: near(point(1, 0)) });
    expect(pathAt(path, -5).at).toEqual(point(0, 0));
    const whole = pathLength(path);
    expect(pathAt(path, whole - 20)).toEqual({ at: near(point(180, 150)), way: near(point(0, 1)) });
    expect(pathAt(path, whole + 9)).toEqual({ at: point(180, 170), way: near(point(0, 1)) });
    const middle = 100 + pathLength([bend]) / 2;
    expect(pathLength(pathUpTo(path, middle))).toBeCloseTo(middle, 6);
    expect(pathAt(path, middle).at).toEqual(near(pathEnd(pathUpTo(path, middle))));
  });

  it('is cut into what comes before a length and what comes after', () => {
    for (const length of [40, 100, 150, 250]) {
      const [head, tail] = [pathUpTo(path, length), pathFrom(path, length)];
      expect(pathStart(head)).toEqual(point(0, 0));
      expect(pathEnd(tail)).toEqual(near(point(180, 170)));
      expect(pathEnd(head)).toEqual(near(pathStart(tail), 5));
      expect(pathLength(head) + pathLength(tail)).toBeCloseTo(pathLength(path), 5);
    }
    expect(pathUpTo(path, 0)).toEqual([]);
    expect(pathUpTo(path, 100)).toEqual([path[0]]);
    expect(pathUpTo(path, pathLength(path))).toHaveLength(3);
  });

  it('goes on straight where more is asked for than there is', () => {
    const longer = pathUpTo(path, pathLength(path) + 25);
    expect(longer).toHaveLength(4);
    expect(pathEnd(longer)).toEqual(near(point(180, 195)));
    expect(pathStart(pathFrom(path, -10))).toEqual(near(point(-10, 0), 5));
  });

  it('names an edge, or says which is missing', () => {
    const outline = [{ name: 'hem', curves: path }] as const;
    expect(outlineEdge(outline, 'hem').curves).toBe(path);
    expect(() => outlineEdge(outline as never, 'waist')).toThrow('there is no edge named waist');
  });
});

describe('points on a run of curves', () => {
  const chordsOff = (curves: readonly Curve[], tolerance: number) => {
    const points = flattenCurves(curves, tolerance);
    let worst = 0;
    for (const curve of curves)
      for (let i = 0; i <= 2000; i += 1)
        worst = Math.max(worst, pathFoot(points, curvePoint(curve, i / 2000)).distance);
    return { points, worst };
  };

  // One bend at the start, one at the end, one in the middle: each decides how many points are needed.
  it.each([
    ['at its start', [point(0, 0), point(4, 70), point(80, 75), point(160, 80)]],
    ['at its end', [point(0, 0), point(80, 5), point(156, 10), point(160, 80)]],
    ['all along', [point(0, 0), point(10, 90), point(150, 90), point(160, 0)]],
  ] as const)(
    'keep their chords within what is allowed where it bends %s, with no more points than that takes',
    (_, curve) => {
      for (const tolerance of [0.5, 0.02]) {
        const { points, worst } = chordsOff([curve], tolerance);
        expect(worst).toBeLessThanOrEqual(tolerance);
        // With every second point left out it would be too coarse.
        const half = [...points.filter((_p, i) => i % 3 === 0), points.at(-1) as Point];
        const off = Math.max(...points.map((p) => pathFoot(half, p).distance));
        expect(off).toBeGreaterThan(tolerance);
      }
    },
  );

  it('are its corners alone where it is straight', () => {
    expect(flattenCurves(pathThrough(point(0, 0), point(10, 0), point(10, 30)))).toEqual([
      point(0, 0),
      point(10, 0),
      point(10, 30),
    ]);
    expect(flattenCurves([])).toEqual([]);
  });
});

describe('the foot on a polyline', () => {
  const line = [point(0, 0), point(100, 0), point(100, 0), point(100, 50)];
  it('is as near as it can be, and knows when it is one of the two ends', () => {
    expect(pathFoot(line, point(30, -8))).toEqual({ at: point(30, 0), distance: 8, atEnd: false });
    expect(pathFoot(line, point(-3, 4))).toEqual({ at: point(0, 0), distance: 5, atEnd: true });
    expect(pathFoot(line, point(103, 54))).toEqual({ at: point(100, 50), distance: 5, atEnd: true });
    expect(pathFoot(line, point(103, -4))).toEqual({ at: point(100, 0), distance: 5, atEnd: false });
    expect(pathFoot(line, point(92, 30))).toEqual({ at: point(100, 30), distance: 8, atEnd: false });
  });
});

describe('a box and a ring of points', () => {
  it('is the least round all of them', () => {
    expect(pointsBounds([point(3, -2), point(-1, 7), point(2, 9)])).toEqual({ left: -1, top: -2, right: 3, bottom: 9 });
  });

  it('holds what lies within it, hollows left out', () => {
    const ring = [point(0, 0), point(100, 0), point(100, 100), point(50, 40), point(0, 100)];
    for (const [x, y] of [
      [50, 20],
      [10, 80],
      [90, 80],
      [1, 1],
    ] as const)
      expect(pointsHold(ring, point(x, y)), `${x} ${y}`).toBe(true);
    for (const [x, y] of [
      [50, 60],
      [-1, 50],
      [101, 50],
      [50, -1],
      [50, 101],
      [5, 110],
    ] as const)
      expect(pointsHold(ring, point(x, y)), `${x} ${y}`).toBe(false);
  });
});
