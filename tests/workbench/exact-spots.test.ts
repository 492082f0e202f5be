import { expect, test } from 'vitest';
import { boxGrown, boxHolds, flattenCurves, mapTuple, pointsBounds, pointsHold } from '../../src/plane';
import { BLOCK_EDGES, tracedEdge } from '../../src/trace';
import { exactSpots } from '../../src/workbench/photo/exact-spots';
import { tracedBlocks } from '../../src/workbench/photo/flat';
import type { PhotoWork } from '../../src/workbench/photo/work';
import { markedWork } from './photo-steps';

const work = markedWork();

test.each(['front', 'back'] as const)(
  'how far off places may be is told all over the %s, where its tracing has them',
  (part) => {
    const traced = tracedBlocks(work)[part];
    const outline = BLOCK_EDGES.flatMap((name) => flattenCurves(tracedEdge(traced, name), 0.1));
    const found = exactSpots(work, part, traced);
    if (!found) throw new Error('nothing is told');
    expect(found.spots.length).toBeGreaterThan(40);
    const places = found.spots.map(({ at }) => at);
    // The grid's first places lie on the rim itself.
    const inner = places.filter((p) => boxHolds(boxGrown(pointsBounds(outline), -2), p));
    expect(inner.length).toBeGreaterThan(40);
    for (const p of inner) expect(pointsHold(outline, p)).toBe(true);
    for (const { off } of found.spots) expect(off).toBeGreaterThan(0);
    expect(Object.keys(found.edges)).toEqual(BLOCK_EDGES);
  },
);

test('places far from the marks are told to be farther off', () => {
  const traced = tracedBlocks(work).back;
  const worst = (one: PhotoWork) => Math.max(...Object.values(exactSpots(one, 'back', traced)?.edges ?? {}));
  const [shot] = work.shots;
  if (!shot) throw new Error('no photograph');
  // The same floor, held by a corner of its rectangle a third as large.
  const near = mapTuple(shot.corners, ({ x, y }) => {
    const [{ x: left, y: top }] = shot.corners;
    return { x: left + (x - left) / 3, y: top + (y - top) / 3 };
  });
  const small = { ...work, shots: [{ ...shot, corners: near, across: shot.across / 3, along: shot.along / 3 }] };
  expect(worst(small)).toBeGreaterThan(2 * worst(work));
});
