import { describe, expect, it } from 'vitest';
import { draft, exampleProject, openProject, salvageProject, saveProject } from '../../src/project';
import { migrated } from '../../src/project/migrate';
import { say } from '../../src/words';

const text = (change: (raw: Record<string, Record<string, unknown>>) => void): string => {
  const raw = JSON.parse(saveProject(exampleProject));
  change(raw);
  return JSON.stringify(raw);
};

const salvaged = (broken: string) => {
  const result = salvageProject(broken);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

describe('a project file that can not be opened as it stands', () => {
  it('keeps every field but the broken ones, which get their defaults and are listed', () => {
    const broken = text((raw) => {
      Object.assign(raw.leg ?? {}, { spread: 9999, straighten: 'much' });
      Object.assign(raw.hem ?? {}, { depth: 'three' });
      Object.assign(raw, { notes: 'for Sunday' });
    });
    expect(openProject(broken).ok).toBe(false);
    const { project, repairs, missing } = salvaged(broken);
    expect(project).toMatchObject({
      name: exampleProject.name,
      body: exampleProject.body,
      leg: { spread: 25.4, straighten: 'auto', raiseWaist: 0 },
      hem: { depth: 30 },
      notes: 'for Sunday',
    });
    expect(missing).toEqual([]);
    expect(repairs.map(({ problem, now }) => [problem.field, problem.value, now])).toEqual([
      ['leg.spread', 9999, 25.4],
      ['leg.straighten', 'much', 'auto'],
      ['hem.depth', 'three', 30],
    ]);
    expect(draft(project).ok).toBe(true);
  });

  it('leaves a needed measurement to be measured, and drops an optional one', () => {
    const { project, missing, repairs } = salvaged(
      text((raw) => Object.assign(raw.body ?? {}, { hipGirth: 7, kneeGirth: 'round' })),
    );
    expect(missing).toEqual(['body.hipGirth']);
    expect(project.body.kneeGirth).toBeUndefined();
    expect(repairs.map(({ problem, now }) => [problem.field, now])).toContainEqual(['body.hipGirth', undefined]);
    expect(draft(project).ok).toBe(true);
  });

  it('gives up a whole group where nothing in it can be read', () => {
    const { project, repairs } = salvaged(text((raw) => Object.assign(raw, { waist: 'elastic', block: 3 })));
    expect(project.waist).toEqual(exampleProject.waist);
    expect(repairs.map(({ problem }) => problem.field).sort()).toEqual(['block', 'waist']);
  });

  it('drafts blocks anew where traced ones are not whole', () => {
    const { project, repairs } = salvaged(
      text((raw) =>
        Object.assign(raw, { block: { source: 'drawn', front: { edges: { waist: [[1, 2]] } }, back: {} } }),
      ),
    );
    expect(project.block.source).toBe('drafted');
    expect(repairs.length).toBeGreaterThan(0);
  });

  it('takes what was whole of a text that ends in the middle', () => {
    const whole = saveProject(exampleProject);
    const half = whole.slice(0, whole.indexOf('"straighten"') + 16);
    const { project, cutShort } = salvaged(half);
    expect(cutShort).toBe(true);
    expect(project.body).toEqual(exampleProject.body);
    expect(project.leg.spread).toBe(exampleProject.leg.spread);
    expect(project.hem).toEqual(exampleProject.hem);
  });

  it.each([
    ['no JSON', 'hello'],
    ['only a beginning', '{"format":"legwork-project","version":1,"na'],
    ['another format', '{"format":"recipe","version":1,"body":{}}'],
    ['a newer version', '{"format":"legwork-project","version":3,"body":{}}'],
    ['mismatched brackets', '{"format":"legwork-project","version":1,"body":{]}'],
    ['an empty file', ''],
  ])('is refused with its reason where it is past help: %s', (_what, broken) => {
    const result = salvageProject(broken);
    expect(result.ok).toBe(false);
    expect(result.ok ? [] : result.problems).toHaveLength(1);
  });

  it('can be cut at any place without a fault of the program, and never gives what can not be drafted', () => {
    const whole = saveProject(exampleProject);
    let saved = 0;
    for (let end = 0; end < whole.length; end += 17) {
      const result = salvageProject(whole.slice(0, end));
      if (!result.ok) continue;
      saved += 1;
      expect(openProject(saveProject(result.value.project)).ok, `cut at ${end}`).toBe(true);
    }
    expect(saved).toBeGreaterThan(20);
  });
});

describe('an older project file', () => {
  const steps = {
    2: { bring: (raw: object) => ({ ...raw, cloth: 'cotton' }), note: say`It wears cotton now.` },
    3: { bring: (raw: object) => ({ ...raw, seen: [...('seen' in raw ? (raw.seen as number[]) : []), 3] }) },
  };

  it('is brought up to date step by step, each step seeing what the one before made', () => {
    expect(migrated({ version: 1, seen: [1] }, 1, steps, 3)).toEqual({
      raw: { version: 3, seen: [1, 3], cloth: 'cotton' },
      notes: [say`It wears cotton now.`],
    });
    expect(migrated({ version: 2, seen: [] }, 2, steps, 3)?.notes).toEqual([]);
    expect(migrated({ version: 3, seen: [] }, 3, steps, 3)).toEqual({ raw: { version: 3, seen: [] }, notes: [] });
  });

  it('is refused where a step is missing', () => {
    expect(migrated({ version: 0 }, 0, steps, 3)).toBeUndefined();
  });
});
