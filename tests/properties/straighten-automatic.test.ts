import fc from 'fast-check';
import { expect, test } from 'vitest';
import { casingHeights, casingLines, waistOpening } from '../../src/edges';
import { centresOf, joinBlocks, spreadLeg } from '../../src/leg';
import { checksOf, type Draft, draft, type Project } from '../../src/project';
import { adultBody } from './bodies';
import { anyDesign, projectOf } from './designs';
import { between, chance, enough, PATIENCE } from './seed';

/** Below the answer by this the opening must be too small. */
const STEP = 0.01;

/** The opening of a project's leg at a straightening and a spread, without drafting all the rest. */
function openingOf(d: Draft, straighten: number, spread: number): number {
  const joined = spreadLeg(joinBlocks(d.blocks), spread);
  const centres = centresOf(joined, straighten, d.project.leg.raiseWaist);
  return waistOpening(casingLines(centres, casingHeights(d.project.waist)));
}

function drafted(project: Project): Draft {
  const result = draft(project);
  if (!result.ok) throw new Error(result.problems.map((p) => p.field).join());
  return result.value;
}

const pullOn = (d: Draft) => checksOf(d).find((c) => c.id === 'pull-on')?.verdict;

/**
 * A project whose automatic straightening lies somewhere between leaning and upright: the spread is chosen so that the
 * opening would just do at `share` of the way. Undefined where no spread does that.
 */
function betweenLeaningAndUpright(project: Project, share: number): Project | undefined {
  const first = draft({ ...project, leg: { ...project.leg, spread: 0, straighten: 0 } });
  if (!first.ok) return undefined;
  const d = first.value;
  // More spread widens both by the same: half of what the opening lacks at that straightening, in each leg.
  const spread = (d.measures.pullOnNeeded - openingOf(d, share, 0)) / 2;
  if (spread < 0 || spread > 250) return undefined;
  return { ...project, leg: { ...project.leg, spread, straighten: 'auto' } };
}

/** Waists that are smaller than the hip, so that the centre lines lean, and blocks with so little ease that it matters. */
const leaningBody = adultBody.map(({ crotchLength: _, frontCrotchLength: __, ...body }) => ({
  ...body,
  waistGirth: Math.min(body.waistGirth ?? 0, 0.92 * (body.hipGirth ?? 0)),
}));
const blockOptions = between(-20, 50.8).map((hipEase) => ({
  source: 'drafted' as const,
  hipEase,
  waistEase: 25,
  riseEase: 'auto' as const,
  crotchEase: 'auto' as const,
  balance: 10,
}));

test(
  'straightening that is found automatically is the least: 0.01 less fails the pull-on check',
  () => {
    const answers: number[] = [];
    fc.assert(
      fc.property(leaningBody, anyDesign, blockOptions, between(0.05, 0.95), (body, design, block, share) => {
        // A chosen hem girth has limits that the found spread may leave.
        const leg = { ...design.leg, shape: 'pyjama' as const, length: 'ankle' as const };
        const project = betweenLeaningAndUpright(projectOf(body, { ...design, leg, block }), share);
        fc.pre(project !== undefined);
        const found = drafted(project);
        const { straighten } = found.measures;
        fc.pre(straighten >= STEP && straighten < 1);
        answers.push(straighten);
        expect(pullOn(found)).toBe('good');
        const below = drafted({ ...project, leg: { ...project.leg, straighten: straighten - STEP } });
        expect(pullOn(below), `at ${straighten - STEP}, a step below ${straighten}`).toBe('wrong');
        const atAnswer = openingOf(found, straighten, project.leg.spread) - found.measures.pullOnNeeded;
        expect(atAnswer).toBeGreaterThanOrEqual(0);
        expect(atAnswer).toBeLessThan(0.01);
      }),
      chance('least straightening', 200),
    );
    const tenths = Array.from({ length: 10 }, (_, i) => answers.filter((t) => Math.floor(10 * t) === i).length);
    console.log(`${answers.length} bodies with an answer between 0 and 1; by tenths: ${tenths.join(' ')}`);
    expect(answers.length).toBeGreaterThanOrEqual(enough(200));
  },
  PATIENCE,
);
