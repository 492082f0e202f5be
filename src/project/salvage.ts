import type { Problem, Result } from '../length';
import { valueAt, withValue } from './at-path';
import { completedJson } from './completed-json';
import { openProject, readProject } from './open';
import { checkedProject } from './schema';
import type { Project } from './types';

/** One field that could not be used as it stood in the file. */
export interface Repair {
  /** Why, and what stood there. */
  readonly problem: Problem;
  /** What is used instead; undefined where nothing is, because it must be measured or may be left out. */
  readonly now: unknown;
}

/** What could be saved of a broken project file. */
export interface Salvaged {
  readonly project: Project;
  /** Everything that was changed, in the order it was found; never empty. */
  readonly repairs: readonly Repair[];
  /** Paths of measurements without which nothing can be drafted, and which the file did not hold. */
  readonly missing: readonly string[];
  /** Whether the file's text ended in the middle. */
  readonly cutShort: boolean;
}

/** Each round takes at least one value out; a file with more faults than this is not worth saving. */
const MOST_ROUNDS = 40;

/** What a needed measurement is set to while it waits to be measured: a middling body, so that all else can be checked. */
const STAND_IN: Readonly<Record<string, number>> = {
  'body.waistGirth': 760,
  'body.hipGirth': 1000,
  'body.bodyRise': 270,
  'body.insideLeg': 760,
};

/**
 * Saves what can be used of a project file that can't be opened as it stands: field by field, a value that is out of
 * its limits or of the wrong kind gives way to its default, and everything else is kept, unknown fields too.
 *
 * @param text the file's text
 * @returns the project and the list of repairs, or why the file is none of ours, too new, or past help
 */
export function salvageProject(text: string): Result<Salvaged> {
  const whole = readProject(text);
  const completed = whole.ok ? text : completedJson(text);
  const read = whole.ok || completed === undefined ? whole : readProject(completed);
  // What was cut off so early that no body is in it is no project to go on with.
  if (!read.ok || typeof read.value.body !== 'object' || read.value.body === null)
    return whole.ok ? openedAnyhow(text) : whole;
  let project = read.value as unknown as Project;
  const broken: Problem[] = [];
  const missing: string[] = [];
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const checked = checkedProject(project);
    const [problem] = checked.problems;
    if (!problem) {
      return {
        ok: true,
        value: {
          project: checked.project,
          repairs: repairsOf(broken, checked.project, missing),
          missing,
          cutShort: !whole.ok,
        },
      };
    }
    const standIn = STAND_IN[problem.field];
    const field = standIn === undefined ? nearestSet(project, problem.field) : problem.field;
    if (field === undefined) break;
    if (standIn !== undefined) missing.push(field);
    broken.push(problem);
    project = withValue(project, field, standIn);
  }
  return whole.ok ? openedAnyhow(text) : whole;
}

/** The field itself or, where nothing stands there, the nearest group round it: what must give way. Never the whole body. */
function nearestSet(project: Project, field: string): string | undefined {
  const keys = field.split('.');
  while (keys.length > 0 && valueAt(project, keys.join('.')) === undefined) keys.pop();
  const nearest = keys.join('.');
  return nearest === '' || nearest === 'body' ? undefined : nearest;
}

/** The refusal of a file that is past help. */
function openedAnyhow(text: string): Result<never> {
  const result = openProject(text);
  return result.ok ? { ok: false, problems: [] } : result;
}

const repairsOf = (broken: readonly Problem[], project: Project, missing: readonly string[]): readonly Repair[] =>
  broken.map((problem) => ({
    problem,
    now: missing.includes(problem.field) ? undefined : valueAt(project, problem.field),
  }));
