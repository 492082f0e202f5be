import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  distance,
  type FourSeen,
  homographyAfter,
  homographyInverse,
  homographyPoint,
  homographyThrough,
  type Point,
  point,
} from '../../src/plane';
import { between, chance } from '../properties/seed';
import { cameraOver, stands } from './camera';

const rectangle = (width: number, height: number): readonly Point[] => [
  point(0, 0),
  point(width, 0),
  point(width, height),
  point(0, height),
];
const seen = (from: readonly Point[], to: readonly Point[]) =>
  from.map((p, i) => ({ from: p, to: to[i] })) as unknown as FourSeen;
/** A front and a back block side by side, with the sheet's rectangle among them. */
const SCENE = rectangle(900, 1150);
const MIDDLE = point(450, 575);

describe('a flattened picture', () => {
  test('has every point of the floor where it lies, whatever the camera', () => {
    fc.assert(
      fc.property(stands, between(0, 900), between(0, 1150), (stand, x, y) => {
        const camera = cameraOver(SCENE, MIDDLE, stand);
        const corners = rectangle(180, 240).map((p) => add(p, point(300, 400)));
        const flat = homographyThrough(seen(corners.map(camera), corners));
        const found = flat && homographyPoint(flat, camera(point(x, y)));
        expect(found && distance(found, point(x, y))).toBeLessThan(1e-6);
        const back = flat && homographyPoint(homographyInverse(flat), point(x, y));
        expect(back && distance(back, camera(point(x, y)))).toBeLessThan(1e-6);
        const round = flat && homographyPoint(homographyAfter(homographyInverse(flat), flat), point(x, y));
        expect(round && distance(round, point(x, y))).toBeLessThan(1e-6);
      }),
      chance('flattened pictures', 200),
    );
  });

  test('keeps the cross-ratio of four points on a line, and lines straight', () => {
    // Projective geometry's own measure (Hartley & Zisserman 2004, 2.5; from memory): no camera and no formula of ours.
    const h = homographyThrough(seen(rectangle(1, 1), [point(12, 7), point(840, 93), point(611, 702), point(95, 540)]));
    const on = [0, 0.2, 0.55, 1.3].map((t) => h && homographyPoint(h, point(0.1 + t * 0.4, 0.9 - t * 0.5)));
    const [a, b, c, d] = on as [Point, Point, Point, Point];
    const ratio = (distance(a, c) * distance(b, d)) / (distance(b, c) * distance(a, d));
    expect(ratio).toBeCloseTo((0.55 * 1.1) / (0.35 * 1.3), 9);
    const turn = (b.x - a.x) * (d.y - a.y) - (b.y - a.y) * (d.x - a.x);
    expect(Math.abs(turn) / distance(a, d)).toBeLessThan(1e-8);
  });

  test('of the unit square seen with its far side half as long is the one that can be reckoned by hand', () => {
    // (x, y) ↦ ((x + y/2)/(1 + y), y/(1 + y)) sends the square's corners to (0,0), (1,0), (¾,½), (¼,½).
    const h = homographyThrough(seen(rectangle(1, 1), [point(0, 0), point(1, 0), point(0.75, 0.5), point(0.25, 0.5)]));
    const middle = h && homographyPoint(h, point(0.5, 0.5));
    expect(middle?.x).toBeCloseTo(0.5, 12);
    expect(middle?.y).toBeCloseTo(1 / 3, 12);
    expect(h && homographyPoint(h, point(0.5, -1))).toBeUndefined();
    expect(h && homographyPoint(h, point(0.5, -2))).toBeUndefined();
  });

  test('is refused where the corners cross over or three lie on a line', () => {
    const square = rectangle(100, 100);
    const [a, b, c, d] = square as [Point, Point, Point, Point];
    expect(homographyThrough(seen([a, c, b, d], square))).toBeUndefined();
    expect(homographyThrough(seen([a, b, point(200, 0.01), d], square))).toBeUndefined();
    expect(homographyThrough(seen([a, a, c, d], square))).toBeUndefined();
    expect(homographyThrough(seen([d, c, b, a], square))).toBeDefined();
  });
});
