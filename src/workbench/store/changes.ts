import { type AskedKey, type BlockToldKey, ESTIMATED, measurements } from '../../body';
import type { Check } from '../../check';
import {
  applyRemedy,
  type Draft,
  draft,
  fieldName,
  NEEDED,
  newProject,
  openProject,
  type Project,
  valueAt,
  withoutLastPrint,
  withValue,
} from '../../project';
import type { BroughtBlocks } from '../../trace';
import { inTurn, own, type Phrase, type Problem, printPhrase, type Result, said, say, words } from '../../words';
import { isWaiting } from './asked';
import { type Moment, momentOf, noHistory, placeOf, remember, type stepBack } from './history';
import { namedForWearer, UNNAMED } from './names';
import { newId } from './new-id';
import { refusal } from './refusal';
import type { BenchState, Entry, Field } from './state';

const UNMEASURED: Entry = { text: '', problem: say`Still to be measured.` };

/** The part of the state that an action replaces. */
export type Change = Partial<BenchState>;

/** Drafts a changed project once, here and not while the screen is drawn; the last good draft stays where it can't be drawn. */
export function redrawn(project: Project): Change {
  const result = drawnSafely(project);
  return result.ok ? { project, draft: result.value, problems: [] } : { project, problems: result.problems };
}

/** The draft of a project, or why there is none: a fault of the program while drafting is said like a number that can't be. */
export function drawnSafely(project: Project): Result<Draft> {
  try {
    return draft(project);
  } catch (fault) {
    return { ok: false, problems: undrawable(fault) };
  }
}

/** A fault of the program must not swallow what someone types: it is logged, and said as a problem like any other. */
export function undrawable(fault: unknown): readonly Problem[] {
  console.error(fault);
  const phrase = say`These numbers can’t be drawn together; the last change was one too many.`;
  return [{ field: 'project', value: undefined, phrase }];
}

/** What is left by a change, to come back to: of prints only the last one counts, which goes along where the project stays. */
function left(state: BenchState, label: string, id: string): Moment {
  return momentOf(label, placeOf(id === state.id ? { id, project: withoutLastPrint(state.project) } : state));
}

/**
 * The state after a change of the project; what goes on under the same key is one change to undo.
 *
 * @param id under which the project is kept: another where it is not the same one any more
 */
function changed(state: BenchState, project: Project, label: string, key: string, id = state.id): Change {
  const goesOn = state.running === key;
  return {
    ...redrawn(project),
    begun: true,
    before: goesOn ? state.before : state.draft.measures,
    // Before the first project there was none to come back to.
    history: state.begun ? remember(state.history, left(state, label, id), goesOn) : noHistory,
    running: key,
    id,
  };
}

/** The state after a keystroke in a field. */
export function typed(state: BenchState, field: Field, text: string): Change {
  const reading = field.quantity.read(text, state.project.units);
  const missing = reading.ok && reading.value === undefined && !field.optional;
  const problem = reading.ok ? (missing ? UNMEASURED.problem : undefined) : reading.phrase;
  const entries = { ...state.entries, [field.path]: { text, problem } };
  if (!reading.ok || missing || reading.value === valueAt(state.project, field.path)) return { entries };
  const project = withValue(state.project, field.path, reading.value);
  return {
    ...changed(state, relieved(state, project, field.path), said(fieldName(field.path)), field.path),
    entries: stoodIn(field.path).reduce((left, path) => (isWaiting(state, path) ? without(left, path) : left), entries),
  };
}

/** The paths of the measurements that this one may be taken in place of. */
const stoodIn = (path: string): readonly string[] =>
  measurements.flatMap(({ key, inPlace }) => (`body.${inPlace}` === path ? [`body.${key}`] : []));

/** A measurement that still waits, and in whose place another was taken, waits no more: it is found from that one. */
const relieved = (state: BenchState, project: Project, path: string): Project =>
  stoodIn(path).reduce((left, other) => (isWaiting(state, other) ? withValue(left, other, undefined) : left), project);

/** A choice also clears what was typed at its place, so that no old sentence stays behind. */
export function chosen(state: BenchState, path: string, value: unknown): Change {
  const stale = Object.keys(state.entries).filter((key) => key === path || key.startsWith(`${path}.`));
  const project = namedForWearer(state.project, withValue(state.project, path, value));
  return {
    ...changed(state, project, said(fieldName(path)), path),
    entries: stale.reduce(without, state.entries),
  };
}

/** The state after estimates were asked for in the place of measurements: one change to undo. */
export function estimated(state: BenchState, keys: readonly AskedKey[]): Change {
  const paths = keys.map((key) => `body.${key}`);
  const project = paths.reduce((kept, path) => withValue(kept, path, ESTIMATED), state.project);
  const [only] = paths;
  const label = only !== undefined && paths.length === 1 ? said(fieldName(only)) : words`estimates`;
  return {
    ...changed(state, project, label, 'estimate'),
    entries: paths.reduce(without, state.entries),
    running: undefined,
  };
}

/** The state after a measurement was taken from the brought blocks, where no tape took it; or was given up again. */
export function takenFromBlocks(state: BenchState, key: BlockToldKey, taken: boolean): Change {
  const path = `body.${key}`;
  const others = (state.project.body.fromBlock ?? []).filter((one) => one !== key);
  const next = taken ? [...others, key] : others;
  // What a field is drawn by while it waits is no number of a tape.
  const free = isWaiting(state, path) ? withValue(state.project, path, undefined) : state.project;
  const project = withValue(free, 'body.fromBlock', next.length > 0 ? next : undefined);
  return {
    ...changed(state, project, said(fieldName(path)), `${path} from the blocks`),
    entries: without(state.entries, path),
    running: undefined,
  };
}

/** The state after a remedy was applied; what was typed into its fields gives way. */
export function remedied(state: BenchState, check: Pick<Check, 'id' | 'fix'>): Change {
  if (!check.fix) return {};
  const paths = check.fix.changes.map((change) => change.path);
  const stale = Object.keys(state.entries).filter((key) =>
    paths.some((path) => key === path || key.startsWith(`${path}.`)),
  );
  const label = printPhrase(check.fix.label, state.project.units);
  return {
    ...changed(state, applyRemedy(state.project, check), label, `remedy ${check.id}`),
    entries: stale.reduce(without, state.entries),
    running: undefined,
  };
}

/** The entries without one that is done with. */
export function without(entries: BenchState['entries'], path: string): BenchState['entries'] {
  const { [path]: _gone, ...others } = entries;
  return others;
}

/** The state after a step back or forth; what was being typed is given up. */
export function travelled(state: BenchState, step: typeof stepBack<Moment>): Change {
  const returned = step(state.history, ({ label, id }) => left(state, label, id));
  if (!returned) return {};
  const { to, history } = returned;
  // What lies on the table as paper stays there, whatever is undone of the drawing.
  const { lastPrint } = to.id === state.id ? state.project : to.project;
  return {
    ...redrawn({ ...to.project, units: state.project.units, ...(lastPrint && { lastPrint }) }),
    before: state.draft.measures,
    id: to.id,
    history,
    running: undefined,
    entries: {},
  };
}

/** The state after a file was opened, or refused: then nothing changes but what is said of it. */
export function opened(state: BenchState, text: string, fileName: string): Change {
  const result = openProject(text);
  if (!result.ok) return { notice: { tone: 'refused', text: refusal(result.problems, fileName) } };
  return broughtIn(
    state,
    result.value,
    words`opening a file`,
    withNotes(words`“${own(fileName)}” is open.`, result.notes),
  );
}

/** What is told of a project that came in, and what else to know about it. */
export const withNotes = (told: string, notes: readonly Phrase[]): string =>
  [told, ...notes.map((note) => said(note))].join(' ');

/**
 * The state after a whole project came in from outside: a project of its own, so that the one before stays kept as it is.
 *
 * @param missing paths of needed measurements that it came without; they ask to be measured
 */
export function broughtIn(
  state: BenchState,
  project: Project,
  label: string,
  told: string,
  missing: readonly string[] = [],
): Change {
  return {
    ...changed(state, project, label, 'open', newId()),
    before: undefined,
    running: undefined,
    entries: Object.fromEntries(missing.map((path) => [path, UNMEASURED])),
    ...(missing.length > 0 ? { station: 'body' } : {}),
    notice: { tone: 'told', text: told },
  };
}

/**
 * A project with nothing chosen yet and the needed measurements still to be taken, in the units that are shown; until they
 * are in, the last drawing stays.
 */
export function startedFresh(state: BenchState): Change {
  const { units } = state.project;
  return {
    ...changed(state, newProject({ ...state.habits, units }, said(UNNAMED)), words`new measurements`, 'fresh', newId()),
    before: undefined,
    entries: Object.fromEntries(NEEDED.map((key) => [`body.${key}`, UNMEASURED])),
    running: undefined,
    station: 'body',
    notice: undefined,
  };
}

/**
 * The state after blocks were brought along.
 *
 * @param told what is said of them
 * @param anew whether they begin a project, as they do where there is none; its body is still to be measured
 */
export function withBlocks(state: BenchState, blocks: BroughtBlocks, told: Phrase, anew: boolean): Change {
  const begins = anew || !state.begun;
  const now = begins ? { ...state, ...startedFresh(state) } : state;
  const then = begins ? say`Now measure the body that they are for.` : say`Undo brings the others back.`;
  return {
    ...(begins ? { ...now, station: 'blocks' } : {}),
    ...chosen(now, 'block', blocks),
    running: undefined,
    notice: { tone: 'told', text: said(inTurn([told, then])) },
  };
}
