import { describe, expect, test } from 'vitest';
import { outlineCover } from '../../src/cloth/cover';
import { type Point, pathFoot } from '../../src/plane';

const round = (count: number, radius: number): readonly Point[] =>
  Array.from({ length: count }, (_, i) => ({
    x: radius * Math.cos((2 * Math.PI * i) / count),
    y: radius * Math.sin((2 * Math.PI * i) / count),
  }));

/** Whether a point lies in a convex clockwise (y down) polygon, or within rounding of it. */
const inside = (polygon: readonly Point[], p: Point): boolean =>
  polygon.every((b, i) => {
    const a = polygon[(i + polygon.length - 1) % polygon.length] as Point;
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > -1e-6;
  });

const farthest = (polygon: readonly Point[], outline: readonly Point[]): number =>
  Math.max(...polygon.map((p) => pathFoot([...outline, outline[0] as Point], p).distance));

describe('the cover of an outline', () => {
  const disc = round(240, 150);

  test('holds a disc, leaves it by no more than allowed, and has few corners', () => {
    const cover = outlineCover(disc, 1);
    expect(disc.every((p) => inside(cover, p))).toBe(true);
    expect(farthest(cover, disc)).toBeLessThanOrEqual(1);
    expect(cover.length).toBeLessThan(60);
  });

  test('a tighter allowance keeps more corners', () => {
    expect(outlineCover(disc, 0.1).length).toBeGreaterThan(outlineCover(disc, 2).length);
  });

  test('fills a hollow with chords', () => {
    // A square whose upper side is hollow by 30.
    const hollow = Array.from({ length: 61 }, (_, i) => ({ x: 5 * i, y: 30 * Math.sin((Math.PI * i) / 60) }));
    const outline = [...hollow, { x: 300, y: 300 }, { x: 0, y: 300 }];
    const cover = outlineCover(outline, 1);
    expect(cover.length).toBeLessThan(15);
    expect(farthest(cover, outline)).toBeLessThanOrEqual(1);
    // Every corner of the hollow lies on or below the cover's upper line.
    for (const p of hollow) {
      const i = cover.findIndex((q, k) => {
        const r = cover[(k + 1) % cover.length] as Point;
        return q.x <= p.x && r.x >= p.x && q.y < 200 && r.y < 200;
      });
      const [q, r] = [cover[i] as Point, cover[(i + 1) % cover.length] as Point];
      expect(q.y + ((r.y - q.y) * (p.x - q.x)) / (r.x - q.x || 1)).toBeLessThanOrEqual(p.y + 1e-6);
    }
  });

  test('keeps a rectangle as it is', () => {
    const rectangle = [
      { x: 0, y: 0 },
      { x: 90, y: 0 },
      { x: 90, y: 40 },
      { x: 0, y: 40 },
    ];
    expect(outlineCover(rectangle, 5)).toEqual(rectangle);
  });
});
