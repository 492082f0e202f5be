import { describe, expect, it } from 'vitest';
import { exampleProject, openProject, type Repair, salvageProject, saveProject } from '../../src/project';
import { checkedProject } from '../../src/project/schema';
import { printPhrase } from '../../src/words';

/** Whatever is read, nobody waits for it longer than this, ms: far more than it takes here, for a slow machine. */
const PATIENCE = 10_000;

const WHOLE = saveProject(exampleProject);
const withText = (from: string, to: string) => {
  expect(WHOLE).toContain(from);
  return WHOLE.replace(from, to);
};
const saved = (text: string) => {
  const result = salvageProject(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};
const fields = (repairs: readonly Repair[]) => repairs.map(({ problem }) => problem.field);
const sentences = (text: string): string[] => {
  const result = openProject(text);
  return result.ok ? [] : result.problems.map(({ field, phrase }) => `${field}: ${printPhrase(phrase, 'cm')}`);
};

const line = (from: number, to: number) => [
  [from, from],
  [from, from],
  [to, to],
  [to, to],
];
const traced = (change: (block: Record<string, Record<string, unknown>>) => void = () => {}) => {
  const names = ['waist', 'centre', 'crotch', 'inseam', 'hem', 'side'];
  const block = () => ({
    edges: Object.fromEntries(names.map((name) => [name, [line(0, 10)]])) as Record<string, unknown>,
    grainline: [
      [0, 0],
      [0, 10],
    ],
    hipLevel: 5,
    kneeLevel: 7,
  });
  const front: Record<string, unknown> = block();
  const raw = { ...exampleProject, block: { source: 'drawn', front, back: block() } };
  change(raw.block as never);
  return JSON.stringify(raw);
};

describe('a list where a group belongs', () => {
  it.each([
    'use',
    'block',
    'cloth',
    'leg',
    'waist',
    'hem',
    'allowances',
    'pocket',
    'sewing',
    'fit',
    'projector',
    'paper',
  ])('is no empty group: %s', (key) => {
    const text = JSON.stringify({ ...exampleProject, [key]: [] });
    expect(sentences(text)).toEqual([`${key}: must be an object in braces.`]);
    const { repairs, project } = saved(text);
    expect(fields(repairs)).toEqual([key]);
    expect(openProject(saveProject(project)).ok).toBe(true);
  });

  it('is no body either, and without a body nothing is saved', () => {
    const text = JSON.stringify({ ...exampleProject, body: [] });
    expect(sentences(text)).toEqual(['body: must be an object in braces.']);
    expect(salvageProject(text).ok).toBe(false);
  });
});

describe('blocks that were brought', () => {
  it('are not dropped without a word for one bad coordinate', () => {
    const text = traced(({ front }) => {
      (front as { edges: { hem: unknown[] } }).edges.hem[0] = [
        [0, 0],
        [1, 1],
        [2, 2],
        [3, 'x'],
      ];
    });
    const { repairs, project } = saved(text);
    expect(project.block.source).toBe('drafted');
    expect(fields(repairs)).toEqual(['block.front.edges.hem.0.3.1', 'block']);
    expect(repairs[1]?.problem.phrase.template).toMatch(/blocks that were brought.*drafted from the measurements/);
  });

  it('are told with one fault an edge, however many numbers are none', () => {
    const curves = Array(2000).fill(line('a' as never, 'b' as never));
    const text = traced(({ front }) =>
      Object.assign((front as { edges: object }).edges, { hem: curves, side: curves }),
    );
    expect(sentences(text)).toHaveLength(2);
  });

  it('are refused with more curves than an edge may have, as the draft would take for ever', () => {
    const text = traced(({ back }) => {
      (back as { edges: { hem: unknown[] } }).edges.hem = Array(251).fill(line(0, 1));
    });
    expect(sentences(text)).toEqual([
      'block.back.edges.hem: has more curves than the 250 that an edge may have; draw it with fewer points.',
    ]);
    expect(fields(saved(text).repairs)).toEqual(['block.back.edges.hem', 'block']);
  });

  it('stay where only the knee can not be read', () => {
    const { repairs, project } = saved(traced(({ front }) => Object.assign(front ?? {}, { kneeLevel: 'low' })));
    expect(project.block).toMatchObject({ source: 'drawn', front: { hipLevel: 5 } });
    expect(fields(repairs)).toEqual(['block.front.kneeLevel']);
  });
});

it('says what is left out that must be there', () => {
  expect(sentences('{"format":"legwork-project","version":2}')).toEqual(['body: must not be left out.']);
  expect(sentences(traced(({ back }) => delete (back as { hipLevel?: number }).hipLevel))).toEqual([
    'block.back.hipLevel: must not be left out.',
  ]);
});

describe('names and numbers that no project can hold', () => {
  it.each(['__proto__', 'prototype', 'constructor'])('do not vanish without being told: %s', (name) => {
    const text = withText('"cloth": {', `"cloth": { "${name}": { "width": 5 },`);
    expect(sentences(text)).toEqual([`cloth.${name}: is a name that can’t be used in a file.`]);
    const { repairs, project } = saved(text);
    expect(fields(repairs)).toEqual([`cloth.${name}`]);
    expect(project).toEqual(exampleProject);
  });

  it('are told wherever they lie, and all else round them is kept', () => {
    const text = withText('"cloth": {', '"notes": [1e999, { "by": "me", "__proto__": 1 }], "cloth": {');
    expect(sentences(text)).toEqual([
      'notes.0: is too large for a number.',
      'notes.1.__proto__: is a name that can’t be used in a file.',
    ]);
    expect(saved(text).project).toEqual({ ...exampleProject, notes: [null, { by: 'me' }] });
  });

  it('keep other names that objects have by birth', () => {
    const text = withText('"cloth": {', '"toString": 1, "hasOwnProperty": 2, "cloth": { "valueOf": 3,');
    const opened = openProject(text);
    expect(opened).toMatchObject({ ok: true, value: { hasOwnProperty: 2, cloth: { valueOf: 3 } } });
  });

  it('take a measurement that is too large for one that must be taken', () => {
    const { missing, repairs } = saved(withText('"hipGirth": 1020', '"hipGirth": 1e999'));
    expect(missing).toEqual(['body.hipGirth']);
    expect(new Set(fields(repairs))).toEqual(new Set(['body.hipGirth']));
  });
});

describe('a name that stands twice', () => {
  it('is told, because only the last one counts', () => {
    const text = withText('"hipGirth": 1020', '"hipGirth": 900, "hip\\u0047irth": 1020');
    expect(sentences(text)).toEqual(['body.hipGirth: stands twice in the file; only the last one can count.']);
    const { repairs, project } = saved(text);
    expect(project).toEqual(exampleProject);
    expect(repairs).toMatchObject([{ problem: { field: 'body.hipGirth' }, now: 1020 }]);
  });

  it('is none where it stands in groups of a list, or is a value', () => {
    expect(sentences(withText('"cloth": {', '"notes": [{ "a": "a" }, { "a": "a", "b": "a" }], "cloth": {'))).toEqual(
      [],
    );
  });
});

describe('texts without end', () => {
  it('are refused in one sentence where they are nested too deeply', () => {
    const deep = (levels: number) =>
      withText('"cloth": {', `"notes": ${'['.repeat(levels)}${']'.repeat(levels)}, "cloth": {`);
    expect(sentences(deep(49))).toEqual([]);
    expect(sentences(deep(50))).toEqual(['file: isn’t a project file: it is nested more than 50 levels deep.']);
    expect(salvageProject(deep(500_000)).ok).toBe(false);
  });

  it('are refused in one sentence where they hold more values than any project', () => {
    const list = withText('"cloth": {', `"notes": [${'0,'.repeat(200_001)}0], "cloth": {`);
    expect(sentences(list)).toEqual(['file: isn’t a project file: it holds more than 200000 values.']);
  });

  it('are saved at once with as many faults as they can have', { timeout: PATIENCE }, () => {
    const bad = Object.fromEntries(
      Object.entries(exampleProject).map(([key, value]) => [
        key,
        typeof value === 'object' && value !== null
          ? Object.fromEntries(Object.keys(value).map((one) => [one, [one]]))
          : value,
      ]),
    );
    const text = JSON.stringify({ ...bad, body: exampleProject.body });
    expect(saved(text).repairs.length).toBeGreaterThan(40);
    expect(checkedProject(saved(text).project).problems).toEqual([]);
  });
});

it('reads a text with a byte order mark', () => {
  expect(openProject(`\ufeff${WHOLE}`)).toEqual({ ok: true, value: exampleProject, notes: [] });
});
