import { describe, expect, it } from 'vitest';
import {
  type Curve,
  curveCurvature,
  curveMap,
  curvePoint,
  curveTangent,
  flattenCurves,
  leftOf,
  moved,
  outlineCrossings,
  outlineCurves,
  parallelOutline,
  pathEnd,
  pathFoot,
  pathReverse,
  pathStart,
  pathThrough,
  point,
} from '../../src/plane';

/** The exact parallel by its definition, densely: the oracle for every test here. */
const exactParallel = (curve: Curve, away: number) =>
  Array.from({ length: 400 }, (_, i) => i / 399)
    .filter((t) => 1 + curveCurvature(curve, t) * away > 0)
    .map((t) => moved(curvePoint(curve, t), leftOf(curveTangent(curve, t)), away));

const bend: Curve = [point(100, 0), point(100, 55), point(140, 100), point(220, 120)];

/** A clockwise outline: top, a hollow right side, bottom, left side. */
const outline = [
  { name: 'top', curves: pathThrough(point(0, 0), point(100, 0)) },
  { name: 'hollow', curves: [bend] },
  { name: 'right', curves: pathThrough(point(220, 120), point(200, 300)) },
  { name: 'bottom', curves: pathThrough(point(200, 300), point(0, 300)) },
  { name: 'left', curves: pathThrough(point(0, 300), point(0, 0)) },
] as const;

describe('a parallel outline', () => {
  it.each([3, 15, 15.875, 25, 40])('follows the exact parallel at %f mm within 0.05 mm, with few curves', (away) => {
    const parallel = parallelOutline(outline, () => away);
    const run = parallel.find((edge) => edge.name === 'hollow')?.curves ?? [];
    const line = flattenCurves(run, 0.001);
    const misses = exactParallel(bend, away).map((p) => pathFoot(line, p));
    const inside = misses.filter((m) => !m.atEnd);
    expect(inside.length).toBeGreaterThan(100);
    expect(Math.max(...inside.map((m) => m.distance))).toBeLessThanOrEqual(0.05);
    expect(run.length).toBeLessThanOrEqual(8);
  });

  it('is closed, simple, and every edge keeps its own distance', () => {
    const own: Record<string, number> = { top: 0, hollow: 15, right: 10, bottom: 25, left: 40 };
    const parallel = parallelOutline(outline, (name) => own[name] ?? 0);
    expect(outlineCrossings(outlineCurves(parallel))).toEqual([]);
    parallel.forEach((edge, i) => {
      const next = parallel[(i + 1) % parallel.length] ?? edge;
      expect(
        Math.hypot(
          pathEnd(edge.curves).x - pathStart(next.curves).x,
          pathEnd(edge.curves).y - pathStart(next.curves).y,
        ),
      ).toBeLessThan(1e-6);
    });
    const bottom = parallel.find((edge) => edge.name === 'bottom');
    expect(bottom && pathStart(bottom.curves).y).toBeCloseTo(325, 9);
  });

  it('extends both edges at an outer corner and rounds none', () => {
    const square = [
      { name: 'top', curves: pathThrough(point(0, 0), point(100, 0)) },
      { name: 'right', curves: pathThrough(point(100, 0), point(100, 80)) },
      { name: 'bottom', curves: pathThrough(point(100, 80), point(0, 80)) },
      { name: 'left', curves: pathThrough(point(0, 80), point(0, 0)) },
    ] as const;
    const corners = parallelOutline(square, () => 10).map((edge) => pathStart(edge.curves));
    expect(corners).toEqual([
      { x: expect.closeTo(-10, 9), y: expect.closeTo(-10, 9) },
      { x: expect.closeTo(110, 9), y: expect.closeTo(-10, 9) },
      { x: expect.closeTo(110, 9), y: expect.closeTo(90, 9) },
      { x: expect.closeTo(-10, 9), y: expect.closeTo(90, 9) },
    ]);
  });

  it('leaves out the loop where the distance is larger than the radius of the hollow', () => {
    const tight: Curve = [point(100, 0), point(100, 30), point(105, 40), point(160, 40)];
    const hollow = [
      { name: 'top', curves: pathThrough(point(0, 0), point(100, 0)) },
      { name: 'hollow', curves: [tight] },
      { name: 'right', curves: pathThrough(point(160, 40), point(160, 200)) },
      { name: 'bottom', curves: pathThrough(point(160, 200), point(0, 200)) },
      { name: 'left', curves: pathThrough(point(0, 200), point(0, 0)) },
    ] as const;
    const parallel = parallelOutline(hollow, (name) => (name === 'top' ? 0 : 25));
    expect(outlineCrossings(outlineCurves(parallel))).toEqual([]);
    const net = flattenCurves([tight], 0.001);
    const cut = parallel.find((edge) => edge.name === 'hollow');
    const away = flattenCurves(cut?.curves ?? [], 0.05).map((p) => pathFoot(net, p));
    for (const foot of away.filter((f) => !f.atEnd)) expect(foot.distance).toBeGreaterThan(25 - 0.05);
  });

  /** A quarter circle of 5 mm, hollow; with 10 mm to keep, nothing of its parallel runs forwards. */
  const tinyHollow = (end: number) => {
    const h = 5 * 0.5523;
    const tiny: Curve = [point(100, 95), point(100, 95 + h), point(105 - h, 100), point(105, 100)];
    return [
      { name: 'top', curves: pathThrough(point(0, 0), point(100, 0)) },
      { name: 'centre', curves: pathThrough(point(100, 0), point(100, 95)) },
      { name: 'hollow', curves: [tiny, ...(end > 105 ? pathThrough(point(105, 100), point(end, 100)) : [])] },
      { name: 'inseam', curves: pathThrough(point(end, 100), point(end, 200)) },
      { name: 'bottom', curves: pathThrough(point(end, 200), point(0, 200)) },
      { name: 'left', curves: pathThrough(point(0, 200), point(0, 0)) },
    ] as const;
  };

  it.each([105, 120])(
    'cuts a hollow tighter than its distance where what is carried on at its corner (%i) crosses its neighbour',
    (end) => {
      const parallel = parallelOutline(tinyHollow(end), () => 10);
      expect(parallel.map((edge) => edge.name)).toEqual(tinyHollow(end).map((edge) => edge.name));
      expect(outlineCrossings(outlineCurves(parallel))).toEqual([]);
      const hollow = parallel[2]?.curves ?? [];
      expect(hollow).toHaveLength(1);
      expect(pathStart(hollow)).toEqual({ x: expect.closeTo(110, 6), y: expect.closeTo(90, 6) });
      expect(pathEnd(hollow)).toEqual({ x: expect.closeTo(end + 10, 6), y: expect.closeTo(90, 6) });
    },
  );

  it('ends a wide band straight across, without a spur, where the next edge lies within it', () => {
    // Carried on straight the inseam lies at 107, within the 110 of the centre, whose band ends at 95.
    const parallel = parallelOutline(tinyHollow(105), (name) => (name === 'inseam' ? 2 : 10));
    expect(outlineCrossings(outlineCurves(parallel))).toEqual([]);
    const corners = parallel.slice(1, 4).flatMap(({ curves }) => curves.map(([, , , d]) => d));
    expect(corners).toEqual([
      { x: expect.closeTo(110, 6), y: expect.closeTo(95, 6) },
      { x: expect.closeTo(107, 6), y: expect.closeTo(95, 6) },
      { x: expect.closeTo(107, 6), y: expect.closeTo(210, 6) },
    ]);
  });

  it('leaves no spur where a hollow as tight as its distance runs into an outer corner', () => {
    // The crotch of a small front: the centre's line once ran past the corner and back.
    const tight: Curve = [point(100, 100), point(100, 103.6), point(104.4, 108), point(108, 108)];
    const leg = [
      { name: 'top', curves: pathThrough(point(0, 0), point(100, 0)) },
      { name: 'centre', curves: pathThrough(point(100, 0), point(100, 100)) },
      { name: 'hollow', curves: [tight] },
      { name: 'inseam', curves: pathThrough(point(108, 108), point(88, 400)) },
      { name: 'bottom', curves: pathThrough(point(88, 400), point(0, 400)) },
      { name: 'left', curves: pathThrough(point(0, 400), point(0, 0)) },
    ] as const;
    const own: Record<string, number> = { centre: 10, hollow: 10, inseam: 3 };
    const parallel = parallelOutline(leg, (name) => own[name] ?? 0);
    expect(outlineCrossings(outlineCurves(parallel))).toEqual([]);
  });

  it('cuts off a last short curve that lies wholly beyond the next edge, and the end of what came before it', () => {
    // The side runs 2 mm past the place where the hem, carried on, meets its parallel; its last curve is 0.2 mm long.
    const outline = [
      { name: 'top', curves: pathThrough(point(0, 0), point(114, 0)) },
      { name: 'side', curves: pathThrough(point(114, 0), point(100, 100), point(99.972, 100.2)) },
      { name: 'hem', curves: pathThrough(point(99.972, 100.2), point(0, 100.2)) },
      { name: 'fold', curves: pathThrough(point(0, 100.2), point(0, 0)) },
    ] as const;
    const leaning = parallelOutline(outline, (name) => (name === 'side' ? 15 : 0));
    const lowest = Math.max(...outlineCurves(leaning).flatMap((curve) => curve.map((p) => p.y)));
    expect(lowest).toBeCloseTo(100.2, 6);
    // The mirrored outline: there the short curve is the first.
    const turned = parallelOutline(
      [...outline].reverse().map(({ name, curves }) => ({
        name,
        curves: pathReverse(curves).map((curve) => curveMap(curve, ({ x, y }) => point(-x, y))),
      })),
      (name) => (name === 'side' ? 15 : 0),
    );
    expect(Math.max(...outlineCurves(turned).flatMap((curve) => curve.map((p) => p.y)))).toBeCloseTo(100.2, 6);
  });

  it('cuts off a hollow that gets tighter than its distance at its end, where the next edge carried on crosses it', () => {
    // The inseam of a leg of four centimetres with an allowance as wide: its hollow ends at the hem, at a radius of 35 mm.
    const tight: Curve = [point(110, 0), point(104.6, 7.4), point(100.3, 16.4), point(99.6, 25.6)];
    const facing = [
      { name: 'upper', curves: pathThrough(point(0, 0), point(110, 0)) },
      { name: 'inseam', curves: [tight] },
      { name: 'hem', curves: pathThrough(point(99.6, 25.6), point(0, 25.6)) },
      { name: 'fold', curves: pathThrough(point(0, 25.6), point(0, 0)) },
    ] as const;
    const away = 40;
    expect(1 + curveCurvature(tight, 1) * away).toBeLessThan(0);
    const [, inseam, hem] = parallelOutline(facing, (name) => (name === 'inseam' ? away : 0));
    expect(hem?.curves).toHaveLength(1);
    expect(pathStart(hem?.curves ?? []).y).toBeCloseTo(25.6, 6);
    const net = flattenCurves([tight], 0.001);
    for (const p of flattenCurves(inseam?.curves ?? [], 0.05)) {
      expect(p.y).toBeLessThan(25.6 + 1e-6);
      expect(pathFoot(net, p).distance).toBeGreaterThan(away - 0.05);
    }
  });
});
