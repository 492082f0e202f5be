import { describe, expect, it } from 'vitest';
import { type Curve, distance, outlineArea, outlineCrossings, type Point, point } from '../../src/plane';
import { pathMeetings } from '../../src/plane/meetings';
import { engineArea, engineCrossings, engineSelfCrossings } from './crossings-engine';

// Reference: the open vector library paper (its curve intersections by fat lines and its area). The program uses it to
// read path data only, never to find a crossing.

/** A small generator with a seed (Park and Miller's minimal standard), so that the cases are the same everywhere. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}

/** A closed run of six random curves in a square of half a metre, every third one straight. */
function run(next: () => number): readonly Curve[] {
  const at = () => point(500 * next(), 500 * next());
  const knots = Array.from({ length: 6 }, at);
  return knots.map((a, i): Curve => {
    const d = knots[(i + 1) % knots.length] as Point;
    if (i % 3 === 2)
      return [
        a,
        point(a.x + (d.x - a.x) / 3, a.y + (d.y - a.y) / 3),
        point(d.x + (a.x - d.x) / 3, d.y + (a.y - d.y) / 3),
        d,
      ];
    return [a, at(), at(), d];
  });
}

const far = (p: Point, others: readonly Point[], reach: number) => others.every((q) => distance(p, q) > reach);
const RUNS = 120;

describe('crossings by the reference library', () => {
  it('of two runs are ours, none more and none less', () => {
    const next = numbers(2);
    let compared = 0;
    for (let i = 0; i < RUNS; i += 1) {
      const [first, second] = [run(next), run(next)];
      const ours = pathMeetings(first, second).map(({ at }) => at);
      const theirs = engineCrossings(first, second);
      expect(
        ours.filter((p) => far(p, theirs, 1e-3)),
        `run ${i}`,
      ).toEqual([]);
      expect(
        theirs.filter((p) => far(p, ours, 1e-3)),
        `run ${i}`,
      ).toEqual([]);
      compared += theirs.length;
    }
    expect(compared).toBeGreaterThan(1000);
  });

  it('of a run with itself are ours, away from the ends of its curves', () => {
    const next = numbers(3);
    let compared = 0;
    for (let i = 0; i < RUNS; i += 1) {
      const curves = run(next);
      const ends = curves.map(([a]) => a);
      const ours = outlineCrossings(curves);
      const theirs = engineSelfCrossings(curves).filter((p) => far(p, ends, 0.05));
      expect(
        ours.filter((p) => far(p, theirs, 1e-3) && far(p, ends, 0.05)),
        `run ${i}`,
      ).toEqual([]);
      expect(
        theirs.filter((p) => far(p, ours, 0.03)),
        `run ${i}`,
      ).toEqual([]);
      compared += theirs.length;
    }
    expect(compared).toBeGreaterThan(500);
  });

  it('and areas are ours', () => {
    const next = numbers(5);
    for (let i = 0; i < RUNS; i += 1) {
      const curves = run(next);
      expect(outlineArea(curves)).toBeCloseTo(engineArea(curves), 5);
    }
  });
});
