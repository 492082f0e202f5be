import fc from 'fast-check';
import { HEM_FINISHES, WAIST_FINISHES } from '../../src/edges';
import type { Project } from '../../src/project';
import { projectFor } from '../outside/survey';
import { between } from './seed';

/** Everything about a project that is chosen and not measured. */
type Design = Omit<Partial<Project>, 'body' | 'leg'> & { readonly leg: Project['leg'] };

const NAMES = ['full', 'ankle', 'midCalf', 'belowKnee', 'knee', 'midThigh', 'short'] as const;

const leg: fc.Arbitrary<Project['leg']> = fc.record({
  spread: fc.oneof(fc.constant(0), between(0, 60)),
  straighten: fc.oneof(fc.constant('auto' as const), between(0, 1)),
  raiseWaist: fc.oneof(fc.constant(0), between(-40, 60)),
  lowerCrotch: fc.oneof(fc.constant(0), between(0, 40)),
  length: fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom(...NAMES) },
    { weight: 1, arbitrary: fc.record({ inseam: between(80, 900) }) },
  ),
  shape: fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom('pyjama' as const, 'block' as const, 'straight' as const) },
    { weight: 1, arbitrary: fc.record({ hemGirth: between(350, 900) }) },
  ),
});

const allowance = fc.oneof(fc.constantFrom(0, 6, 10, 15, 15.875), between(0, 40));

/** Designs over everything that the workbench lets one choose. */
export const anyDesign: fc.Arbitrary<Design> = fc.record({
  units: fc.constantFrom('cm' as const, 'inch' as const),
  leg,
  waist: fc.record({
    finish: fc.constantFrom(...WAIST_FINISHES),
    elasticWidth: between(6, 50),
    rows: fc.constantFrom(1, 1, 1, 2),
    turnOfCloth: between(0, 6),
    elastic: fc.constantFrom('threaded' as const, 'sewnOn' as const),
    rawEdge: fc.constantFrom('overlocked' as const, 'turnedUnder' as const),
    elasticLength: fc.oneof(fc.constant('auto' as const), between(400, 1200)),
    elasticStretch: between(0.3, 1.2),
    cordWidth: between(4, 20),
    cordLength: fc.oneof(fc.constant('auto' as const), between(600, 2500)),
    cord: fc.constantFrom('bought' as const, 'ofCloth' as const),
    bandHeight: between(20, 90),
    bandStretch: between(0.2, 1.5),
  }),
  hem: fc.record({
    finish: fc.constantFrom(...HEM_FINISHES),
    depth: between(10, 60),
    turnUnder: fc.oneof(fc.constant(0), between(0, 15)),
    elasticWidth: between(5, 25),
    cordWidth: between(3, 10),
    cordLength: fc.oneof(fc.constant('auto' as const), between(300, 1200)),
    cord: fc.constantFrom('bought' as const, 'ofCloth' as const),
    bandHeight: between(20, 90),
    ribStretch: between(0.2, 1),
  }),
  allowances: fc.record({ inseam: allowance, crotch: allowance, waist: allowance, hem: allowance }),
});

/** A project of a body and a design. */
export const projectOf = (body: Project['body'], design: Partial<Design> = {}): Project => projectFor(body, design);
