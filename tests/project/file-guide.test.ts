import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { projectFileText } from '../../.house/project-file';
import { type BodyInput, measurements } from '../../src/body';
import { openProject, type Project } from '../../src/project';
import { valueAt, withValue } from '../../src/project/at-path';
import { printPhrase } from '../../src/words';

const BODY = { waistGirth: 760, hipGirth: 980, bodyRise: 270, insideLeg: 760 };
const least = {
  format: 'legwork-project',
  version: 2,
  body: BODY,
  pocket: {},
  fit: {},
  sides: { left: {}, right: {} },
} as unknown as Project;

interface Row {
  readonly field: string;
  readonly takes: string;
  readonly leftOut: string;
}

const guide = readFileSync(new URL('../../docs/project-file.md', import.meta.url), 'utf8');
const rows: readonly Row[] = guide
  .split('\n')
  .map((line) => /^\| `(.+?)` \| .+? \| .+? \| (.+) \| (.+) \|$/.exec(line))
  .flatMap((row) => (row ? [{ field: row[1] ?? '', takes: row[2] ?? '', leftOut: row[3] ?? '' }] : []));

/** What is said of a field that holds a value, or of one within it. */
const told = (field: string, value: unknown): readonly string[] => {
  const result = openProject(JSON.stringify(withValue(least, field, value)));
  return result.ok
    ? []
    : result.problems
        .filter((p) => p.field === field || p.field.startsWith(`${field}.`))
        .map((p) => printPhrase(p.phrase, 'cm'));
};
const kept = (field: string, value: unknown) => {
  const result = openProject(JSON.stringify(withValue(least, field, value)));
  return result.ok ? valueAt(result.value, field) : result.problems.map((p) => p.field);
};

/** “−2.5 cm” in millimetres, “0.05” as it is. */
const figure = (text: string): number => {
  const [, number = '', unit] = /^(\S+?)(?: (mm|cm))?$/.exec(text.replace('−', '-')) ?? [];
  return Number(number) * (unit === 'cm' ? 10 : 1);
};
const limits = (takes: string): readonly [number, number] | undefined => {
  const found = /between ([−\d.]+(?: mm| cm)?) and ([−\d.]+(?: mm| cm)?)/.exec(takes);
  return found ? [figure(found[1] ?? ''), figure(found[2] ?? '')] : undefined;
};
const names = (takes: string): readonly string[] =>
  takes.startsWith('one of ')
    ? (takes
        .replace(/, or \{.*/, '')
        .slice(7)
        .split(', ') as string[])
    : [];
/** A field within a choice: `{ "inseam": a number … }`. */
const within = (takes: string): string | undefined => /\{ "(\w+)": a number/.exec(takes)?.[1];

/** What the guide says of a field that then holds nothing. */
const NOT_ANSWERED = 'not answered';

const leaves = (value: unknown, path: readonly string[] = []): readonly string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, key]))
    : [path.join('.')];

describe('docs/project-file.md', () => {
  // To write them anew: npm run formats
  it('has its tables from the catalogue as it is today', () => {
    expect(guide).toBe(projectFileText(guide));
  });

  it('lists every field there is, and no other', () => {
    const result = openProject(JSON.stringify(least));
    const chosen = result.ok ? leaves(result.value).filter((path) => !/^(format|version$|body\.)/.test(path)) : [];
    const unanswered = rows.filter(({ leftOut }) => leftOut === NOT_ANSWERED).map(({ field }) => field);
    const measured = measurements.map(({ key }) => `body.${key satisfies keyof BodyInput}`);
    expect(rows.map(({ field }) => field).toSorted()).toEqual([...chosen, ...unanswered, ...measured].toSorted());
  });

  it.each(rows)('$field says to whom it refuses what it takes', ({ field, takes }) => {
    // What may also be a group says of a group what is wrong within it.
    for (const nonsense of [...(within(takes) ? [] : [{ a: 1 }, ['x']]), '?'.repeat(201)])
      if (told(field, nonsense).join() !== `must be ${takes}.`)
        expect(`${field}: ${told(field, nonsense)}`).toBe(takes);
  });

  it.each(rows.filter(({ field }) => !field.startsWith('body.')))(
    '$field left out is $leftOut',
    ({ field, leftOut }) => {
      expect(String(kept(field, undefined) ?? NOT_ANSWERED)).toBe(leftOut);
    },
  );

  it.each(
    rows.flatMap(({ field, takes }) => {
      const ends = limits(takes);
      return ends ? [{ field, takes, ends }] : [];
    }),
  )('$field reaches both of its limits, and not a hundredth beyond', ({ field, takes, ends: [low, high] }) => {
    const inner = within(takes);
    const path = inner ? `${field}.${inner}` : field;
    // At its limit a measurement may contradict another one, which is told in other words.
    const at = (value: number) =>
      told(field, inner ? { [inner]: value } : value).filter((phrase) => / must (lie|be)|^must be/.test(phrase));
    const beyond = (high - low) / 100;
    expect([at(low), at(high)], path).toEqual([[], []]);
    for (const value of [low - beyond, high + beyond]) expect(at(value), `${path} ${value}`).toHaveLength(1);
  });

  it.each(rows.flatMap(({ field, takes }) => names(takes).map((name) => ({ field, name }))))(
    '$field can be $name',
    ({ field, name }) => {
      // Blocks that were brought have lines of their own.
      if (field === 'block.source' && name !== 'drafted')
        expect(told('block', { source: name }).length).toBeGreaterThan(0);
      else expect(kept(field, name)).toBe(name);
    },
  );

  it.each(rows.filter(({ takes }) => takes.startsWith('“auto”')))('$field can be “auto”', ({ field }) => {
    expect(kept(field, 'auto')).toBe('auto');
  });

  it('needs the four measurements that it says are needed', () => {
    const needed = rows.filter(({ leftOut }) => leftOut.startsWith('must be measured')).map(({ field }) => field);
    expect(needed).toEqual(Object.keys(BODY).map((key) => `body.${key}`));
    for (const field of needed) expect(told(field, undefined), field).toHaveLength(1);
    for (const { field } of rows.filter(
      ({ field, leftOut }) => field.startsWith('body.') && !leftOut.startsWith('must be measured'),
    ))
      expect(kept(field, undefined), field).toBeUndefined();
  });

  it('gives the allowances of inches', () => {
    const result = openProject(JSON.stringify({ ...least, units: 'inch' }));
    expect(result.ok && Object.values(result.value.allowances)).toEqual([15.875, 15.875, 15.875, 15.875]);
  });
});
