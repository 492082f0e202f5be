import { describe, expect, it } from 'vitest';
import {
  type Curve,
  curveCurvature,
  curveMap,
  curvePoint,
  distance,
  flattenCurves,
  pathFoot,
  point,
} from '../../src/plane';
import { curveParallel, parallelPoint } from '../../src/plane/parallel';

/** A hollow that is tighter than 25 mm in its middle, and wider at both ends. */
const tight: Curve = [point(100, 50), point(100, 80), point(105, 90), point(160, 90)];
const AWAY = 25;

describe('the parallel of one curve', () => {
  it('leaves out just the stretch whose radius is smaller than the distance', () => {
    const runs = curveParallel(tight, AWAY);
    expect(runs.map(({ from, to }) => [from, to])).toEqual([
      [0, expect.any(Number)],
      [expect.any(Number), 1],
    ]);
    for (const t of [runs[0]?.to ?? 0, runs[1]?.from ?? 0]) expect(-1 / curveCurvature(tight, t)).toBeCloseTo(AWAY, 4);
    for (const { from, to, curves } of runs) {
      expect(distance(curves[0]?.[0] ?? point(0, 0), parallelPoint(tight, AWAY, from))).toBeLessThan(1e-9);
      expect(distance(curves.at(-1)?.[3] ?? point(0, 0), parallelPoint(tight, AWAY, to))).toBeLessThan(1e-9);
      const line = flattenCurves(curves, 1e-4);
      for (let i = 0; i <= 50; i += 1) {
        const exact = parallelPoint(tight, AWAY, from + ((to - from) * i) / 50);
        expect(pathFoot(line, exact).distance).toBeLessThan(0.011);
      }
    }
  });

  it('has none where no place of the curve has room, one where all have', () => {
    const tiny = curveMap(tight, ({ x, y }) => point(x / 50, y / 50));
    expect(curveParallel(tiny, 100).every(({ from, to }) => to - from < 1)).toBe(true);
    expect(curveParallel(tight, 2).map(({ from, to }) => [from, to])).toEqual([[0, 1]]);
    expect(curveParallel(tight, -60).map(({ from, to }) => [from, to])).toEqual([[0, 1]]);
    expect(curveParallel(tight, 0)).toEqual([{ from: 0, to: 1, curves: [tight] }]);
  });

  it('begins late where the start is the tight place, and ends early where the end is', () => {
    const start: Curve = [point(0, 0), point(0, 4), point(40, 30), point(120, 40)];
    const back = [...start].reverse() as unknown as Curve;
    const away = Math.sign(curveCurvature(start, 0.5)) > 0 ? -30 : 30;
    const [late, early] = [curveParallel(start, away), curveParallel(back, -away)];
    for (const runs of [late, early])
      for (const { from, to } of runs)
        for (const t of [from, to].filter((one) => one > 0 && one < 1))
          expect(Math.abs(1 / curveCurvature(runs === late ? start : back, t))).toBeCloseTo(30, 3);
  });
});

describe('points on a curve that lies anywhere', () => {
  it('are as many wherever it lies', () => {
    const bend: Curve = [point(0, 0), point(4, 70), point(80, 75), point(160, 80)];
    for (const [x, y] of [
      [300, -200],
      [-50, 900],
    ] as const) {
      const moved = curveMap(bend, (p) => point(p.x + x, p.y + y));
      expect(flattenCurves([moved], 0.02)).toHaveLength(flattenCurves([bend], 0.02).length);
      expect(curvePoint(moved, 0.3).y - curvePoint(bend, 0.3).y).toBeCloseTo(y, 9);
    }
  });
});
