import { bodyRemarks } from '../body';
import type { Mm } from '../length';
import { isBrought } from '../trace';
import { mm, number, own, type Phrase, type Problem, say } from '../words';
import { valueAt, withValue } from './at-path';
import { legIsDrawn, refusalOfPieces } from './cut-out';
import { checkedProject } from './schema';
import type { Project } from './types';

/** More than a person reads at once; each round drafts the leg once. */
const MOST_ROUNDS = 8;
/** Halvings with which the farthest value that can be drafted is found: 1/1000 of the way. */
const HALVINGS = 10;

/**
 * Everything that keeps a project from being drafted, found by drafting on with each refused choice set back to its
 * default; a leg whose lines are no leg is traced to the choice that spoils it.
 *
 * @param project checked, its defaults filled in
 * @param first what was refused
 */
export function allRefusals(project: Project, first: readonly Problem[]): readonly Problem[] {
  const found: Problem[] = [];
  let here = project;
  let refused = first;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const told = refused.flatMap((problem) => (problem.field === 'leg' ? causesOf(here, problem) : [problem]));
    const fresh = told.filter(({ field }) => found.every((other) => other.field !== field));
    if (fresh.length === 0) break;
    found.push(...fresh);
    const next = fresh.reduce((kept, { field }) => setBack(kept, field) ?? kept, here);
    const again = next === here ? undefined : refusalOfPieces(next);
    if (!again) break;
    here = next;
    refused = again;
  }
  return found;
}

/** The project with one choice as if it had never been made; undefined where that leaves it as it was, or is no project. */
function setBack(project: Project, field: string): Project | undefined {
  const set = valueAt(project, field);
  if (set === undefined) return undefined;
  const { project: back, problems } = checkedProject(withValue(project, field, undefined));
  return problems.length > 0 || valueAt(back, field) === set ? undefined : back;
}

/**
 * Which single choice, set back, makes a leg of lines that are none; where none does, what the measurements say about
 * each other.
 */
function causesOf(project: Project, problem: Problem): readonly Problem[] {
  for (const field of fieldsOf(project)) {
    const back = setBack(project, field);
    if (back && legIsDrawn(back))
      return [{ field, value: valueAt(project, field), phrase: wouldDo(project, back, field) }];
  }
  const bare = ['fit', 'leg', 'block'].reduce((kept, part) => setBack(kept, part) ?? kept, project);
  if (legIsDrawn(bare)) return [{ ...problem, value: project.leg }];
  const remarks = bodyRemarks(project.body);
  if (remarks.length === 0) return [{ field: 'body', value: project.body.label, phrase: MEASURE_AGAIN }];
  return remarks.map(({ keys, phrase }): Problem => {
    const key = keys[0] ?? 'hipGirth';
    return { field: `body.${key}`, value: project.body[key], phrase };
  });
}

const MEASURE_AGAIN: Phrase = say`no leg can be drawn from these measurements; measure rise, hip, hip depth and inside leg again, and look at the unit.`;

/**
 * Every choice that can spoil a leg: first what spoils nothing else, the edges; then corrections, leg, cloth and blocks;
 * then measurements that may be left out.
 */
function fieldsOf({ hem, waist, fit, sides, leg, cloth, block, body }: Project): readonly string[] {
  const parts = {
    hem,
    waist,
    fit: fit ?? {},
    'sides.left': sides?.left ?? {},
    'sides.right': sides?.right ?? {},
    leg,
    cloth,
    block: isBrought(block) ? {} : block,
    body,
  };
  return Object.entries(parts).flatMap(([part, values]) => keysOf(part, values));
}

const keysOf = (part: string, values: object): readonly string[] => Object.keys(values).map((key) => `${part}.${key}`);

/** What would be right: as far as the value can go, or without it. */
function wouldDo(project: Project, back: Project, field: string): Phrase {
  const [chosen, neutral] = [valueAt(project, field), valueAt(back, field)];
  const crossing = say`with this the lines of the leg cross or turn back`;
  if (field.startsWith('body.')) return say`${crossing}; measure it again, or leave it empty.`;
  if (typeof chosen !== 'number' || typeof neutral !== 'number')
    return typeof neutral === 'string'
      ? say`${crossing}; “${own(neutral)}” would do.`
      : say`${crossing}; leave it out.`;
  const farthest = farthestDrawn(project, field, neutral, chosen);
  const inwards = chosen > neutral ? Math.floor(farthest) : Math.ceil(farthest);
  const limit = field === 'leg.straighten' ? number(farthest, 2) : mm(inwards as Mm);
  return say`${crossing}; ${limit} would do.`;
}

/** The value nearest to the chosen one, on the way from the default, with which the leg can be drawn. */
function farthestDrawn(project: Project, field: string, neutral: number, chosen: number): number {
  let [good, bad] = [neutral, chosen];
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (good + bad) / 2;
    if (legIsDrawn(withValue(project, field, middle))) good = middle;
    else bad = middle;
  }
  return good;
}
