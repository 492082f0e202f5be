import { expect, it } from 'vitest';
import { draft, exampleProject, type Opened, openProject, salvageProject, saveProject } from '../../src/project';
import { migrated } from '../../src/project/migrate';
import type { BroughtBlocks } from '../../src/trace';
import { printPhrase, printProblem } from '../../src/words';
import { tracedExample } from '../check/subject';

const BODY = { waistGirth: 760, hipGirth: 980, bodyRise: 270, insideLeg: 760 };
const first = (more: object = {}) => JSON.stringify({ format: 'legwork-project', version: 1, body: BODY, ...more });
const open = (text: string): Extract<Opened, { ok: true }> => {
  const result = openProject(text);
  if (!result.ok) throw new Error(result.problems.map((problem) => printProblem(problem, 'cm')).join('\n'));
  return result;
};
const TOLD = 'It was drawn by an earlier cut: every choice in it is kept, but the outline has changed.';
const told = (notes: Extract<Opened, { ok: true }>['notes']) => notes.map((note) => printPhrase(note, 'cm'));

it('a project of the first version keeps the choices that it left to the first version', () => {
  for (const more of [{}, { leg: { spread: 20 }, hem: { depth: 20 } }]) {
    const { value } = open(first(more));
    expect(value.version).toBe(2);
    expect(value.leg.length).toBe('ankle');
    expect(value.hem.turnUnder).toBe(10);
  }
  expect(open(first({ cloth: { kind: 'knit' } })).value.hem.turnUnder).toBe(10);
});

it('a project of the first version keeps the choices that it says', () => {
  const { value } = open(first({ leg: { length: { inseam: 640 }, spread: 12 }, hem: { turnUnder: 0, depth: 22 } }));
  expect(value.leg).toMatchObject({ length: { inseam: 640 }, spread: 12 });
  expect(value.hem).toMatchObject({ turnUnder: 0, depth: 22 });
});

it('a project of the first version keeps what nobody knows, in every place', () => {
  const { value } = open(first({ leg: { buttons: 2 }, notes: ['for Sunday'], hem: { lace: { width: 3 } } }));
  expect(value).toMatchObject({ leg: { buttons: 2 }, notes: ['for Sunday'], hem: { lace: { width: 3 } } });
});

it('a project that was written whole by the first version is drawn as it was asked for', () => {
  const whole = { ...open(first()).value, version: 1 };
  expect(open(JSON.stringify(whole)).value).toEqual(open(first()).value);
  expect(draft(open(first()).value).ok).toBe(true);
});

it('is told once that an earlier cut drew it: what is saved then is of this cut', () => {
  const { value, notes } = open(first());
  expect(told(notes)).toEqual([TOLD]);
  expect(told(open(saveProject(value)).notes)).toEqual([]);
});

it('a new project starts with the new choices, of which nothing is told', () => {
  const { value, notes } = open(first().replace('"version":1', '"version":2'));
  expect(value.leg.length).toBe('full');
  expect(value.hem.turnUnder).toBe('auto');
  expect(notes).toEqual([]);
});

it('a broken file of the first version is repaired from what it was drawn by, and told of as one', () => {
  const result = salvageProject(first({ leg: { spread: 9999 }, hem: { depth: 'deep' } }));
  if (!result.ok) throw new Error('past help');
  expect(result.value.project.leg).toMatchObject({ spread: 25.4, length: 'ankle' });
  expect(result.value.repairs.map(({ problem }) => problem.field)).toEqual(['leg.spread', 'hem.depth']);
  expect(told(result.value.notes)).toEqual([TOLD]);
});

it.each([null, [], 'ankle', 7])('a group of the first version that is %j is refused as before', (leg) => {
  const result = openProject(first({ leg }));
  expect(result.ok ? [] : result.problems.map((problem) => printProblem(problem, 'cm'))).toEqual([
    expect.stringMatching(/^leg: .*must be an object in braces\.$/),
  ]);
});

it('a later version than this is refused', () => {
  const result = openProject(first().replace('"version":1', '"version":3'));
  expect(result.ok ? [] : result.problems.map((problem) => printProblem(problem, 'cm'))).toEqual([
    'version: 3: was written by a newer Legwork; this one reads up to version 2.',
  ]);
});

it('blocks that a file calls traced came in on a drawing, those of the last prints too', () => {
  const { front, back } = JSON.parse(JSON.stringify(tracedExample.project.block)) as BroughtBlocks;
  const project = { ...exampleProject, block: { source: 'traced', front, back } };
  const before = { on: '2026-01-02', project };
  const bring = migrated({ ...project, lastPrint: { on: '2026-02-03', project, before } }, 2);
  const block = { source: 'drawn', front, back };
  expect(bring?.raw).toMatchObject({
    block,
    lastPrint: { on: '2026-02-03', project: { block }, before: { on: '2026-01-02', project: { block } } },
  });
  expect(bring?.notes).toEqual([]);
  const { value, notes } = open(JSON.stringify(project));
  expect(value.block).toEqual(block);
  expect(notes).toEqual([]);
});
