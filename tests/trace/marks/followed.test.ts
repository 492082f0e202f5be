import { describe, expect, test } from 'vitest';
import { distance, type Point, pathLength, point } from '../../../src/plane';
import { type BlockMarks, edgeMarks, edgeThroughMarks, isFollowed, marksMapped, wasFollowed } from '../../../src/trace';

/** A crotch curve as a quarter of a circle. */
const RADIUS = 120;
const [start, end] = [point(0, 0), point(RADIUS, RADIUS)];
const quarter = Array.from({ length: 41 }, (_, i): Point => {
  const angle = (i / 40) * (Math.PI / 2);
  return point(RADIUS * (1 - Math.cos(angle)), RADIUS * Math.sin(angle));
});
const bare: BlockMarks = { landmarks: { crotchTop: start, crotchPoint: end }, points: {} };
const followed: BlockMarks = { ...bare, followed: { crotch: { through: [start, end], points: quarter } } };
const length = (marks: BlockMarks) => pathLength(edgeThroughMarks(marks, 'crotch') ?? []);
const ARC = (RADIUS * Math.PI) / 2;

describe('an edge that was followed', () => {
  test('runs along its line, wherever its marks are taken together', () => {
    expect(Math.abs(length(followed) - ARC)).toBeLessThan(0.5);
    const turned = marksMapped(followed, ({ x, y }) => point(2 * y + 7, -2 * x));
    expect(isFollowed(turned, 'crotch')).toBe(true);
    expect(Math.abs(length(turned) - 2 * ARC)).toBeLessThan(1);
  });

  test('goes through its marks alone as soon as one lies elsewhere, is added or becomes a corner', () => {
    const straight = distance(start, end);
    const moved = { ...followed, landmarks: { ...followed.landmarks, crotchPoint: point(RADIUS, RADIUS + 1) } };
    expect(length(moved)).toBeCloseTo(distance(start, point(RADIUS, RADIUS + 1)), 6);
    const added = { ...followed, points: { crotch: [point(60, 60)] } };
    expect(isFollowed(added, 'crotch')).toBe(false);
    expect(length(added)).toBeCloseTo(straight, 6);
    const cornered = { through: [start, { ...point(60, 60), corner: true }, end], points: quarter };
    expect(wasFollowed(cornered, edgeMarks(added, 'crotch') ?? [])).toBe(false);
  });

  test('is straight where no line was to be seen, and that is known', () => {
    const none = { ...bare, followed: { crotch: { through: [start, end], points: [] } } };
    expect(isFollowed(none, 'crotch')).toBe(false);
    expect(wasFollowed(none.followed.crotch, edgeMarks(none, 'crotch') ?? [])).toBe(true);
    expect(length(none)).toBeCloseTo(distance(start, end), 6);
  });
});
