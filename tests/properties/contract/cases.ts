import fc from 'fast-check';
import { type Corrections, NO_CORRECTIONS } from '../../../src/block';
import type { Project } from '../../../src/project';
import { childBodies } from '../../outside/children';
import { every } from '../../outside/every';
import { projectFor, surveyBodies } from '../../outside/survey';
import { anyBody } from '../bodies';
import { netLeg } from '../net';
import { between, chance } from '../seed';
import { asDrafted, broughtAlong } from '../symmetry';

/** What the contract is tried on: one body with its choices, and chance for how much is changed. */
export interface Case {
  readonly id: string;
  /** Straightened as it was found: a change doesn't find it anew. */
  readonly project: Project;
  /** The same, straightening left to be found. */
  readonly automatic: Project;
  /** Chance 0…1, the same for the same case; each line takes its own. */
  readonly dice: readonly number[];
  readonly traced: boolean;
  /** A person of the surveys, and no body drawn at random. */
  readonly measured: boolean;
}

type Body = Project['body'];
type Leg = Partial<Project['leg']>;

interface Draw {
  readonly body: Body;
  readonly leg: Leg;
  readonly dice: readonly number[];
  /** Whether an old friend from the survey takes this body's place, and which. */
  readonly survey: number;
}

const usually = <T>(usual: T, other: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: 2, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: fc.constant(usual) }, other);

const NAMES = ['ankle', 'midCalf', 'belowKnee', 'knee', 'midThigh', 'short'] as const;

/** Mostly the usual choices, for the contract is about one choice; the rest so that no company of choices breaks it. */
const anyLeg: fc.Arbitrary<Leg> = fc
  .record({
    spread: usually(25.4, between(0, 60)),
    straighten: usually<Project['leg']['straighten']>('auto', between(0, 1)),
    raiseWaist: usually(0, between(-15, 30)),
    lowerCrotch: usually(0, between(0, 25)),
    length: usually<Project['leg']['length']>(
      'ankle',
      fc.oneof(fc.constantFrom(...NAMES), fc.record({ inseam: between(200, 800) })),
    ),
    shape: usually<Project['leg']['shape']>('pyjama', fc.constantFrom('block' as const, 'straight' as const)),
  })
  .map((leg) => Object.fromEntries(Object.entries(leg).filter(([, value]) => value !== undefined)));

const DICE = 24;
const anyDraw: fc.Arbitrary<Draw> = fc.record({
  body: anyBody,
  leg: anyLeg,
  dice: fc.array(between(0, 1), { minLength: DICE, maxLength: DICE }),
  survey: between(0, 1),
});

const people = () => [...surveyBodies(), ...childBodies()];

/** A survey body with the front part of its crotch length told on every third, so that both ways are tried. */
function measuredBody(person: ReturnType<typeof people>[number], nth: number): Body {
  const front = 'frontCrotchLength' in person ? person.frontCrotchLength : undefined;
  return front === undefined || nth % 3 !== 0 ? person.body : { ...person.body, frontCrotchLength: front };
}

const withoutCrotch = ({ crotchLength: _, frontCrotchLength: __, ...body }: Body): Body => body;

/**
 * Draws cases: every second body is a random one, every other a person of the survey; each as it is and, where its
 * crotch length was measured, once more without. `LEGWORK_EVERY=1` takes everybody of the surveys with the usual
 * choices instead, `LEGWORK_PART=1/2` half of them.
 *
 * @param name for the log
 * @param count how many draws, before the times asked for
 */
export function* cases(name: string, count: number): Generator<Case> {
  const all = people();
  if (every) {
    const [part = 1, parts = 1] = (process.env.LEGWORK_PART ?? '1/1').split('/').map(Number);
    for (let i = part - 1; i < all.length; i += parts) {
      const person = all[i] as (typeof all)[number];
      // Even numbers of the golden section are spread evenly over 0…1, and every body gets others.
      const dice = Array.from({ length: DICE }, (_, k) => ((i * DICE + k) * 0.618_033_988_75) % 1);
      yield* bothWays(person.id, true, measuredBody(person, i), {}, dice);
    }
    return;
  }
  const { seed, numRuns } = chance(name, count);
  const draws = fc.sample(anyDraw, { seed: seed as number, numRuns });
  for (const [i, { body, leg, dice, survey }] of draws.entries()) {
    const person = all[Math.min(all.length - 1, Math.floor(survey * all.length))] as (typeof all)[number];
    if (i % 2 === 0) yield* bothWays(`draw ${i}`, false, body, leg, dice);
    else yield* bothWays(`draw ${i}, ${person.id}`, true, measuredBody(person, i), leg, dice);
  }
}

function* bothWays(id: string, measured: boolean, body: Body, leg: Leg, dice: readonly number[]): Generator<Case> {
  const ways = body.crotchLength === undefined ? [] : [{ name: `${id}, crotch length`, told: body }];
  for (const { name, told } of [...ways, { name: id, told: withoutCrotch(body) }]) {
    const automatic = projectFor(told, { leg });
    const found = netLeg(automatic);
    if (!found) continue;
    const project = withLeg(automatic, { straighten: found.choices.straighten });
    yield { id: name, project, automatic, dice, traced: false, measured };
  }
}

/** The same cases, their blocks brought along as they were drafted. */
export function* tracedCases(name: string, count: number): Generator<Case> {
  for (const one of cases(name, count)) {
    const own = netLeg(one.project);
    if (!own) continue;
    const brought = (project: Project) => broughtAlong(own.drafted.blocks, project, asDrafted, asDrafted);
    if (!netLeg(brought(one.project))) continue;
    yield { ...one, project: brought(one.project), automatic: brought(one.automatic), traced: true };
  }
}

/** The length of a new project. */
export const defaultLength = ({ body }: Project): Project['leg']['length'] => projectFor(body).leg.length;

export const withLeg = (project: Project, leg: Leg): Project => ({ ...project, leg: { ...project.leg, ...leg } });

export const withBody = (project: Project, body: Partial<Body>): Project => ({
  ...project,
  body: { ...project.body, ...body },
});

export const withFit = (project: Project, fit: Partial<Corrections>): Project => ({
  ...project,
  fit: { ...NO_CORRECTIONS, ...project.fit, ...fit },
});

/** A number between two others by the nth die of a case. */
export const dieBetween = ({ dice }: Case, nth: number, low: number, high: number): number =>
  low + (dice[nth] ?? 0.5) * (high - low);
