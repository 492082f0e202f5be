import { describe, expect, it } from 'vitest';
import { NO_CORRECTIONS } from '../../src/block';
import { printProblem } from '../../src/length';
import { draft, exampleProject, type Project, valueAt, withValue } from '../../src/project';

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
      'body.bodyRise': 190,
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
    const limit = problem?.phrase.find((part) => typeof part === 'object' && 'mm' in part) as { mm: number };
    expect(draft(withValue(lowered, 'leg.lowerCrotch', limit.mm)).ok).toBe(true);
  });

  it('whichever correction it is', () => {
    const fit = { ...NO_CORRECTIONS, fullThigh: 38.6, swayBack: 28.4, sittingPull: 22, knockKnees: -21.5 };
    const project = with_({ ...NARROW, fit });
    expect(fields(project)).toEqual(['fit.fullThigh']);
    expect(draft(withValue(project, 'fit.fullThigh', 0)).ok).toBe(true);
  });
});

// Full thighs on a leg with hardly any width, its crotch lowered by 9 cm.
const NARROW = {
  'body.waistGirth': 1398,
  'body.hipGirth': 1076,
  'body.bodyRise': 317,
  'body.insideLeg': 781,
  'body.hipDepth': 296,
  'body.crotchLength': undefined,
  'block.hipEase': -200,
  'block.riseEase': 83,
  'block.crotchEase': -15,
  'block.balance': -3,
  'leg.spread': 0,
  'leg.straighten': 0.94,
  'leg.raiseWaist': 150,
  'leg.lowerCrotch': 92,
  'leg.length': 'knee',
  'leg.shape': 'straight',
};
