import { describe, expect, it } from 'vitest';
import {
  type Curve,
  chordSlant,
  curveCurvature,
  curveFrom,
  curveMap,
  curvePoint,
  curveReaimed,
  curveTangent,
  distance,
  downWith,
  hollowLine,
  hollowLineWithin,
  type Point,
  pathReaimed,
  point,
  slantExcess,
  solveBetween,
} from '../../src/plane';

const near = ({ x, y }: Point, digits = 9) => ({ x: expect.closeTo(x, digits), y: expect.closeTo(y, digits) });
const nearCurve = (curve: Curve, digits = 9) => curve.map((p) => near(p, digits));
const slantAt = (curve: Curve, t: number) => {
  const { x, y } = curveTangent(curve, t);
  return x / y;
};

describe('a hollow line down a leg', () => {
  const [from, to] = [point(40, 10), point(-80, 710)];
  it('slants as its chord says, and down', () => {
    expect(chordSlant(from, to)).toBeCloseTo(-120 / 700, 12);
    expect(downWith(-0.75)).toEqual(near(point(-0.6, 0.8)));
  });

  it('reaches as far down with its handles as the hollow says', () => {
    const line = hollowLine(from, to, 0.1, { excess: 0.5, startHandle: 0.4, endHandle: 0.25 });
    expect([line[0], line[3]]).toEqual([from, to]);
    expect(line[1].y - from.y).toBeCloseTo(0.4 * 700, 9);
    expect(to.y - line[2].y).toBeCloseTo(0.25 * 700, 9);
    const chord = -120 / 700;
    expect(slantAt(line, 0)).toBeCloseTo(chord + 0.5 * (chord - 0.1), 9);
    expect(slantAt(line, 1)).toBeCloseTo(0.1, 9);
  });

  it('starts no steeper than it may where it can, and is still hollow where it can’t', () => {
    const usual = hollowLine(from, to, 0);
    expect(hollowLineWithin(from, to, 0, 1)).toEqual(nearCurve(usual));
    // 1.26 × the chord is the least hollow, 1.3 × the usual.
    const chord = 120 / 700;
    expect(Math.abs(slantAt(hollowLineWithin(from, to, 0, 1.28 * chord), 0))).toBeCloseTo(1.28 * chord, 9);
    expect(Math.abs(slantAt(hollowLineWithin(from, to, 0, 1.1 * chord), 0))).toBeCloseTo(1.26 * chord, 9);
    expect(hollowLineWithin(from, to, -chord, 0.01)).toEqual(nearCurve(hollowLine(from, to, -chord)));
  });

  it('bends one way only, also where it is hollowed less', () => {
    for (const steepest of [0.15, 0.18, 0.2, 0.22, 0.3])
      for (const end of [-0.05, 0, 0.06]) {
        const line = hollowLineWithin(from, to, end, steepest);
        const bends = Array.from({ length: 101 }, (_, i) => curveCurvature(line, i / 100));
        expect(bends.every((k) => k > -1e-9) || bends.every((k) => k < 1e-9), `${steepest} ${end}`).toBe(true);
      }
  });

  it('says how far its lower end must come in to start no steeper than it may', () => {
    for (const side of [1, -1])
      for (const end of [0, 0.05]) {
        const [a, b] = [point(0, 0), point(200 * side, 700)];
        const by = slantExcess(a, b, end * side, 0.25);
        expect(by).toBeGreaterThan(0);
        const moved = point(b.x - by * side, b.y);
        expect(Math.abs(slantAt(hollowLineWithin(a, moved, end * side, 0.25), 0))).toBeCloseTo(0.25, 6);
        expect(slantExcess(a, moved, end * side, 0.25)).toBeCloseTo(0, 6);
      }
    expect(slantExcess(point(0, 0), point(50, 700), 0, 0.25)).toBe(0);
    const [a, b] = [point(0, 0), point(200, 700)];
    expect(slantExcess(a, b, 0, 0.25, 0.3)).toBeGreaterThan(slantExcess(a, b, 0, 0.25, 0.26));
  });
});

describe('a bend between new ends', () => {
  const bend: Curve = [point(0, 0), point(10, 60), point(40, 100), point(100, 110)];
  const ends = (curve: Curve) =>
    [
      { at: curve[0], way: curveTangent(curve, 0) },
      { at: curve[3], way: curveTangent(curve, 1) },
    ] as const;

  it('is itself between its own ends', () => {
    expect(curveReaimed(bend, ...ends(bend))).toEqual(nearCurve(bend));
    const flat: Curve = [point(0, 0), point(20, 1), point(70, -1), point(100, 2)];
    expect(curveReaimed(flat, ...ends(flat))).toEqual(nearCurve(flat));
  });

  it('is the same bend larger, turned and moved where its ends are', () => {
    const larger = curveMap(bend, ({ x, y }) => point(1.2 * x - 1.6 * y + 50, 1.6 * x + 1.2 * y - 9));
    expect(curveReaimed(bend, ...ends(larger))).toEqual(nearCurve(larger));
    const flat: Curve = [point(0, 0), point(20, 1), point(70, -1), point(100, 2)];
    const flatLarger = curveMap(flat, ({ x, y }) => point(1.2 * x - 1.6 * y + 50, 1.6 * x + 1.2 * y - 9));
    expect(curveReaimed(flat, ...ends(flatLarger))).toEqual(nearCurve(flatLarger));
  });

  it('keeps its directions, and each handle its share of the way to the corner', () => {
    // Down 100, then right 100: the corner is (0, 100). Its handles are half and a quarter of the way.
    const square: Curve = [point(0, 0), point(0, 50), point(75, 100), point(100, 100)];
    const down = { at: point(0, 0), way: point(0, 1) };
    expect(curveReaimed(square, down, { at: point(200, 60), way: point(1, 0) })).toEqual(
      nearCurve([point(0, 0), point(0, 30), point(150, 60), point(200, 60)]),
    );
  });

  it('never goes past the corner with a handle', () => {
    const past: Curve = [point(0, 0), point(0, 140), point(-30, 100), point(100, 100)];
    const found = curveReaimed(past, { at: point(0, 0), way: point(0, 1) }, { at: point(100, 100), way: point(1, 0) });
    expect(found[1].y).toBeCloseTo(97, 9);
    expect(found[2].x).toBeCloseTo(3, 9);
  });

  it('of a run moves its first start and its last end, and nothing between', () => {
    const second: Curve = [point(100, 110), point(140, 116), point(170, 110), point(200, 100)];
    const third: Curve = [point(200, 100), point(240, 87), point(260, 60), point(270, 20)];
    const [start, end] = [
      { at: point(-10, -20), way: downWith(0.1) },
      { at: point(280, 0), way: point(0, -1) },
    ];
    const found = pathReaimed([bend, second, third], start, end);
    expect(found).toHaveLength(3);
    expect(found[1]).toEqual(second);
    expect([found[0]?.[0], found[0]?.[3], found[2]?.[0], found[2]?.[3]]).toEqual([start.at, bend[3], third[0], end.at]);
    expect(curveTangent(found[0] as Curve, 1)).toEqual(near(curveTangent(bend, 1)));
    expect(curveTangent(found[2] as Curve, 0)).toEqual(near(curveTangent(third, 0)));
    expect(curveTangent(found[0] as Curve, 0)).toEqual(near(start.way));
    expect(pathReaimed([bend], start, end)).toEqual([curveReaimed(bend, start, end)]);
    expect(pathReaimed([bend, third], start, end)).toHaveLength(2);
  });
});

describe('a curve by its ends, directions and handles', () => {
  it('has them', () => {
    const curve = curveFrom(point(5, 6), point(0.6, 0.8), 10, point(90, 40), point(1, 0), 20);
    expect(curve).toEqual(nearCurve([point(5, 6), point(11, 14), point(70, 40), point(90, 40)]));
    expect(distance(curvePoint(curve, 0), curve[1])).toBeCloseTo(10, 9);
  });
});

describe('solving', () => {
  const counted = (f: (x: number) => number) => {
    let calls = 0;
    const root = solveBetween(
      (x) => {
        calls += 1;
        return f(x);
      },
      0,
      10,
      1e-9,
    );
    return { root, calls };
  };

  // Each once cost a plain secant its bracket, or hundreds of steps.
  it.each([
    ['rising', (x: number) => x - 3.7, 3.7],
    ['falling', (x: number) => 3.7 - x, 3.7],
    ['bent', (x: number) => x ** 3 - 5, Math.cbrt(5)],
    ['steep at the end', (x: number) => x ** 9 - 1, 1],
    ['steep at the start', (x: number) => 1 - Math.exp(-3 * x) - 0.5, Math.log(2) / 3],
    ['flat, then steep', (x: number) => Math.exp(x) - 20_000, Math.log(20_000)],
  ] as const)('finds the root of a %s function in few looks', (_, f, wanted) => {
    const { root, calls } = counted(f);
    expect(root).toBeCloseTo(wanted, 8);
    expect(calls).toBeLessThan(40);
  });

  it('takes an end that is a root already, and the nearer one where there is none', () => {
    expect(solveBetween((x) => x, 0, 5, 1e-9)).toBe(0);
    expect(solveBetween((x) => x - 5, 0, 5, 1e-9)).toBe(5);
    expect(solveBetween((x) => x - 9, 0, 5, 1e-9)).toBe(5);
    expect(solveBetween((x) => -x - 1, 0, 5, 1e-9)).toBe(0);
    expect(solveBetween((x) => 1e-3 * (x - 2), 0, 5, 0.01)).toBe(0);
  });

  it('ends, between the two sides, where a function jumps over nothing', () => {
    expect(solveBetween((x) => (x < Math.SQRT2 ? -1 : 1), 0, 5, 1e-9)).toBeCloseTo(Math.SQRT2, 6);
  });
});
