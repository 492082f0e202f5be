import { beforeAll, expect, test } from 'vitest';
import type { Project } from '../../src/project';
import { childBodies, childrenAreHere } from '../outside/children';
import { every } from '../outside/every';
import { surveyBodies, surveyIsHere } from '../outside/survey';
import { aMillimetreMovesLittle, type Moves, movesTold } from './continuity';
import { DESIGNS, designed } from './every-design';
import { netLeg } from './net';
import { draftOrRefusal, netOutline } from './outlines';
import { fullerHipIsWider, longerLegIsLonger, longerRiseIsDeeper, spreadCountsTwice, withoutCrotch } from './responses';
import { estimatesHold, normalisedOnce, savedIsTheSame, unitIsNoMeasure, unitsRoundTrip } from './round-trips';
import { broughtBlocksGiveTheSame, mirroredBlocksGiveTheSame } from './symmetry';
import { expectPromisedHip, expectWholeOutlines, expectWorking } from './whole';

// Every property on measured people, one by one: ANSUR II (NATICK/TR-15/007, 2014) and the children of UM-HSRI-77-17
// (1977). A run takes a share of them, the same each time; `LEGWORK_SHARE` with a number takes another, with `today` that of the day,
// `LEGWORK_EVERY=1` takes everybody, `LEGWORK_PART=1/2` half of them, so that two processes share the work.

/** So many people a run, and two designs for each. */
const PEOPLE = 16;
const DAY = 86_400_000;
/** What stands where the number of a share is asked for: a run on another day takes other people. */
const TODAY = 'today';

interface Person {
  readonly id: string;
  readonly body: Project['body'];
}

const people: readonly Person[] = [...surveyBodies(), ...childBodies()];
const asked = process.env.LEGWORK_SHARE ?? '0';
const chosen = asked === TODAY ? Math.floor(Date.now() / DAY) : Number(asked);
const [part = 1, parts = 1] = (process.env.LEGWORK_PART ?? '1/1').split('/').map(Number);
const stride = Math.max(1, every ? parts : Math.floor(people.length / PEOPLE));
const first = every ? part - 1 : chosen % stride;

const moves: Moves = new Map();
/** How often each property was compared, and what didn't hold. */
const compared = new Map<string, number>();
const faults: string[] = [];
let refused = 0;
let farthestTyped = 0;

/** What must hold of one project; the amounts change from body to body with n. */
function properties(project: Project, n: number): Readonly<Record<string, () => unknown>> {
  const free = withoutCrotch(project);
  const amount = 1 + ((7 * n) % 30);
  return {
    whole: () => {
      const d = draftOrRefusal(project);
      if (!d) return false;
      expectWholeOutlines(d);
      expectPromisedHip(d);
      expectWorking(d);
      expect(netLeg(project)?.outline).toEqual(netOutline(d));
      return true;
    },
    'fuller hip': () => fullerHipIsWider(free, amount),
    'more spread': () => spreadCountsTwice(project, amount),
    'longer rise': () => longerRiseIsDeeper(free, amount),
    'longer leg': () => longerLegIsLonger(project, amount),
    'a millimetre': () => aMillimetreMovesLittle(project, n % 2 === 0 ? 1 : -1, moves),
    mirrored: () => mirroredBlocksGiveTheSame(project, 13 * amount, -29 * amount),
    brought: () => broughtBlocksGiveTheSame(free),
    saved: () => savedIsTheSame(project),
    normalised: () => normalisedOnce(project),
    estimates: () => estimatesHold(project),
    'unit kept in': () => unitIsNoMeasure(project),
    'units typed': () => {
      farthestTyped = Math.max(farthestTyped, unitsRoundTrip(project, n % 2 === 0 ? 'inch' : 'cm') ?? 0);
    },
  };
}

function tried(person: Person, n: number): void {
  const project = designed(person.body, n);
  if (!netLeg(project)) refused += 1;
  for (const [name, holds] of Object.entries(properties(project, n))) {
    try {
      if (holds() !== false) compared.set(name, (compared.get(name) ?? 0) + 1);
    } catch (error) {
      faults.push(`${person.id}, design ${n % DESIGNS}, ${name}: ${String(error).split('\n')[0]}`);
    }
  }
}

let cases = 0;

beforeAll(
  () => {
    if (!surveyIsHere) console.log('The survey is not beside this checkout: ten percentile bodies stand in for it.');
    if (!childrenAreHere)
      console.log('The children’s survey is not beside this checkout: nine medians stand in for it.');
    for (let i = first; i < people.length; i += stride) {
      const person = people[i] as Person;
      // The usual design, and another one that goes round with the people and, in a share, with its number.
      for (const n of [0, 1 + ((i + (every ? 0 : chosen)) % (DESIGNS - 1))]) tried(person, n);
      cases += 2;
      if (every && cases % 1000 === 0)
        console.log(`${cases} of ${(2 * people.length) / parts}, ${faults.length} faults`);
    }
  },
  every ? 4 * 3_600_000 : 120_000,
);

test('every property holds on the measured people of this share, in two designs each', () => {
  console.log(
    every
      ? `part ${part} of ${parts}`
      : `share ${chosen}: every ${stride}th of ${people.length} people from number ${first}`,
  );
  console.log(
    `${cases} drafts, ${refused} refused; compared: ${[...compared].map(([k, v]) => `${k} ${v}`).join(' · ')}`,
  );
  console.log(`a millimetre moves: ${movesTold(moves)}; typing: ${farthestTyped.toFixed(3)}`);
  if (faults.length > 0) console.log(faults.slice(0, 60).join('\n'));
  expect(faults).toEqual([]);
});

test('enough of it could be compared', () => {
  expect(cases).toBeGreaterThanOrEqual(2 * Math.min(PEOPLE, people.length / parts - 1));
  for (const [name, count] of compared) expect(count, name).toBeGreaterThan(0.8 * cases);
});
