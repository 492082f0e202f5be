import * as v from 'valibot';
import { expect, test } from 'vitest';
import { measurements } from '../../src/body';
import { checkedProject, SCHEMAS } from '../../src/project/schema';
import { projectDrawn } from './projects';
import { chanceOf } from './random';
import { type Asked, drawn, type Walked } from './walk';

const everything = { present: 1, limit: 0, even: 1 };
const asked: Asked = {
  chance: chanceOf(1),
  temperature: everything,
  limitsAt: () => [300, 301],
  textsAt: () => ['A4'],
};

test('the same seed draws the same project, another seed another one', () => {
  expect(JSON.stringify(projectDrawn(7))).toBe(JSON.stringify(projectDrawn(7)));
  expect(new Set(Array.from({ length: 50 }, (_, i) => JSON.stringify(projectDrawn(i)))).size).toBe(50);
});

test('almost every draw is within the limits of the schema, which only bodies that contradict themselves leave', () => {
  const problems = Array.from({ length: 400 }, (_, i) => checkedProject(projectDrawn(i)).problems);
  const others = problems.flat().filter(({ field }) => !field.startsWith('body.'));
  expect(others.map(({ field }) => field)).toEqual([]);
  expect(problems.filter((found) => found.length === 0).length).toBeGreaterThan(300);
});

/** Every field of the schema, as a dotted path. */
function fieldsOf(schema: Walked, path = ''): readonly string[] {
  if (schema.wrapped) return fieldsOf(schema.wrapped, path);
  if (schema.type === 'lazy') return fieldsOf((schema.getter as (input: unknown) => Walked)({}), path);
  if (!schema.entries) return [path];
  return Object.entries(schema.entries).flatMap(([key, inner]) =>
    fieldsOf(inner, path === '' ? key : `${path}.${key}`),
  );
}

const has = (value: unknown, path: string): boolean =>
  path.split('.').reduce<unknown>((here, key) => (here as Record<string, unknown> | undefined | null)?.[key], value) !==
  undefined;

test('every field of the schema and every measurement is drawn, and is left out', () => {
  const draws = Array.from({ length: 600 }, (_, i) => projectDrawn(i));
  const fields = fieldsOf(SCHEMAS.cm as unknown as Walked).filter((path) => !path.startsWith('lastPrint.'));
  const needed = [
    'format',
    'version',
    'units',
    'block.source',
    ...measurements.filter((m) => m.required).map((m) => `body.${m.key}`),
  ];
  expect(fields.length).toBeGreaterThan(80);
  expect(fields.filter((path) => !draws.some((draw) => has(draw, path)))).toEqual([]);
  expect(fields.filter((path) => !needed.includes(path) && draws.every((draw) => has(draw, path)))).toEqual([]);
});

test('a new option joins by itself: its limits are walked, and a kind that the walk doesn’t know is told', () => {
  const option = v.looseObject({
    drape: v.optional(v.pipe(v.number(), v.minValue(2), v.maxValue(3)), 2),
    cut: v.optional(v.picklist(['bias', 'straight'])),
  });
  for (let i = 0; i < 50; i += 1)
    expect(v.safeParse(option, drawn(option as unknown as Walked, asked)).success).toBe(true);
  expect(() => drawn({ type: 'map' }, asked)).toThrow(/doesn't know “map”/);
});
