import { describe, expect, it } from 'vitest';
import { NO_CORRECTIONS } from '../../src/block';
import { draft, exampleProject, type Project, valueAt, withValue } from '../../src/project';
import { printProblem } from '../../src/words';

const refused = (project: Project) => {
  const result = draft(project);
  if (result.ok) throw new Error('it was drafted');
  return result.problems;
};
const fields = (project: Project) => refused(project).map(({ field }) => field);
const with_ = (changes: Readonly<Record<string, unknown>>): Project =>
  Object.entries(changes).reduce((kept, [path, value]) => withValue(kept, path, value), exampleProject);

describe('a project that can not be drafted', () => {
  it('is told everything at once: the waist sunk into the hip, the hem out of reach, the paper too small', () => {
    const project = with_({
      'leg.raiseWaist': -120,
      'body.bodyRise': 150,
      'body.hipDepth': undefined,
      'leg.shape': { hemGirth: 2400 },
      'paper.sheet': 'A99',
    });
    expect(fields(project).sort()).toEqual(['leg.raiseWaist', 'leg.shape.hemGirth', 'paper.sheet']);
  });

  it('is told all that its measurements contradict', () => {
    const project = with_({
      'body.hipDepth': 400,
      'body.waistToKnee': 300,
      'body.frontCrotchLength': 700,
      'body.crotchLength': 690,
    });
    expect(fields(project)).toEqual(['body.hipDepth', 'body.waistToKnee', 'body.frontCrotchLength']);
  });

  it('names what the project holds', () => {
    const short = { 'leg.length': { inseam: 30 } };
    for (const finish of ['turned', 'elasticCasing', 'drawstringCasing', 'facedHem']) {
      const project = with_({
        ...short,
        'hem.finish': finish,
        'hem.depth': 60,
        'hem.elasticWidth': 50,
        'hem.cordWidth': 20,
      });
      for (const { field, value } of refused(project)) expect(value).toEqual(valueAt(project, field));
    }
  });
});

describe('a leg whose lines are no leg', () => {
  // A short seated body, its crotch lowered by 10 cm, and straight legs: the inseams would turn back.
  const lowered = with_({
    'body.waistGirth': 1279,
    'body.hipGirth': 1041,
    'body.bodyRise': 165,
    'body.insideLeg': 274,
    'body.hipDepth': 98,
    'body.crotchLength': undefined,
    'leg.lowerCrotch': 100,
    'leg.length': { inseam: 111 },
    'leg.shape': 'straight',
    'hem.depth': 10,
    'hem.turnUnder': 0,
  });

  it('is traced to the choice that spoils it, and told how far that may go', () => {
    const [problem] = refused(lowered);
    expect(problem?.field).toBe('leg.lowerCrotch');
    const sentence = problem ? printProblem(problem, 'cm') : '';
    expect(sentence).toMatch(/cross or turn back; \S+ c?m{1,2} would do\.$/);
    const limit = problem?.phrase.values.find((part) => typeof part === 'object' && 'mm' in part) as { mm: number };
    expect(draft(withValue(lowered, 'leg.lowerCrotch', limit.mm)).ok).toBe(true);
  });

  it('whichever correction it is', () => {
    const fit = { ...NO_CORRECTIONS, fullSeat: 38, fullThigh: 23, sittingPull: 39, knockKnees: -19 };
    const project = with_({ ...NARROW, fit });
    expect(fields(project)).toEqual(['fit.fullSeat']);
    expect(draft(withValue(project, 'fit.fullSeat', 0)).ok).toBe(true);
  });
});

// A full seat over full thighs on a short leg that falls straight from a near knee.
const NARROW = {
  'body.hipGirth': 647,
  'body.waistGirth': 748,
  'body.bodyRise': 318,
  'body.insideLeg': 422,
  'body.hipDepth': undefined,
  'body.crotchLength': undefined,
  'block.hipEase': -146,
  'block.balance': 21,
  'leg.spread': 28,
  'leg.lowerCrotch': 81,
  'leg.length': 'knee',
  'leg.shape': 'straight',
};
