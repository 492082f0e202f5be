import { readFileSync } from 'node:fs';
import Ajv, { type ValidateFunction } from 'ajv';
import { describe, expect, it } from 'vitest';
import { type JsonSchema, projectSchema } from '../../.house/project-schema';
import { reportSchema } from '../../.house/report-schema';
import { makeReport } from '../../src/files/report/report';
import { draft, exampleProject, openProject, saveProject, withValue } from '../../src/project';
import { FIELD_LIMITS } from '../../src/project/fields';
import { projectDrawn } from '../fuzz/projects';

const file = (name: string): JsonSchema =>
  JSON.parse(readFileSync(new URL(`../../docs/${name}.schema.json`, import.meta.url), 'utf8'));
const validator = (schema: JsonSchema): ValidateFunction => new Ajv({ strict: false, allErrors: true }).compile(schema);
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
const pathsOf = (validate: ValidateFunction): readonly string[] =>
  (validate.errors ?? []).map((one) => one.instancePath);

/** The same schema, in which nothing may stand that it doesn't name. */
const closed = (schema: unknown): unknown => {
  if (Array.isArray(schema)) return schema.map(closed);
  if (typeof schema !== 'object' || schema === null) return schema;
  const inner = Object.fromEntries(Object.entries(schema).map(([key, part]) => [key, closed(part)]));
  return 'properties' in inner ? { ...inner, additionalProperties: false } : inner;
};

/** Blocks by numbers of which none was measured yet. */
const NUMBERS = { source: 'numbers', front: {}, back: {} };

// To write both anew: npm run formats
describe('docs/project.schema.json', () => {
  const validate = validator(file('project'));

  it('is what the catalogue says today', () => {
    expect(file('project')).toEqual(plain(projectSchema()));
  });

  it('names every field of a whole project', () => {
    const whole = { ...exampleProject, pocket: {}, fit: {} };
    const opened = openProject(JSON.stringify(whole));
    const check = validator(closed(file('project')) as JsonSchema);
    check(opened.ok ? plain(opened.value) : undefined);
    expect(pathsOf(check)).toEqual([]);
  });

  it('takes what can be opened, unknown fields too', () => {
    for (let seed = 0; seed < 200; seed += 1) {
      const text = JSON.stringify(projectDrawn(seed));
      if (!openProject(text).ok) continue;
      expect(validate(JSON.parse(text)), `seed ${seed}: ${pathsOf(validate)}`).toBe(true);
    }
    expect(validate({ ...JSON.parse(saveProject(exampleProject)), notes: 'for Sunday' })).toBe(true);
  });

  it.each(Object.entries(FIELD_LIMITS))('refuses %s beyond its limits', (path, { lowest, highest }) => {
    const block = /^block\.(front|back|allowances)\./.test(path) ? NUMBERS : exampleProject.block;
    const whole = { ...exampleProject, block, pocket: {}, fit: {} } as never;
    const beyond = (highest - lowest) / 100;
    for (const value of [lowest, highest, lowest - beyond, highest + beyond]) {
      const taken = validate(plain(withValue(whole, path, value)));
      expect(taken, `${path} ${value}`).toBe(value >= lowest && value <= highest);
    }
  });

  it('refuses another format, another version, and a body without what must be measured', () => {
    const { body, ...rest } = plain(exampleProject) as Record<string, unknown>;
    expect(validate({ ...rest, body, format: 'recipe' })).toBe(false);
    expect(validate({ ...rest, body, version: 1 })).toBe(false);
    expect(validate({ ...rest, body: { waistGirth: 700 } })).toBe(false);
    expect(validate({ ...rest, body, leg: { length: 'floor' } })).toBe(false);
  });
});

describe('docs/report.schema.json', () => {
  const open = validator(file('report'));
  const tight = validator(closed(file('report')) as JsonSchema);
  it.each([
    ['the example', {}],
    ['a cloth on which nothing fits', { cloth: { ...exampleProject.cloth, width: 400 } }],
    [
      'cords, a band, a pocket, shrinking',
      {
        waist: { ...exampleProject.waist, finish: 'elasticAndDrawstring' },
        hem: { ...exampleProject.hem, finish: 'contrastBand' },
        cloth: { ...exampleProject.cloth, washFirst: false },
        pocket: { width: 140, height: 160, facing: 25, part: 'back', count: 1 },
      },
    ],
  ] as const)('names everything in the report of %s', (_, change) => {
    const drafted = draft({ ...exampleProject, ...change });
    if (!drafted.ok) throw new Error('refused');
    const report = makeReport(drafted.value);
    expect(file('report')).toEqual(plain(reportSchema(Object.keys(report.measures))));
    for (const validate of [open, tight]) {
      validate(plain(report));
      expect((validate.errors ?? []).map((one) => `${one.instancePath} ${one.message}`).slice(0, 5)).toEqual([]);
    }
  });
});
