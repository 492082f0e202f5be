import { describe, expect, it } from 'vitest';
import { type Curve, curveIsStraight, curvePoint, distance, loadPathReader, type Point, point } from '../../src/plane';

const AS_IT_IS = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
const read = await loadPathReader();
const runs = (data: string, place = AS_IT_IS) => read(data, place);
const near = ({ x, y }: Point) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });
const corners = (run: readonly Curve[] = []) => [...run.slice(0, 1).map((c) => c[0]), ...run.map((c) => c[3])];

describe('path data that others wrote', () => {
  it('are straight lines in every way to write them, closed or not', () => {
    const square = [point(10, 20), point(60, 20), point(60, 50), point(10, 50), point(10, 20)];
    for (const data of [
      'M10 20 L60 20 L60 50 L10 50 Z',
      'm10,20 l50,0 l0,30 l-50,0 z',
      'M10 20H60V50H10Z',
      'm10 20h50v30h-50z',
      'M10 20 60 20 60 50 10 50Z',
      ' M1e1 2e1H6.0e1V5e1h-50V20 ',
    ]) {
      const [run, ...more] = runs(data) ?? [];
      expect(more, data).toEqual([]);
      expect(corners(run), data).toEqual(square);
      expect(run?.every(curveIsStraight), data).toBe(true);
    }
  });

  it('are several runs where the pen is lifted, and none where it draws nothing', () => {
    const found = runs('M0 0 L10 0 M20 20 m5 5 L30 30 Z M7 7 M50 0 V9') ?? [];
    expect(found.map(corners)).toEqual([
      [point(0, 0), point(10, 0)],
      [point(25, 25), point(30, 30), point(25, 25)],
      [point(50, 0), point(50, 9)],
    ]);
    expect(runs('M5 5')).toEqual([]);
    expect(runs('M5 5 L5 5 L9 5')?.map(corners)).toEqual([[point(5, 5), point(9, 5)]]);
    expect(runs('M5 5 V5 V8 H5 Z')?.map(corners)).toEqual([[point(5, 5), point(5, 8), point(5, 5)]]);
  });

  it('are cubics as they stand, short ones with the handle that is meant', () => {
    expect(runs('M0 0 C10 20 30 20 40 0 s30 -20 40 0')).toEqual([
      [
        [point(0, 0), point(10, 20), point(30, 20), point(40, 0)],
        [point(40, 0), point(50, -20), point(70, -20), point(80, 0)],
      ],
    ]);
    const [[line] = []] = runs('M0 0 C0 0 90 30 90 30') ?? [];
    expect(line).toEqual([point(0, 0), near(point(30, 10)), near(point(60, 20)), point(90, 30)]);
    // One handle is enough for a bend.
    expect(runs('M0 0 C0 0 20 50 90 30')?.[0]?.[0]?.[1]).toEqual(point(0, 0));
    expect(runs('M0 0 C20 50 90 30 90 30')?.[0]?.[0]?.[1]).toEqual(point(20, 50));
  });

  it('are the very same curves where they were quadratic, point by point', () => {
    const [[first, second] = []] = runs('M0 0 Q30 60 90 0 T180 0') ?? [];
    for (const t of [0, 0.2, 0.5, 0.9, 1]) {
      const s = 1 - t;
      const on = point(2 * s * t * 30 + t * t * 90, 2 * s * t * 60);
      expect(first && curvePoint(first, t)).toEqual(near(on));
      expect(second && curvePoint(second, t)).toEqual(near(point(90 + 2 * s * t * 60 + t * t * 90, -2 * s * t * 60)));
    }
  });

  it('are round where they were arcs', () => {
    const [run = []] = runs('M100 0 A100 100 0 0 1 0 100') ?? [];
    expect(corners(run).at(-1)).toEqual(near(point(0, 100)));
    for (const curve of run)
      for (const t of [0.1, 0.5, 0.8]) expect(distance(curvePoint(curve, t), point(0, 0))).toBeCloseTo(100, 1);
  });

  it('lie where their place puts them, turned, stretched and moved', () => {
    const place = { a: 0, b: 2, c: -3, d: 0, e: 100, f: 50 };
    const [run = []] = runs('M10 20 H40 V60 L0 0 Q5 5 10 0 C1 2 3 4 5 6', place) ?? [];
    const at = (x: number, y: number) => point(-3 * y + 100, 2 * x + 50);
    expect(corners(run)).toEqual([at(10, 20), at(40, 20), at(40, 60), at(0, 0), at(10, 0), at(5, 6)]);
    expect(run.at(-1)?.slice(1, 3)).toEqual([at(1, 2), at(3, 4)]);
    expect(run.at(-2)?.[1]).toEqual(near(at(10 / 3, 10 / 3)));
    const [closed = []] = runs('M10 20 H40 V60 Z', place) ?? [];
    expect(corners(closed).at(-1)).toEqual(at(10, 20));
  });

  it('are refused where they are none, or lead nowhere', () => {
    for (const data of [
      '',
      'L10 10',
      'M10 ten',
      'M0 0 X5 5',
      'M0 0 L10',
      'M0 0 L1e999 0',
      '10 10',
      'M0 0 C1 2 3 4 5',
      'M0 0 // 5 5',
    ])
      expect(runs(data), data).toBeUndefined();
    expect(runs('M0 0 L9 9', { ...AS_IT_IS, a: Number.NaN })).toBeUndefined();
  });
});
