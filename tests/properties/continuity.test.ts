import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curveMap } from '../../src/plane';
import type { Project } from '../../src/project';
import { exampleProject } from '../../src/project';
import { anyBody } from './bodies';
import { anyDesign, projectOf } from './designs';
import { draftOrRefusal, farthestMove, netOutline } from './outlines';
import { chance, PATIENCE } from './seed';

/** One millimetre on the tape moves no place of the leg by more than this. */
const MOST = 5;

const moves = new Map<string, number>();

test(
  'one millimetre more of any measurement moves no place of the net outline by more than 5 mm',
  () => {
    fc.assert(
      fc.property(anyBody, anyDesign, fc.constantFrom(1, -1), (body, design, step) => {
        const before = draftOrRefusal(projectOf(body, design));
        if (!before) return;
        for (const [key, value] of Object.entries(body)) {
          if (typeof value !== 'number' || key === 'ageYears') continue;
          const changed = { ...body, [key]: value + step } as Project['body'];
          const after = draftOrRefusal(projectOf(changed, design));
          if (!after) continue; // a limit may lie in between; it has its own tests
          const move = farthestMove(netOutline(before), netOutline(after));
          moves.set(key, Math.max(moves.get(key) ?? 0, move));
          expect(move, `${key} ${value} ${step > 0 ? '+' : '−'} 1`).toBeLessThanOrEqual(MOST);
        }
      }),
      chance('continuity', 45),
    );
    console.log([...moves].map(([key, move]) => `${key} ${move.toFixed(2)}`).join(' · '));
  },
  PATIENCE,
);

describe('the comparison itself', () => {
  const d = draftOrRefusal(exampleProject);
  const outline = d ? netOutline(d) : [];

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
