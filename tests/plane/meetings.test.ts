import { describe, expect, it } from 'vitest';
import {
  type Curve,
  curveMap,
  curvePoint,
  distance,
  flattenCurves,
  outlineArea,
  outlineCrossings,
  type Point,
  pathReverse,
  pathThrough,
  point,
  straight,
} from '../../src/plane';
import { curveCrossings, curveLoop } from '../../src/plane/crossings';
import { pathMeetings } from '../../src/plane/meetings';

const near = ({ x, y }: Point, digits = 6) => ({ x: expect.closeTo(x, digits), y: expect.closeTo(y, digits) });

describe('where two curves meet', () => {
  const arch: Curve = [point(0, 100), point(30, -60), point(130, -60), point(160, 100)];

  it('is on both, at the places that are said, in the order of the first', () => {
    const wave: Curve = [point(-10, 30), point(60, 120), point(100, -60), point(170, 40)];
    const found = curveCrossings(arch, wave);
    expect(found.length).toBeGreaterThanOrEqual(2);
    for (const { at, t, u } of found) {
      expect(curvePoint(arch, t)).toEqual(near(at, 5));
      expect(curvePoint(wave, u)).toEqual(near(at, 5));
    }
    expect(found.map(({ t }) => t)).toEqual(found.map(({ t }) => t).toSorted((a, b) => a - b));
  });

  it('is found as often as two waves cross', () => {
    const lying: Curve = [point(0, 0), point(280, 400), point(-180, 400), point(100, 0)].map(({ x, y }) =>
      point(y, x),
    ) as unknown as Curve;
    const standing = curveMap(lying, ({ x, y }) => point(y + 100, x - 0));
    const found = curveCrossings(lying, standing);
    for (const { at, t, u } of found) {
      expect(distance(curvePoint(lying, t), at)).toBeLessThan(1e-5);
      expect(distance(curvePoint(standing, u), at)).toBeLessThan(1e-5);
    }
    // Counted by the signs of a fine polyline’s crossings.
    const [a, b] = [flattenCurves([lying], 0.001), flattenCurves([standing], 0.001)];
    const side = (p: Point, q: Point, r: Point) => Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
    let crossed = 0;
    for (let i = 1; i < a.length; i += 1)
      for (let k = 1; k < b.length; k += 1) {
        const [p, q, r, s] = [a[i - 1], a[i], b[k - 1], b[k]] as [Point, Point, Point, Point];
        if (side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0) crossed += 1;
      }
    expect(crossed).toBeGreaterThan(1);
    expect(found).toHaveLength(crossed);
  });

  it('is one point where they only touch, end on end or end on side', () => {
    const line = straight(point(-20, 100), point(0, 100));
    expect(curveCrossings(arch, line)).toEqual([
      { at: near(point(0, 100)), t: expect.closeTo(0, 6), u: expect.closeTo(1, 6) },
    ]);
    const onto = straight(point(80, -100), curvePoint(arch, 0.5));
    const [touch, ...more] = curveCrossings(arch, onto);
    expect(more).toEqual([]);
    expect(touch?.t).toBeCloseTo(0.5, 5);
  });

  it('is nowhere where they miss each other by a hair', () => {
    const top = curvePoint(arch, 0.5);
    expect(curveCrossings(arch, straight(point(0, top.y - 0.001), point(160, top.y - 0.001)))).toEqual([]);
    expect(curveCrossings(arch, straight(point(0, top.y + 0.01), point(160, top.y + 0.01)))).toHaveLength(2);
    expect(curveCrossings(straight(point(0, 0), point(50, 50)), straight(point(51, 51), point(90, 90)))).toEqual([]);
    expect(curveCrossings(straight(point(0, 0), point(50, 0)), straight(point(0, 1e-3), point(50, 1e-3)))).toEqual([]);
  });

  it('does not take for ever where they lie on each other', () => {
    for (const { at, t } of curveCrossings(arch, arch)) expect(curvePoint(arch, t)).toEqual(near(at, 4));
  });
});

describe('a loop', () => {
  const looped: Curve = [point(0, 0), point(160, 120), point(-60, 120), point(100, 0)];
  it('is found where the curve comes back to itself', () => {
    const at = curveLoop(looped);
    // Its two halves mirror each other, so that it crosses itself on the line between them.
    expect(at?.x).toBeCloseTo(50, 9);
    const line = flattenCurves([looped], 1e-4);
    const onMiddle = line.flatMap((p, i) => {
      const before = line[i - 1];
      if (!before || (before.x - 50) * (p.x - 50) > 0) return [];
      return [before.y + ((50 - before.x) / (p.x - before.x)) * (p.y - before.y)];
    });
    expect(onMiddle.some((y) => Math.abs(y - (at?.y ?? 0)) < 1e-2)).toBe(true);
    const turned = curveMap(looped, ({ x, y }) => point(0.6 * x - 0.8 * y + 7, 0.8 * x + 0.6 * y - 3));
    expect(curveLoop(turned)).toEqual(at && near(point(0.6 * at.x - 0.8 * at.y + 7, 0.8 * at.x + 0.6 * at.y - 3)));
  });

  it('is none in a bend, a wave, a straight line, or a curve that would only cross itself carried on', () => {
    for (const curve of [
      [point(0, 0), point(30, 90), point(90, 90), point(120, 0)],
      [point(0, 0), point(60, 90), point(60, -90), point(120, 0)],
      straight(point(0, 0), point(50, 80)),
      [point(0, 0), point(90, 90), point(40, 90), point(120, 0)],
    ] as const)
      expect(curveLoop(curve)).toBeUndefined();
  });

  it('makes an outline cross itself', () => {
    const tied = [looped, ...pathThrough(point(100, 0), point(100, -80), point(0, -80), point(0, 0))];
    expect(outlineCrossings(tied)).toHaveLength(1);
  });
});

describe('where two runs meet', () => {
  it('is said with the curve of each, in the order of the first, and a shared corner once', () => {
    const zigzag = pathThrough(point(0, 10), point(20, -10), point(40, 10), point(60, -10));
    const level = pathThrough(point(-5, 0), point(30, 0), point(70, 0));
    const found = pathMeetings(zigzag, level);
    expect(found.map(({ at }) => at)).toEqual([near(point(10, 0)), near(point(30, 0)), near(point(50, 0))]);
    expect(found.map(({ first }) => first.index)).toEqual([0, 1, 2]);
    expect(found.map(({ first }) => first.t)).toEqual([0.5, 0.5, 0.5].map((t) => expect.closeTo(t, 9)));
    expect(found[0]?.second).toEqual({ index: 0, t: expect.closeTo(15 / 35, 9) });
    expect(found[2]?.second).toEqual({ index: 1, t: expect.closeTo(0.5, 9) });
    expect(pathMeetings(pathReverse(zigzag), level).map(({ at }) => Math.round(at.x))).toEqual([50, 30, 10]);
  });
});

describe('the area of an outline', () => {
  const bowed: readonly Curve[] = [
    [point(0, 0), point(30, -40), point(70, 25), point(100, 0)],
    [point(100, 0), point(160, 20), point(90, 60), point(110, 90)],
    [point(110, 90), point(70, 130), point(20, 70), point(-10, 80)],
    [point(-10, 80), point(-50, 60), point(20, 30), point(0, 0)],
  ];
  it('is that of a fine polyline, negative the other way round, wherever it lies', () => {
    const ring = flattenCurves(bowed, 1e-5);
    const shoelace = ring.reduce((sum, p, i) => {
      const q = ring[(i + 1) % ring.length] as Point;
      return sum + (p.x * q.y - q.x * p.y) / 2;
    }, 0);
    expect(outlineArea(bowed)).toBeCloseTo(shoelace, 1);
    expect(outlineArea(pathReverse(bowed))).toBeCloseTo(-shoelace, 1);
    const away = bowed.map((curve) => curveMap(curve, ({ x, y }) => point(x + 3000, y - 2000)));
    expect(outlineArea(away)).toBeCloseTo(outlineArea(bowed), 4);
  });

  it('is refused of an outline that is open, and none of nothing', () => {
    expect(() => outlineArea(bowed.slice(0, 3))).toThrow(/open by 80\.6\d+ mm/);
    expect(outlineArea([])).toBe(0);
    const hair = [...bowed.slice(0, 3), straight(point(-10, 80), point(0, 5e-4))];
    expect(outlineArea(hair)).toBeGreaterThan(0);
  });
});

describe('an outline that crosses itself', () => {
  it('is told each place once, and not the corners where its curves run on', () => {
    const star = pathThrough(
      point(0, -100),
      point(59, 81),
      point(-95, -31),
      point(95, -31),
      point(-59, 81),
      point(0, -100),
    );
    expect(outlineCrossings(star)).toHaveLength(5);
    expect(outlineCrossings([])).toEqual([]);
  });
});
