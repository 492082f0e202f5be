import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curveMap } from '../../src/plane';
import { exampleProject } from '../../src/project';
import { anyBody } from './bodies';
import { aMillimetreMovesLittle, type Moves, movesTold } from './continuity';
import { anyDesign, projectOf } from './designs';
import { netLeg } from './net';
import { farthestMove } from './outlines';
import { chance, enough, PATIENCE } from './seed';

test(
  'one millimetre more of any length moves no place of the net outline by more than 2.1 mm, of the rise 4 or 1.1',
  () => {
    const moves: Moves = new Map();
    fc.assert(
      fc.property(anyBody, anyDesign, fc.constantFrom(1 as const, -1 as const), (body, design, step) => {
        aMillimetreMovesLittle(projectOf(body, design), step, moves);
      }),
      chance('continuity', 45),
    );
    console.log(movesTold(moves));
    expect(moves.size).toBeGreaterThan(enough(10));
  },
  PATIENCE,
);

describe('the comparison itself', () => {
  const outline = netLeg(exampleProject)?.outline ?? [];

  test('sees a leg that moved by 6 mm, and one edge that moved alone', () => {
    const push = (p: { x: number; y: number }) => ({ x: p.x + 6, y: p.y });
    const moved = outline.map((edge) => ({ ...edge, curves: edge.curves.map((curve) => curveMap(curve, push)) }));
    expect(farthestMove(outline, moved)).toBeCloseTo(6, 6);
    const one = outline.map((edge, i) => (i === 3 ? (moved[i] ?? edge) : edge));
    expect(farthestMove(outline, one)).toBeCloseTo(6, 6);
  });

  test('sees no move where there is none', () => {
    expect(farthestMove(outline, outline)).toBe(0);
  });
});
