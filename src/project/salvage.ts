import { type Phrase, type Problem, type Result, say } from '../words';
import { valueAt, withValue } from './at-path';
import { jsonOutline } from './json-text';
import { LARGEST_FILE, openProject, readProject, unmarked } from './open';
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
  /** Everything that was changed, in the order it was found. */
  readonly repairs: readonly Repair[];
  /** Paths of measurements without which nothing can be drafted, and which the file did not hold. */
  readonly missing: readonly string[];
  /** Whether the file's text ended in the middle. */
  readonly cutShort: boolean;
  /** What else a person should know about it. */
  readonly notes: readonly Phrase[];
}

/** Each round takes out all that is found; more are only needed where one fault hid another, as a body's contradictions do. */
const MOST_ROUNDS = 12;

/** What a needed measurement is set to while it waits to be measured: a middling body, so that all else can be checked. */
const STAND_IN: Readonly<Record<string, number>> = {
  'body.waistGirth': 760,
  'body.hipGirth': 1000,
  'body.bodyRise': 270,
  'body.insideLeg': 760,
};
const standInFor = (field: string): number | undefined =>
  Object.hasOwn(STAND_IN, field) ? STAND_IN[field] : undefined;

/**
 * Saves what can be used of a project file that can't be opened as it stands: field by field, a value that is out of
 * its limits or of the wrong kind gives way to its default, and everything else is kept, unknown fields too.
 *
 * @param text the file's text
 * @returns the project and the list of repairs, or why the file is none of ours, too new, or past help
 */
export function salvageProject(text: string): Result<Salvaged> {
  const outline = text.length > LARGEST_FILE ? undefined : jsonOutline(unmarked(text));
  const whole = readProject(text, outline);
  const completed = whole.ok ? undefined : outline?.closed();
  const read = completed === undefined ? whole : readProject(completed);
  // What was cut off so early that no body is in it is no project to go on with.
  if (!read.ok || !isGroup(read.value.raw.body)) return whole.ok ? openedAnyhow(text) : whole;
  let project: object = read.value.raw;
  const broken: Problem[] = [...read.value.problems];
  const missing: string[] = [];
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const checked = checkedProject(project);
    if (checked.problems.length === 0) {
      const repairs = repairsOf(broken, checked.project, missing);
      const { notes } = read.value;
      return { ok: true, value: { project: checked.project, repairs, missing, cutShort: !whole.ok, notes } };
    }
    const ways = givingWay(project, checked.problems);
    if (!ways) break;
    for (const { field, problems } of ways) {
      const standIn = standInFor(field);
      if (standIn !== undefined) missing.push(field);
      broken.push(...problems);
      project = withValue(project, field, standIn);
    }
  }
  return whole.ok ? openedAnyhow(text) : whole;
}

const isGroup = (value: unknown): boolean => typeof value === 'object' && value !== null && !Array.isArray(value);

/** A field that must give way, and what is told of that. */
interface Way {
  readonly field: string;
  readonly problems: readonly Problem[];
}

/** What must give way to the problems, each field once; undefined where nothing would be left. */
function givingWay(project: object, problems: readonly Problem[]): readonly Way[] | undefined {
  const ways = new Map<string, Way>();
  for (const problem of problems) {
    const field = wayFor(project, problem.field);
    if (field === undefined) return undefined;
    const before = ways.get(field);
    // Of traced blocks the first thing wrong is reason enough; they may hold thousands of numbers.
    if (!before) ways.set(field, { field, problems: [problem] });
    else if (problem.field === field) ways.set(field, { field, problems: [...before.problems, problem] });
  }
  return [...ways.values()].map(({ field, problems: [first, ...others] }) => {
    const told = first && first.field !== field ? [wholeOf(project, field)] : [];
    return { field, problems: [...(first ? [first] : []), ...others, ...told] };
  });
}

/** A group that gives way as a whole because something in it can't be used or is missing. */
const wholeOf = (project: object, field: string): Problem => ({
  field,
  value: valueAt(project, field),
  phrase: LEFT_OUT[field] ?? say`is left out as a whole because of that; the usual choice takes its place.`,
});

const LEFT_OUT: Readonly<Record<string, Phrase>> = {
  block: say`the blocks that were brought can’t be used without that; blocks drafted from the measurements take their place.`,
  lastPrint: say`is left out as a whole because of that; which sheets were printed is not known any more.`,
};

/** What must give way to a problem: the field itself or, where nothing stands there, the nearest group round it. Never the whole body. */
function wayFor(project: object, field: string): string | undefined {
  if (standInFor(field) !== undefined) return field;
  // A tracing with a hole in it fits nobody; only its knee may be left out. Of a table any number may be.
  if (valueAt(project, 'block.source') !== 'numbers' && /^block\.(front|back)\.(?!kneeLevel$)/.test(field))
    return 'block';
  // A print is known whole or not at all.
  if (field.startsWith('lastPrint.')) return 'lastPrint';
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
