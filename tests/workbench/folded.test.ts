import { describe, expect, it } from 'vitest';
import { pathThrough } from '../../src/plane';
import { draft, exampleProject } from '../../src/project';
import { foldedTurnings } from '../../src/workbench/table/folded';

const result = draft(exampleProject);
if (!result.ok) throw new Error('the example can be drafted');
const [leg] = result.value.pieces;
if (!leg) throw new Error('the example has a leg');

describe('turnings folded over', () => {
  it('are the waist casing and the hem', () => {
    expect(foldedTurnings(leg).map((turning) => turning.name)).toEqual(['waist', 'hem']);
  });

  it('come to lie on the other side of their fold, as deep as they lay flat', () => {
    const fold = leg.folds.find((edge) => edge.name === 'waist fold')?.curves[0]?.[0].y ?? 0;
    const [waist] = foldedTurnings(leg);
    expect(Math.min(...(waist?.flat ?? []).map((p) => p.y))).toBeLessThan(fold);
    expect(Math.max(...(waist?.area ?? []).map((p) => p.y))).toBeGreaterThan(fold);
  });

  it('keep their lengths', () => {
    const around = (points: readonly { x: number; y: number }[]) =>
      points.reduce((sum, p, i) => sum + Math.hypot(p.x - (points[i - 1] ?? p).x, p.y - (points[i - 1] ?? p).y), 0);
    const [waist] = foldedTurnings(leg);
    expect(around(waist?.area ?? [])).toBeCloseTo(around(waist?.flat ?? []), 6);
  });

  it('are none where a piece has no fold', () => {
    expect(foldedTurnings({ ...leg, folds: [] })).toEqual([]);
  });

  it('mirror exactly in a slanting straight fold', () => {
    const fold = { name: 'waist fold', curves: pathThrough({ x: 0, y: 0 }, { x: 100, y: 100 }) };
    const edge = (name: string, ...points: { x: number; y: number }[]) => ({
      name,
      allowance: 0,
      curves: pathThrough(...points),
    });
    const cutLine = [
      edge('centreBackTurning', { x: 0, y: 0 }, { x: 20, y: 0 }),
      edge('waist', { x: 20, y: 0 }, { x: 100, y: 80 }),
      edge('centreFrontTurning', { x: 100, y: 80 }, { x: 100, y: 100 }),
      edge('crotchFront', { x: 100, y: 100 }, { x: 0, y: 200 }),
      edge('crotchBack', { x: 0, y: 200 }, { x: 0, y: 0 }),
    ];
    const [turning] = foldedTurnings({ ...leg, cutLine, folds: [fold] });
    const end = turning?.rawEdge[0];
    expect(end?.x).toBeCloseTo(0, 9);
    expect(end?.y).toBeCloseTo(20, 9);
  });
});
