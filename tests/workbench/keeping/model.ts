import { EXAMPLE } from '../../../src/workbench/shelf/keeping';

/** A project as the model knows it: plain data. */
export type Tree = { readonly [key: string]: unknown };

export interface Spot {
  readonly id: string;
  readonly project: Tree;
}

/** A project with all that is kept of it. */
export interface Snap extends Spot {
  readonly past: readonly Spot[];
  readonly future: readonly Spot[];
  /** What was half typed, by field; only what can't be read is kept. */
  readonly entries: Readonly<Record<string, { readonly text: string; readonly bad: boolean }>>;
}

interface Slot {
  readonly revision: number;
  readonly snap: Snap;
  readonly broken: boolean;
}

/** One project on the shelf: two copies in turn, and the way back. */
export interface Row {
  slots: [Slot | undefined, Slot | undefined];
  way: Pick<Snap, 'past' | 'future'> & { readonly broken?: boolean };
}

export interface ModelTab {
  /** Whether there is a project: before, nothing is kept and nothing can be come back to. */
  begun: boolean;
  snap: Snap;
  running: string | undefined;
  readonly unkept: Map<string, Snap>;
  readonly bases: Map<string, number>;
  held: string | undefined;
  /** The project that is shown here and held by the other tab. */
  waits: string | undefined;
}

export interface Model {
  disk: 'well' | 'full' | 'none';
  readonly rows: Map<string, Row>;
  readonly notes: Map<string, { readonly snap: Snap; readonly revision: number }>;
  last: string | undefined;
  readonly tabs: ModelTab[];
  /** Under what name the program put a project of its own that is none of the known ones, which no model can know. */
  readonly newest: (known: ReadonlySet<string>, project: Tree) => Promise<string>;
}

const MOST = 200;
const NAME_KEPT = 72;

export const newTab = (project: Tree, id: string): ModelTab => ({
  begun: false,
  snap: { id, project, past: [], future: [], entries: {} },
  running: undefined,
  unkept: new Map(),
  bases: new Map(),
  held: undefined,
  waits: undefined,
});

export const newestSlot = (row: Row | undefined): Slot | undefined =>
  row?.slots.filter((slot) => slot && !slot.broken).sort((a, b) => (b?.revision ?? 0) - (a?.revision ?? 0))[0];

/** A project with another value at a dotted path. */
export function withAt(tree: Tree, path: string, value: unknown): Tree {
  const [key = '', ...rest] = path.split('.');
  if (rest.length === 0) return { ...tree, [key]: value };
  const inner = typeof tree[key] === 'object' && tree[key] !== null ? (tree[key] as Tree) : {};
  return { ...tree, [key]: withAt(inner, rest.join('.'), value) };
}

export function at(tree: Tree, path: string): unknown {
  return path.split('.').reduce<unknown>((here, key) => (here as Tree | undefined)?.[key], tree);
}

const known = new WeakMap<object, string>();

/** The same data, whatever the order of its fields; projects don't change, and are written once. */
export function canon(value: object): string {
  const before = known.get(value);
  if (before !== undefined) return before;
  const text = JSON.stringify(value, (_, one) =>
    typeof one === 'object' && one !== null && !Array.isArray(one)
      ? Object.fromEntries(Object.entries(one).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : one,
  );
  known.set(value, text);
  return text;
}

const spotText = ({ id, project }: Spot): string => id + canon(project);

/** All of a state in one text. */
export const snapText = ({ id, project, past, future, entries }: Snap): string =>
  [id, canon(project), ...past.map(spotText), '', ...future.map(spotText), canon(entries)].join('\n');

const unitless = (project: Tree): string => canon({ ...project, units: '' });

/** A change: what was before can be come back to, unless the same change goes on. */
export function change(tab: ModelTab, project: Tree, key: string, id = tab.snap.id): void {
  const { snap } = tab;
  const here = { id: snap.id, project: snap.project };
  const past = tab.running === key || !tab.begun ? snap.past : [...snap.past, here].slice(-MOST);
  tab.begun = true;
  tab.snap = { ...snap, id, project, past, future: [] };
  tab.running = key;
  mark(tab);
}

export function mark(tab: ModelTab): void {
  if (tab.begun) tab.unkept.set(tab.snap.id, tab.snap);
}

export function travel(tab: ModelTab, way: 'back' | 'forth'): void {
  const { id, project, past, future } = tab.snap;
  const here = { id, project };
  const to = way === 'back' ? past.at(-1) : future[0];
  if (!to) return;
  tab.snap = {
    id: to.id,
    project: { ...to.project, units: project.units },
    past: way === 'back' ? past.slice(0, -1) : [...past, here],
    future: way === 'back' ? [here, ...future] : future.slice(1),
    entries: {},
  };
  tab.running = undefined;
  mark(tab);
}

/** A project of its own, whose steps are its own. */
function copied(snap: Snap, id: string): Snap {
  const { name } = snap.project as { name: string };
  const own = `${name.slice(0, NAME_KEPT)}, copy`;
  const spot = (one: Spot): Spot =>
    one.id !== snap.id ? one : { id, project: one.project.name === name ? { ...one.project, name: own } : one.project };
  const project = { ...snap.project, name: own };
  return { ...snap, id, project, past: snap.past.map(spot), future: snap.future.map(spot) };
}

const other = (model: Model, tab: ModelTab): ModelTab | undefined => model.tabs.find((one) => one !== tab);

/** What can be had of a project on the shelf. */
function taken(model: Model, id: string): Snap | undefined {
  const row = model.rows.get(id);
  const slot = newestSlot(row);
  return row && slot && { ...slot.snap, past: row.way.past, future: row.way.future };
}

function show(model: Model, tab: ModelTab, snap: Snap): void {
  const base = newestSlot(model.rows.get(snap.id))?.revision;
  tab.snap = snap;
  tab.begun = true;
  tab.running = undefined;
  if (base !== undefined) tab.bases.set(snap.id, base);
}

/** Shows what is kept of a project by now, where nothing was changed of it here. */
function follow(model: Model, tab: ModelTab, id: string): void {
  const snap = taken(model, id);
  if (model.disk === 'none' || tab.snap.id !== id || tab.unkept.has(id) || !snap) return;
  show(model, tab, snap);
}

export function letGo(model: Model, tab: ModelTab): void {
  const { held } = tab;
  tab.held = undefined;
  tab.waits = undefined;
  const next = other(model, tab);
  if (held === undefined || next?.waits !== held) return;
  next.waits = undefined;
  if (next.snap.id !== held) return;
  next.held = held;
  follow(model, next, held);
}

function takeHold(model: Model, tab: ModelTab, id: string): boolean {
  if (tab.held === id) return true;
  letGo(model, tab);
  if (other(model, tab)?.held === id) {
    tab.waits = id;
    return false;
  }
  tab.held = id;
  return true;
}

/** Writes a project to the shelf; false where somebody else has written something newer. */
function write(model: Model, snap: Snap, base: number): boolean | 'failed' {
  if (model.disk === 'none') return 'failed';
  const row = model.rows.get(snap.id) ?? { slots: [undefined, undefined], way: { past: [], future: [] } };
  const newest = newestSlot(row);
  if (newest && newest.revision > base) return false;
  if (model.disk === 'full') return 'failed';
  row.slots[newest && row.slots[0] === newest ? 1 : 0] = { revision: base + 1, snap: keptOf(snap), broken: false };
  row.way = { past: snap.past, future: snap.future };
  model.rows.set(snap.id, row);
  model.last = snap.id;
  return true;
}

const keptOf = (snap: Snap): Snap => ({
  ...snap,
  entries: Object.fromEntries(Object.entries(snap.entries).filter(([, { bad }]) => bad)),
});

const knownIds = (model: Model): ReadonlySet<string> =>
  new Set([
    ...model.rows.keys(),
    ...model.notes.keys(),
    ...model.tabs.flatMap(({ snap, unkept }) =>
      [snap, ...unkept.values(), ...snap.past, ...snap.future].map(({ id }) => id),
    ),
  ]);

const ownCopy = async (model: Model, snap: Snap): Promise<Snap> =>
  copied(snap, await model.newest(knownIds(model), copied(snap, '').project));

/** What is on the bench of a tab becomes a project of its own. */
export async function copyHere(model: Model, tab: ModelTab): Promise<void> {
  if (tab.waits === tab.snap.id) tab.unkept.delete(tab.snap.id);
  tab.snap = await ownCopy(model, tab.snap);
  tab.begun = true;
  tab.running = undefined;
  mark(tab);
}

async function apart(model: Model, tab: ModelTab, snap: Snap): Promise<void> {
  if (tab.snap.id === snap.id) {
    tab.unkept.delete(snap.id);
    tab.bases.delete(snap.id);
    await copyHere(model, tab);
    model.notes.delete(snap.id);
    model.notes.set(tab.snap.id, { snap: keptOf(tab.snap), revision: 1 });
    return;
  }
  if (model.disk !== 'well') return;
  write(model, await ownCopy(model, snap), 0);
  tab.unkept.delete(snap.id);
  model.notes.delete(snap.id);
  news(model, tab);
}

/** The other tab hears that something was kept, and shows what it waits for. */
function news(model: Model, tab: ModelTab): void {
  const next = other(model, tab);
  if (next && next.waits !== undefined && next.waits === next.snap.id) follow(model, next, next.waits);
}

async function save(model: Model, tab: ModelTab, snap: Snap): Promise<void> {
  const newest = newestSlot(model.rows.get(snap.id));
  const same = newest && unitless(newest.snap.project) === unitless(snap.project);
  const base = tab.bases.get(snap.id) ?? (same ? newest.revision : 0);
  const done = write(model, snap, base);
  if (done === 'failed') return;
  if (!done) {
    await apart(model, tab, snap);
    return;
  }
  tab.bases.set(snap.id, base + 1);
  tab.unkept.delete(snap.id);
  model.notes.delete(snap.id);
  news(model, tab);
}

/** Keeps all that is not kept yet. */
export async function flush(model: Model, tab: ModelTab): Promise<void> {
  for (const snap of [...tab.unkept.values()]) {
    const { id } = snap;
    const shown = tab.snap.id === id;
    const free = shown ? takeHold(model, tab, id) : tab.held === id || other(model, tab)?.held !== id;
    if (free) await save(model, tab, snap);
    else await apart(model, tab, snap);
  }
}

/** The page may be gone the next moment: what is not kept is noted. */
export async function leave(model: Model, tab: ModelTab): Promise<string | undefined> {
  if (tab.waits === tab.snap.id && tab.unkept.has(tab.snap.id)) await copyHere(model, tab);
  for (const snap of tab.unkept.values())
    model.notes.set(snap.id, { snap: keptOf(snap), revision: (tab.bases.get(snap.id) ?? 0) + 1 });
  const { id } = tab.snap;
  return tab.unkept.has(id) || tab.bases.has(id) ? id : undefined;
}

/** The example is looked at, which is kept by nobody before it is changed. */
export function look(model: Model, tab: ModelTab, { id, project }: Spot): void {
  tab.snap = { id, project, past: [], future: [], entries: {} };
  tab.begun = true;
  tab.running = undefined;
  letGo(model, tab);
}

/**
 * A tab that was opened shows what was open last.
 *
 * @param shown what the program shows, for the name that it gave the example
 */
export async function start(model: Model, tab: ModelTab, remembered: string | undefined, shown: Spot): Promise<void> {
  const left: string[] = [];
  for (const [id, { snap, revision }] of [...model.notes]) {
    if (other(model, tab)?.held === id) continue;
    let done = write(model, snap, revision - 1);
    const newer = newestSlot(model.rows.get(id));
    if (done === false && newer && canon(newer.snap.project) !== canon(snap.project)) {
      done = model.disk === 'full' ? 'failed' : write(model, await ownCopy(model, snap), 0);
    }
    if (done === 'failed') left.push(id);
    else model.notes.delete(id);
  }
  const id = remembered ?? (left.length === 0 && model.disk !== 'none' ? model.last : undefined);
  const noted = id === undefined ? left[0] : left.find((one) => one === id);
  const note = noted === undefined ? undefined : model.notes.get(noted);
  if (remembered === EXAMPLE) look(model, tab, shown);
  else if (note) {
    tab.snap = note.snap;
    tab.begun = true;
    tab.bases.set(note.snap.id, note.revision - 1);
    mark(tab);
  } else if (id !== undefined) await open(model, tab, id);
}

/** Puts a kept project on the bench. */
export async function open(model: Model, tab: ModelTab, id: string): Promise<boolean> {
  await flush(model, tab);
  const mine = tab.unkept.get(id);
  const kept = taken(model, id);
  if (mine) {
    tab.snap = mine;
    tab.begun = true;
  } else if (model.disk === 'none' || !kept) return false;
  else show(model, tab, kept);
  tab.running = undefined;
  takeHold(model, tab, id);
  return true;
}
