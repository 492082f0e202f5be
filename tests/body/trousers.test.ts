import { describe, expect, test } from 'vitest';
import { bodyProblems, bodyRemarks, insideLegOf, prepareBody } from '../../src/body';
import { draft, exampleProject, hemAboveFloor, hemEnds, type Project } from '../../src/project';
import { printPhrase } from '../../src/words';

const { insideLeg = 0, ...others } = exampleProject.body;
/** 30 in. */
const TROUSERS = 762;
const byTrousers = { ...others, trouserInseam: TROUSERS };

const projectWith = (body: Project['body'], leg: Partial<Project['leg']>): Project => ({
  ...exampleProject,
  body,
  leg: { ...exampleProject.leg, ...leg },
});

function drafted(project: Project) {
  const result = draft(project);
  if (!result.ok) throw new Error(result.problems.map(({ field }) => field).join());
  return result.value;
}

describe('a body whose trousers were measured', () => {
  test('has an inside leg that says where it comes from, and how far it may be off', () => {
    const { estimates, ...body } = prepareBody(byTrousers);
    expect(body.insideLeg).toBe(TROUSERS + 55);
    expect(estimates.find(({ key }) => key === 'insideLeg')).toMatchObject({ spread: 15, basis: 'trousers' });
  });

  test('has the inside leg that was measured, where both were', () => {
    const body = prepareBody({ ...byTrousers, insideLeg });
    expect(body.insideLeg).toBe(insideLeg);
    expect(body.estimates.map(({ key }) => key)).not.toContain('insideLeg');
    expect(insideLegOf({})).toBeUndefined();
  });

  test('is asked for one of the two where neither was', () => {
    const [problem, ...more] = bodyProblems(others);
    expect(more).toEqual([]);
    expect(problem?.field).toBe('body.insideLeg');
    expect(printPhrase(problem?.phrase ?? { template: '', values: [] }, 'cm')).toContain('Trouser inseam will do');
  });

  test('is looked at again where trousers can’t belong to such a rise or such a leg', () => {
    const ids = (body: Project['body']) => bodyRemarks(body).map(({ id }) => id);
    expect(ids(byTrousers)).not.toContain('trousers-rise');
    expect(ids({ ...others, trouserInseam: 300 })).toContain('trousers-rise');
    expect(ids({ ...byTrousers, insideLeg: 810 })).not.toContain('trousers-leg');
    expect(ids({ ...byTrousers, insideLeg: 740 })).toContain('trousers-leg');
    expect(ids({ ...byTrousers, insideLeg: 930 })).toContain('trousers-leg');
  });
});

describe('what the hem will do', () => {
  test('a full length is as long as trousers that fit, and less a lowered crotch', () => {
    const full = drafted(projectWith(byTrousers, { length: 'full' }));
    expect(full.measures.inseamFront).toBeCloseTo(TROUSERS, 6);
    const lowered = drafted(projectWith(byTrousers, { length: 'full', lowerCrotch: 20 }));
    expect(lowered.measures.inseamFront).toBeCloseTo(TROUSERS - 20, 6);
    expect(hemAboveFloor(lowered.legs[0])).toBeCloseTo(hemAboveFloor(full.legs[0]), 0);
  });

  test('says how far above the floor the hem ends, about where the leg was not measured', () => {
    const told = (body: Project['body'], length: Project['leg']['length']) =>
      printPhrase(hemEnds(drafted(projectWith(body, { length }))), 'cm');
    expect(told(exampleProject.body, 'full')).toBe('ends 2.5 cm above the floor');
    expect(told(byTrousers, 'full')).toBe('ends about 2.4 cm above the floor');
    expect(told(exampleProject.body, { inseam: 727 })).toBe('just reaches the floor');
    expect(told(exampleProject.body, { inseam: 760 })).toBe('lies 3.3 cm on the floor');
  });

  test('says it once where a longer leg has a longer inseam', () => {
    const sides = { left: { longerLeg: 30 } } as unknown as Project['sides'];
    const told = hemEnds(drafted({ ...projectWith(exampleProject.body, { length: { inseam: 700 } }), sides }));
    expect(printPhrase(told, 'cm')).toBe('ends 2.7 cm above the floor');
  });
});
