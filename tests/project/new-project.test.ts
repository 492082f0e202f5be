import { describe, expect, it } from 'vitest';
import { fieldText, type Units } from '../../src/length';
import {
  checksOf,
  draft,
  exampleOf,
  exampleProject,
  groupAnew,
  habitsOf,
  METRIC,
  newProject,
  openProject,
  saveProject,
  valueAt,
} from '../../src/project';
import { FIELDS_BY_PATH } from '../../src/project/fields';

describe('what people are used to, by their locale', () => {
  it.each([
    ['en-US', 'inch', 'Letter'],
    ['en', 'inch', 'Letter'],
    ['es-US', 'inch', 'Letter'],
    ['en-CA', 'cm', 'Letter'],
    ['fr-CA', 'cm', 'Letter'],
    ['es-MX', 'cm', 'Letter'],
    ['en-GB', 'cm', 'A4'],
    ['de-DE', 'cm', 'A4'],
    ['de', 'cm', 'A4'],
    ['en-AU', 'cm', 'A4'],
    ['ja', 'cm', 'A4'],
    ['es-419', 'cm', 'A4'],
    ['', 'cm', 'A4'],
    ['no locale', 'cm', 'A4'],
  ] as const)('%s: %s and %s', (locale, units, sheet) => {
    expect(habitsOf(locale)).toEqual({ units, sheet });
  });
});

/** A length as its field shows it: whole millimetres but for what is thinner than a finger, or eighths of an inch. */
const round = (value: number, units: Units): boolean =>
  units === 'cm' ? /^\d+(\.\d)?$/.test(fieldText(value, units)) || value < 5 : !fieldText(value, units).includes('.');

describe.each(['cm', 'inch'] as const)('a new project in %s', (units) => {
  const project = newProject({ ...METRIC, units }, 'Anew');
  const whole = { ...project, pocket: groupAnew('pocket', units) };
  const lengths = [...FIELDS_BY_PATH].filter(([, field]) => field.kind === 'number' && field.unit === 'mm');

  it('shows every length round, the projected line alone excepted, which is drawn and not measured', () => {
    const unround = lengths
      .map(([path]) => [path, valueAt(whole, path)] as const)
      .filter(([path, value]) => typeof value === 'number' && path !== 'projector.line' && !round(value, units));
    expect(unround).toEqual([]);
    expect(lengths.length).toBeGreaterThan(30);
  });

  it('can be drafted, and comes out of its file as it was', () => {
    expect(draft(project).ok).toBe(true);
    expect(openProject(saveProject(project))).toMatchObject({ ok: true, value: project });
  });

  it('asks whether it is slept in', () => {
    expect(project.use.forSleeping).toBeUndefined();
  });
});

describe('the example', () => {
  it('is the finished one in centimetres', () => {
    expect(exampleOf(METRIC)).toEqual(exampleProject);
    expect(exampleOf(habitsOf('en-CA')).paper.sheet).toBe('Letter');
  });

  it('has no more to mind in inches, and is straightened there too', () => {
    const [metric, american] = [METRIC, habitsOf('en-US')].map((habits) => draft(exampleOf(habits)));
    if (!metric?.ok || !american?.ok) throw new Error('the example can’t be drafted');
    const verdicts = (drafted: typeof metric) => checksOf(drafted.value).map(({ id, verdict }) => [id, verdict]);
    expect(verdicts(american)).toEqual(verdicts(metric));
    expect(american.value.measures.hipGirthFinished).toBeCloseTo(metric.value.measures.hipGirthFinished, -1);
    const { body } = american.value.project;
    for (const value of Object.values(body)) if (typeof value === 'number') expect(round(value, 'inch')).toBe(true);
  });
});
