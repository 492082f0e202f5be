import { describe, expect, it } from 'vitest';
import { runChecks } from '../../src/check';
import { applyRemedy, checksOf, notionsToBuy, type Project, shoppingOf } from '../../src/project';
import { checkedProject } from '../../src/project/schema';
import { printPhrase, UNSAID } from '../../src/words';
import { drafted, example, subjectOf } from './subject';

const BODY = { waistGirth: 560, hipGirth: 640, bodyRise: 195, insideLeg: 530, height: 1200 };
const child = (ageYears: number | undefined, parts: Partial<Record<'waist' | 'hem', object>>): Project =>
  checkedProject({
    format: 'legwork-project',
    version: 2,
    body: { ...BODY, ...(ageYears === undefined ? {} : { ageYears }) },
    ...parts,
  }).project;
const WAIST = { waist: { finish: 'drawstringCasing' } };
const checkOf = (project: Project, id: string) => checksOf(drafted(project)).find((check) => check.id === id);
const bought = (project: Project) => shoppingOf(drafted(project)).map(({ id }) => id);
/** The same with a cord whose ends hang out by so much with the waist at its widest. */
function withEnds(project: Project, ends: number): Project {
  const { waistOpening } = drafted(project).measures;
  return { ...project, waist: { ...project.waist, cordLength: waistOpening + 2 * ends } };
}

describe('a cord at a child’s waist', () => {
  // EN 14682:2007, quoted: to 14 years, 140 mm at the widest, 280 drawn in.
  it('is wrong as long as it is cut for an adult, with elastic in its place at one press', () => {
    for (const age of [3, 8, 13.9, undefined]) {
      const check = checkOf(child(age, WAIST), 'waist-cord');
      expect(check?.verdict, `${age}`).toBe('wrong');
      const now = applyRemedy(child(age, WAIST), check ?? {});
      expect(now.waist.finish).toBe('elasticCasing');
      expect(checkOf(now, 'waist-cord')).toBeUndefined();
    }
  });

  it('may hang out by 14 cm and no more; under seven years elastic is better even so', () => {
    const [young, older] = [child(6.9, WAIST), child(7, WAIST)];
    expect(checkOf(withEnds(young, 139), 'waist-cord')?.verdict).toBe('doubtful');
    expect(checkOf(withEnds(older, 139), 'waist-cord')?.verdict).toBe('good');
    for (const one of [young, older]) expect(checkOf(withEnds(one, 141), 'waist-cord')?.verdict).toBe('wrong');
  });

  it('may hang out by 28 cm drawn in, however short it is at the widest', () => {
    const project = child(10, WAIST);
    const d = drafted(project);
    const opening = project.body.waistGirth === undefined ? 0 : project.body.waistGirth + 400;
    const at = (ends: number) =>
      runChecks({ ...subjectOf(d), opening, cordLength: opening + 2 * ends }).find(({ id }) => id === 'waist-cord');
    expect(at(79)).toMatchObject({ verdict: 'good' });
    expect(at(81)).toMatchObject({ verdict: 'wrong', measured: 281, wanted: 280 });
  });

  it('says how long it may be cut', () => {
    const project = child(10, WAIST);
    const remedy = printPhrase(checkOf(project, 'waist-cord')?.remedy ?? UNSAID, 'cm');
    const length = Number(/cut the cord ([\d.]+) cm long/.exec(remedy)?.[1]) * 10;
    expect(checkOf({ ...project, waist: { ...project.waist, cordLength: length - 1 } }, 'waist-cord')?.verdict).toBe(
      'good',
    );
  });

  it('is nobody’s affair from 14 years on, and on adults', () => {
    expect(checkOf(child(14, WAIST), 'waist-cord')).toBeUndefined();
    expect(checksOf(example).some(({ id }) => id === 'waist-cord')).toBe(false);
  });
});

it('a cord at a child’s hem is wrong however long it is, with elastic in its place at one press', () => {
  const project = child(12, { hem: { finish: 'drawstringCasing', cordLength: 320 } });
  const check = checkOf(project, 'hem-cord');
  expect(check?.verdict).toBe('wrong');
  expect(applyRemedy(project, check ?? {}).hem.finish).toBe('elasticCasing');
  expect(checkOf(child(14, { hem: { finish: 'drawstringCasing' } }), 'hem-cord')).toBeUndefined();
});

it('what a child may not wear is not on the shopping list, nor the eyelets for it', () => {
  const both = { waist: { finish: 'elasticAndDrawstring' }, hem: { finish: 'drawstringCasing' } };
  const list = bought(child(5, both));
  expect(list).toContain('waist-elastic');
  expect(list).not.toContain('waist-cord');
  expect(list).not.toContain('hem-cord');
  expect(list).not.toContain('openings');
  expect(notionsToBuy(drafted(child(5, both)))).toMatchObject({ cordLength: undefined, hemCordLength: undefined });
  expect(bought(child(14, both))).toEqual(expect.arrayContaining(['waist-cord', 'hem-cord', 'openings']));
  expect(bought(withEnds(child(9, WAIST), 120))).toContain('waist-cord');
});
