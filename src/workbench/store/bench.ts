import { create } from 'zustand';
import type { Phrase, Problem, Units } from '../../length';
import { type Draft, draft, exampleProject, type Measures, openProject, type Project } from '../../project';
import { valueAt, withValue } from './at-path';
import { type History, noHistory, remember, stepBack, stepForward } from './history';
import { FIELD_LIMITS } from './limits';
import { fieldName } from './names';
import { type Quantity, stepped } from './quantity';
import { refusal } from './refusal';
import type { Station } from './stations';

/** What a field is: where its number lives in the project, and how it is typed. */
export interface Field {
  readonly path: string;
  readonly quantity: Quantity;
  /** May be left empty. */
  readonly optional?: boolean;
}

/** What was typed into a field: kept while the field is edited, and for as long as it can't be read. */
export interface Entry {
  readonly text: string;
  readonly problem: Phrase | undefined;
}

/** One sentence about something that happened as a whole, e.g. a file that could not be opened. */
export interface Notice {
  readonly tone: 'told' | 'refused';
  readonly text: string;
}

export interface Bench {
  readonly project: Project;
  /** Of the present project, or of the last one that could be drawn. */
  readonly draft: Draft;
  /** The measures before the change that is going on, to say what it moved. */
  readonly before: Measures | undefined;
  /** Why the present project can't be drawn; empty where it can. */
  readonly problems: readonly Problem[];
  readonly entries: Readonly<Record<string, Entry>>;
  readonly history: History;
  /** Keystrokes in one field are one change; this names the one that is going on. */
  readonly running: string | undefined;
  readonly station: Station;
  /** The field that has the focus. */
  readonly field: string | undefined;
  /** The step of the working that is lit on the drawing. */
  readonly step: string | undefined;
  readonly workingShown: boolean;
  /** Whether turnings are shown folded over, or laid flat. */
  readonly folded: boolean;
  readonly notice: Notice | undefined;

  readonly type: (field: Field, text: string) => void;
  readonly stepField: (field: Field, count: number, from: number | undefined) => void;
  readonly enter: (path: string) => void;
  readonly leave: (path: string) => void;
  readonly choose: (path: string, value: unknown) => void;
  /** Like `choose`, but all that comes until the control is left is one change. */
  readonly slide: (path: string, value: unknown) => void;
  readonly showUnits: (units: Units) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly goTo: (station: Station) => void;
  readonly light: (step: string | undefined) => void;
  readonly showWorking: (shown: boolean) => void;
  readonly fold: (folded: boolean) => void;
  readonly open: (text: string, fileName: string) => void;
  readonly startFresh: () => void;
  readonly tell: (notice: Notice | undefined) => void;
}

/** The four measurements without which nothing can be drafted. */
const NEEDED = ['waistGirth', 'hipGirth', 'bodyRise', 'insideLeg'] as const;

const UNMEASURED: Entry = { text: '', problem: ['Still to be measured.'] };

type Change = Partial<Bench>;

/** Drafts a changed project once, here and not while the screen is drawn; the last good draft stays where it can't be drawn. */
function redrawn(project: Project): Change {
  const result = draft(project);
  return result.ok ? { project, draft: result.value, problems: [] } : { project, problems: result.problems };
}

function changed(state: Bench, project: Project, label: string, key: string): Change {
  const goesOn = state.running === key;
  return {
    ...redrawn(project),
    before: goesOn ? state.before : state.draft.measures,
    history: goesOn ? { ...state.history, future: [] } : remember(state.history, { label, project: state.project }),
    running: key,
  };
}

/** The start: the finished example, which can always be drawn. */
function start(): Pick<Bench, 'project' | 'draft'> {
  const result = draft(exampleProject);
  if (!result.ok) throw new Error('the example can not be drafted');
  return { project: exampleProject, draft: result.value };
}

function typed(state: Bench, field: Field, text: string): Change {
  const reading = field.quantity.read(text, state.project.units);
  const missing = reading.ok && reading.value === undefined && !field.optional;
  const problem = reading.ok ? (missing ? UNMEASURED.problem : undefined) : reading.phrase;
  const entries = { ...state.entries, [field.path]: { text, problem } };
  if (!reading.ok || missing || reading.value === valueAt(state.project, field.path)) return { entries };
  return {
    ...changed(state, withValue(state.project, field.path, reading.value), fieldName(field.path), field.path),
    entries,
  };
}

/** A choice also clears what was typed at its place, so that no old sentence stays behind. */
function chosen(state: Bench, path: string, value: unknown): Change {
  const stale = Object.keys(state.entries).filter((key) => key === path || key.startsWith(`${path}.`));
  return {
    ...changed(state, withValue(state.project, path, value), fieldName(path), path),
    entries: stale.reduce(without, state.entries),
  };
}

function without(entries: Bench['entries'], path: string): Bench['entries'] {
  const { [path]: _gone, ...others } = entries;
  return others;
}

/** The whole workbench: an immutable project, what was typed, and everything that is derived from them. */
export const useBench = create<Bench>()((set, get) => ({
  ...start(),
  before: undefined,
  problems: [],
  entries: {},
  history: noHistory,
  running: undefined,
  station: 'edges',
  field: undefined,
  step: undefined,
  workingShown: false,
  folded: true,
  notice: undefined,

  type: (field, text) => set((state) => typed(state, field, text)),
  stepField(field, count, from) {
    const { units } = get().project;
    const base = valueAt(get().project, field.path) ?? from;
    if (typeof base !== 'number') return;
    const next = stepped(base, field.quantity.step(units), count);
    const { lowest, highest } = FIELD_LIMITS[field.path] ?? { lowest: 0, highest: Number.POSITIVE_INFINITY };
    const kept = Math.min(highest, Math.max(lowest, next));
    get().type(field, field.quantity.print(kept, units));
  },
  enter: (path) => set({ field: path }),
  leave: (path) =>
    set((state) => ({
      field: state.field === path ? undefined : state.field,
      running: state.running === path ? undefined : state.running,
      entries: state.entries[path]?.problem ? state.entries : without(state.entries, path),
    })),
  choose: (path, value) => set((state) => ({ ...chosen(state, path, value), running: undefined })),
  slide: (path, value) => set((state) => chosen(state, path, value)),
  // Only how numbers are printed: nothing to undo, and the draft's numbers stay the same.
  showUnits: (units) => set((state) => redrawn({ ...state.project, units })),
  undo() {
    const back = stepBack(get().history, get().project);
    if (back) set((state) => travelled(state, back));
  },
  redo() {
    const forward = stepForward(get().history, get().project);
    if (forward) set((state) => travelled(state, forward));
  },
  goTo: (station) => set({ station, step: undefined, running: undefined }),
  light: (step) => set({ step }),
  showWorking: (workingShown) => set({ workingShown, step: undefined }),
  fold: (folded) => set({ folded }),
  open: (text, fileName) => set((state) => opened(state, text, fileName)),
  startFresh: () =>
    set((state) => {
      const body = { label: '', ...Object.fromEntries(NEEDED.map((key) => [key, state.project.body[key]])) };
      const project = { ...exampleProject, name: 'My lounge pant', units: state.project.units, body };
      return {
        ...changed(state, project, 'new measurements', 'fresh'),
        entries: Object.fromEntries(NEEDED.map((key) => [`body.${key}`, UNMEASURED])),
        running: undefined,
        station: 'body',
        notice: undefined,
      };
    }),
  tell: (notice) => set({ notice }),
}));

function travelled(state: Bench, to: { project: Project; history: History }): Change {
  return {
    ...redrawn({ ...to.project, units: state.project.units }),
    before: state.draft.measures,
    history: to.history,
    running: undefined,
    entries: {},
  };
}

function opened(state: Bench, text: string, fileName: string): Change {
  const result = openProject(text);
  if (!result.ok) return { notice: { tone: 'refused', text: refusal(result.problems, fileName) } };
  return {
    ...changed(state, result.value, 'opening a file', 'open'),
    before: undefined,
    running: undefined,
    entries: {},
    notice: { tone: 'told', text: `“${fileName}” is open.` },
  };
}
