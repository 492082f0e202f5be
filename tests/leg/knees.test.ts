import { expect, it } from 'vitest';
import { inseamAtKnee } from '../../src/leg/knees';
import { type Curve, pathEnd, pathStart, straight } from '../../src/plane';

const run = (...levels: readonly number[]): readonly Curve[] =>
  levels.slice(1).map((y, i) => straight({ x: 0, y: levels[i] ?? 0 }, { x: 0, y }));
const joints = (curves: readonly Curve[]) => curves.slice(0, -1).map((curve) => [curve[3].x, curve[3].y]);

it('an inseam is let out at the joint that lies nearest to the knee', () => {
  expect(joints(inseamAtKnee(run(0, 470, 510, 700), 500, 8))).toEqual([
    [0, 470],
    [8, 510],
  ]);
  expect(joints(inseamAtKnee(run(0, 490, 530, 700), 500, 8))).toEqual([
    [8, 490],
    [0, 530],
  ]);
});

it('an inseam without a joint near the knee is parted there, and its ends stay', () => {
  const out = inseamAtKnee(run(0, 300, 700), 500, -6);
  expect(joints(out)).toEqual([
    [0, 300],
    [-6, 500],
  ]);
  expect([pathStart(out), pathEnd(out)]).toEqual([
    { x: 0, y: 0 },
    { x: 0, y: 700 },
  ]);
});

it('an inseam that ends above the knee stays as it is', () => {
  const short = run(0, 300);
  expect(inseamAtKnee(short, 500, 8)).toBe(short);
  expect(inseamAtKnee(short, 200, 0)).toBe(short);
});
