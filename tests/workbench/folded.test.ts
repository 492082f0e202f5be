import { describe, expect, it } from 'vitest';
import type { EdgeName } from '../../src/edges';
import { type Point, pathEnd, pathLength, pathStart, pathThrough } from '../../src/plane';
import { draft, exampleProject, hemOf } from '../../src/project';
import { foldedTurnings } from '../../src/workbench/table/folded';

const result = draft(exampleProject);
if (!result.ok) throw new Error('the example can be drafted');
const [leg] = result.value.pieces;
if (!leg) throw new Error('the example has a leg');

const around = (points: readonly Point[]) =>
  points.slice(1).reduce((sum, p, i) => sum + Math.hypot(p.x - (points[i]?.x ?? 0), p.y - (points[i]?.y ?? 0)), 0);

/** How deep the area reaches from the straight line of a fold, at most. */
function depthFrom(name: string, area: readonly Point[]): number {
  const curves = leg?.folds.find((fold) => fold.name === name)?.curves ?? [];
  const [a, b] = [pathStart(curves), pathEnd(curves)];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return Math.max(...area.map((p) => Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / length));
}

describe('turnings folded over', () => {
  it('are the waist casing and the hem, each with the cut edges that go over', () => {
    expect(foldedTurnings(leg).map((turning) => [turning.name, turning.edges.length])).toEqual([
      ['waist', 3],
      ['hem', 3],
    ]);
  });

  it('keep their lengths', () => {
    const [waist] = foldedTurnings(leg);
    const flat = leg.cutLine.filter((edge) => waist?.edges.includes(edge.name));
    const length = flat.reduce((sum, edge) => sum + pathLength(edge.curves), 0);
    expect(around(waist?.area ?? [])).toBeCloseTo(length, 3);
  });

  it('reach as deep as the casing and its catch', () => {
    const { casingHeight, catch: caught } = result.value.measures;
    const [waist] = foldedTurnings(leg);
    expect(depthFrom('waistFold', waist?.area ?? [])).toBeCloseTo(casingHeight / 2 + caught, 3);
  });

  it('end at the hem depth where the raw edge is tucked under, and at the raw edge where it is not', () => {
    const { depth, turnUnder } = hemOf(exampleProject);
    const [, tucked] = foldedTurnings(leg);
    expect(depthFrom('hemFold', tucked?.area ?? [])).toBeCloseTo(depth, 3);
    const [, whole] = foldedTurnings({ ...leg, folds: leg.folds.filter((fold) => fold.name !== 'turnUnderFold') });
    expect(depthFrom('hemFold', whole?.area ?? [])).toBeCloseTo(depth + turnUnder, 3);
  });

  it('are none where a piece has no fold', () => {
    expect(foldedTurnings({ ...leg, folds: [] })).toEqual([]);
  });

  it('mirror exactly in a slanting straight fold', () => {
    const fold = { name: 'waistFold' as const, curves: pathThrough({ x: 0, y: 0 }, { x: 100, y: 100 }) };
    const edge = (name: EdgeName, ...points: Point[]) => ({ name, allowance: 0, curves: pathThrough(...points) });
    const cutLine = [
      edge('centreBackTurning', { x: 0, y: 0 }, { x: 20, y: 0 }),
      edge('waist', { x: 20, y: 0 }, { x: 100, y: 80 }),
      edge('centreFrontTurning', { x: 100, y: 80 }, { x: 100, y: 100 }),
      edge('crotchFront', { x: 100, y: 100 }, { x: 0, y: 200 }),
      edge('crotchBack', { x: 0, y: 200 }, { x: 0, y: 0 }),
    ];
    const [turning] = foldedTurnings({ ...leg, cutLine, folds: [fold] });
    const corner = turning?.area[1];
    expect(corner?.x).toBeCloseTo(0, 9);
    expect(corner?.y).toBeCloseTo(20, 9);
  });
});
