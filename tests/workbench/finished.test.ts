import { describe, expect, it } from 'vitest';
import type { Check, Verdict } from '../../src/check';
import { draft, exampleProject, withValue } from '../../src/project';
import { own, printPhrase, say, UNSAID } from '../../src/words';
import { inOrder } from '../../src/workbench/finished/order';
import { measureRows, movedBy } from '../../src/workbench/finished/rows';
import { verdictChanges } from '../../src/workbench/finished/VerdictNews';

const check = (id: string, verdict: Verdict): Check => ({
  id,
  name: say`Check ${own(id)}`,
  verdict,
  measured: 0,
  wanted: 0,
  tolerance: 1,
  unit: 'mm',
  reason: UNSAID,
  remedy: UNSAID,
});

function drafted(project = exampleProject) {
  const result = draft(project);
  if (!result.ok) throw new Error('can be drafted');
  return result.value;
}

describe('the finished measures', () => {
  it('say what a change moved, and nothing of what it left alone', () => {
    const before = drafted().measures;
    const after = drafted(withValue(exampleProject, 'leg.spread', exampleProject.leg.spread + 10));
    const rows = measureRows(after);
    const moved = (key: string) => {
      const row = rows.find((one) => one.key === key);
      const by = row && movedBy(row, before);
      return by && printPhrase(by, 'cm');
    };
    expect(moved('hipGirthFinished')).toBe('+ 2 cm');
    expect(moved('crotchDepthFinished')).toBeUndefined();
  });

  it('say nothing before the first change', () => {
    expect(measureRows(drafted()).map((row) => movedBy(row, undefined))).toEqual(
      measureRows(drafted()).map(() => undefined),
    );
  });
});

it('puts what is wrong before what is doubtful, and keeps the order of the work within', () => {
  const order = inOrder([check('a', 'good'), check('b', 'doubtful'), check('c', 'wrong'), check('d', 'doubtful')]);
  expect(order.map((one) => one.id)).toEqual(['c', 'b', 'd', 'a']);
});

it('announces only verdicts that changed', () => {
  const before = [check('a', 'good'), check('b', 'doubtful')];
  expect(verdictChanges(before, [check('a', 'wrong'), check('b', 'doubtful')])).toBe('Check a: now wrong.');
  expect(verdictChanges(before, before)).toBe('');
});
