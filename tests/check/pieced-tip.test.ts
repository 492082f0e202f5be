import { expect, test } from 'vitest';
import { applyRemedy, checksOf, type Draft, draft, exampleProject, type Project } from '../../src/project';
import { printPhrase, UNSAID } from '../../src/words';
import { pieceName } from '../names';

function drafted(cloth: Partial<Project['cloth']>): Draft {
  const result = draft({ ...exampleProject, cloth: { ...exampleProject.cloth, ...cloth } });
  if (!result.ok) throw new Error(result.problems.map(({ field }) => field).join());
  return result.value;
}
const tipOf = (d: Draft) => checksOf(d).find(({ id }) => id === 'pieced-tip');

test('a pieced fork tip is good in plain cloth, and nothing is said of one that is not there', () => {
  expect(tipOf(drafted({}))).toBeUndefined();
  const tip = tipOf(drafted({ piecedTip: 50 }));
  expect([tip?.verdict, tip?.fix]).toEqual(['good', undefined]);
  expect(tip?.measured).toBeCloseTo(50, 6);
  expect(tipOf(drafted({ piecedTip: 15 }))?.verdict).toBe('good');
});

test.each([
  [{ repeat: 40 }, /breaks the stripes or checks/],
  [{ repeatAcross: 40 }, /breaks the stripes or checks/],
  [{ piecedTip: 14 }, /only 1\.4 cm wide/],
])('with %j it is doubtful, and one press leaves the fork whole', (cloth, words) => {
  const d = drafted({ piecedTip: 50, ...cloth });
  const tip = tipOf(d);
  expect(tip?.verdict).toBe('doubtful');
  expect(printPhrase(tip?.reason ?? UNSAID, 'cm')).toMatch(words);
  const whole = draft(applyRemedy(d.project, tip ?? {}));
  expect(whole.ok && tipOf(whole.value)).toBeUndefined();
  expect(whole.ok && whole.value.pieces.map(pieceName)).toEqual(['leg']);
});
