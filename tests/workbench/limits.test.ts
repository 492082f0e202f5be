import { describe, expect, it } from 'vitest';
import { draft, exampleProject, type Project, withValue } from '../../src/project';
import { TYPED_LIMITS } from '../../src/workbench/store/limits';

/** Blocks by numbers of which none was measured yet. */
const NUMBERS = { source: 'numbers', front: {}, back: {} } as const;

/** Whether the draft complains of this field itself; what it says of others does not matter here. */
function complains(path: string, value: number): boolean {
  const block = /^block\.(front|back|allowances)\./.test(path) ? NUMBERS : exampleProject.block;
  const result = draft(withValue({ ...exampleProject, block }, path, value) as Project);
  return !result.ok && result.problems.some((problem) => problem.field === path);
}

describe.each(Object.entries(TYPED_LIMITS))('the limits said beside %s', (path, { lowest, highest }) => {
  it('are refused one step beyond', () => {
    const step = Math.max(1e-3, (highest - lowest) * 1e-3);
    expect(complains(path, lowest - step)).toBe(true);
    expect(complains(path, highest + step)).toBe(true);
  });
});

// At a limit other fields may have to give way, so that only the fields that stand alone can be held to it.
it.each(['allowances.inseam', 'allowances.crotch', 'paper.margin', 'waist.turnOfCloth', 'leg.spread'])(
  'allow %s to reach both of its limits',
  (path) => {
    const { lowest, highest } = TYPED_LIMITS[path] ?? { lowest: Number.NaN, highest: Number.NaN };
    expect(complains(path, lowest)).toBe(false);
    expect(complains(path, highest)).toBe(false);
  },
);
