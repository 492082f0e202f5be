import { describe, expect, test } from 'vitest';
import { distance, type Point, point, turned } from '../../../src/plane';
import { draft, exampleProject } from '../../../src/project';
import { type BlockMarks, LANDMARKS, likelyPlace, marksMapped } from '../../../src/trace';
import { markedBlock } from './marked-block';

const drafted = draft(exampleProject);
if (!drafted.ok) throw new Error('refused');
const { blocks } = drafted.value;

/** How blocks may lie on a floor, and how large they may be. */
const LYING = {
  'as drafted': (p: Point) => p,
  turned: (p: Point) => turned(p, point(100, 50), 2.2),
  small: (p: Point) => point(0.55 * p.x, 0.55 * p.y),
  large: (p: Point) => point(1.3 * p.x, 1.3 * p.y),
  short: ({ x, y }: Point) => point(x, y > 350 ? 350 + (y - 350) / 2 : y),
};
const upTo = ({ landmarks }: BlockMarks, count: number): BlockMarks => ({
  landmarks: Object.fromEntries(LANDMARKS.slice(0, count).map((name) => [name, landmarks[name]])),
  points: {},
});

describe.each(['front', 'back'] as const)('the next place of a %s', (part) => {
  test.each(Object.entries(LYING))('is where it is looked for, %s', (_, lie) => {
    const marks = marksMapped(markedBlock(blocks[part]), lie);
    for (const [i, name] of LANDMARKS.entries()) {
      const likely = likelyPlace(part, upTo(marks, i), name);
      if (i === 0) expect(likely).toBeUndefined();
      else expect(likely && distance(likely.at, marks.landmarks[name] as Point), name).toBeLessThan(likely?.reach ?? 0);
    }
  });

  test('is found on a block that lies face down, once three marks say so', () => {
    const marks = marksMapped(markedBlock(blocks[part]), ({ x, y }) => point(-x, y));
    for (const [i, name] of LANDMARKS.entries()) {
      const likely = i > 2 ? likelyPlace(part, upTo(marks, i), name) : undefined;
      if (likely) expect(distance(likely.at, marks.landmarks[name] as Point), name).toBeLessThan(likely.reach);
    }
  });

  test('is looked for closer than the whole block', () => {
    const marks = markedBlock(blocks[part]);
    for (const [i, name] of LANDMARKS.entries())
      if (i > 1) expect(likelyPlace(part, upTo(marks, i), name)?.reach, name).toBeLessThan(300);
  });
});
