import { expect, test } from 'vitest';
import { SELVEDGE } from '../../src/check';
import { type ClothChoices, clothPlan } from '../../src/cloth';
import type { Piece } from '../../src/edges';
import { type Point, pointsBounds } from '../../src/plane';
import { draft } from '../../src/project';
import { benchProjects } from '../bench/bodies';
import { cutPoints, laid } from './cloth-reference';
import { every } from './every';

// The lay of two legs beside the best of a slow search that knows nothing of it: every place of the second leg across, a
// step apart, in every way it may lie; at each the shortest free place along, from sections through the true cut lines.

/** Sections this far apart see at most a little less of the pieces than there is, so the search can only be too good. */
const SECTION = 4;
/** Where that promises more than is true, between two slants that meet, the search is made again this finely. */
const FINE = 1;
const PROMISED = 1.02;

/** What of a polygon lies on a line along the cloth: from … to, … */
function section(points: readonly Point[], x: number): readonly (readonly [number, number])[] {
  const ys = points
    .flatMap((b, i) => {
      const a = points[(i + points.length - 1) % points.length] as Point;
      return a.x < x === b.x < x ? [] : [a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x)];
    })
    .sort((one, other) => one - other);
  return Array.from({ length: ys.length / 2 }, (_, i) => [ys[2 * i] as number, ys[2 * i + 1] as number] as const);
}

/** A polygon with its corner at (0, 0), and its sections. */
function sectioned(points: readonly Point[], step: number) {
  const { left, top, right, bottom } = pointsBounds(points);
  const moved = points.map((p) => ({ x: p.x - left, y: p.y - top }));
  const count = Math.floor((right - left) / step);
  const sections = Array.from({ length: count }, (_, i) => section(moved, (i + 0.5) * step));
  return { width: right - left, height: bottom - top, sections };
}

type Sectioned = ReturnType<typeof sectioned>;

/** The least step along, either way, at which b lies clear of a when it lies `steps` sections to the right. */
function leastAlong(a: Sectioned, b: Sectioned, steps: number): number {
  const forbidden: (readonly [number, number])[] = [];
  a.sections.forEach((own, i) => {
    for (const [top, bottom] of own)
      for (const [otherTop, otherBottom] of b.sections[i - steps] ?? [])
        forbidden.push([top - otherBottom, bottom - otherTop]);
  });
  forbidden.sort((one, other) => one[0] - other[0]);
  const ends = [0, ...forbidden.flat()].sort((one, other) => Math.abs(one) - Math.abs(other));
  const free = ends.find((y) => !forbidden.some(([from, to]) => from < y && y < to));
  return Math.abs(free ?? Number.NaN);
}

function slowBest(leg: Piece, room: number, oneWay: boolean, step = SECTION): number {
  const points = cutPoints(leg);
  const as = (mirrored: boolean, turn: number) =>
    sectioned(
      laid(points, {
        piece: { kind: 'leg', side: undefined },
        copies: [1],
        layer: 'single',
        mirrored,
        turn,
        at: { x: 0, y: 0 },
      }),
      step,
    );
  const a = as(false, 0);
  let best = Infinity;
  for (const b of [as(true, 0), ...(oneWay ? [] : [as(true, 180)])]) {
    const [low, high] = [Math.ceil((a.width - room) / step), Math.floor((room - b.width) / step)];
    for (let steps = low; steps <= high; steps += 1) best = Math.min(best, a.height + leastAlong(a, b, steps));
  }
  return best;
}

test.each([1120, 1400, 1500, 1650])(
  'two legs on cloth of %d mm are within 2 % of the best that a slow search finds',
  (width) => {
    const off: number[] = [];
    for (const [i, project] of benchProjects(every ? 150 : 12).entries()) {
      const result = draft({ ...project, paper: { ...project.paper, sheet: 'A0' } });
      if (!result.ok) throw new Error('a bench body was refused');
      const leg = result.value.pieces[0] as Piece;
      const oneWay = i % 3 === 0;
      const choices: ClothChoices = { ...project.cloth, width, layout: 'single', oneWay };
      const { answer } = clothPlan([leg], choices);
      const room = width * (1 - choices.shrinkWidth) - 2 * SELVEDGE;
      const best = slowBest(leg, room, oneWay);
      if (!answer.fits) {
        expect(best).toBe(Infinity);
        continue;
      }
      const ratio = answer.lay.lengthNeeded / best;
      off.push(ratio < PROMISED ? ratio : answer.lay.lengthNeeded / slowBest(leg, room, oneWay, FINE));
    }
    console.log(
      `${width}: ${off.length} pairs, ours ÷ slow search ${Math.min(...off).toFixed(4)} … ${Math.max(...off).toFixed(4)}`,
    );
    expect(off.length).toBeGreaterThan(3);
    expect(Math.max(...off)).toBeLessThan(PROMISED);
    // And not better than what can be: the slow search misses at most what lies between two of its sections.
    expect(Math.min(...off)).toBeGreaterThan(1 / PROMISED);
  },
  every ? 600_000 : undefined,
);
