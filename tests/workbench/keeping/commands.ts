import fc from 'fast-check';
import { exampleProject, type Project, saveProject } from '../../../src/project';
import { say } from '../../../src/words';
import { LAST } from '../../../src/workbench/shelf/keeper';
import { length } from '../../../src/workbench/store/quantity';
import * as m from './model';
import { everything, notesOf, openTab, putRaw, settled, type Tab, type World } from './world';

/** The program and the model side by side. */
export interface Pair {
  readonly world: World;
  readonly model: m.Model;
  /** In the order of the model's. */
  readonly tabs: Tab[];
  /** What was put in the storage to damage it: all of it must be found there still. */
  readonly damaged: unknown[];
  removed: { readonly id: string; readonly row: m.Row; readonly putBack: () => Promise<void> } | undefined;
}

export type Command = readonly [name: keyof typeof DONE, which: number, value: number];

const DEPTHS = ['4.4', '4', '3.5', 'three', '', '999', '1 1/2', '0'];
const FINISHES = ['elasticCasing', 'drawstringCasing', 'knitBand'];
const JUNK: readonly unknown[] = [
  null,
  7,
  Number.NaN,
  'torn',
  '',
  [],
  {},
  new Date(0),
  'x'.repeat(3000),
  JSON.parse('{"__proto__":{"text":"a"},"constructor":1,"past":[null],"future":{}}'),
  { id: 'one', revision: Number.POSITIVE_INFINITY, text: '{}', check: 0 },
  { past: [{ label: 'a', id: 'b', project: { format: 'legwork-project', version: 99 } }], future: [] },
];

const point = (x: number, y: number) => [x, y];
const line = [[point(0, 0), point(0, 1), point(0, 2), point(0, 3)]];
const part = {
  edges: { waist: line, centre: line, crotch: line, inseam: line, hem: line, side: line },
  grainline: [point(0, 0), point(0, 9)],
  hipLevel: 5,
};

const started = exampleProject as unknown as m.Tree;
const NEEDED = ['body.waistGirth', 'body.hipGirth', 'body.bodyRise', 'body.insideLeg'];

interface Here {
  readonly pair: Pair;
  readonly index: number;
  readonly real: Tab;
  readonly tab: m.ModelTab;
  readonly model: m.Model;
  readonly world: World;
  readonly value: number;
}

const pick = <T>(all: readonly T[], value: number): T => all[value % all.length] as T;
const without = (entries: m.Snap['entries'], path: string) =>
  Object.fromEntries(Object.entries(entries).filter(([key]) => key !== path && !key.startsWith(`${path}.`)));

function choose({ real, tab }: Here, path: string, value: unknown): void {
  real.bench.getState().choose(path, value);
  tab.snap = { ...tab.snap, entries: without(tab.snap.entries, path) };
  m.change(tab, m.withAt(tab.snap.project, path, value), path);
  tab.running = undefined;
}

const spotOf = ({ id, project }: { readonly id: string; readonly project: object }): m.Spot => ({
  id,
  project: project as m.Tree,
});

async function reopen({ pair, index, model, world }: Here, session: ReturnType<typeof notesOf>, last?: string) {
  pair.tabs[index] = await openTab(world, session);
  const { bench } = pair.tabs[index] as Tab;
  const fresh = m.newTab(started, bench.getInitialState().id);
  model.tabs[index] = fresh;
  await m.start(model, fresh, last, spotOf(bench.getState()));
}

/** Everything that somebody can do, and all that can befall them. */
const DONE = {
  type({ real, tab, value }: Here) {
    const text = pick(DEPTHS, value);
    const path = 'hem.depth';
    real.bench.getState().type({ path, quantity: length }, text);
    const read = length.read(text, tab.snap.project.units as Project['units']);
    const bad = !read.ok || read.value === undefined;
    tab.snap = { ...tab.snap, entries: { ...tab.snap.entries, [path]: { text, bad } } };
    if (!bad && read.value !== m.at(tab.snap.project, path))
      m.change(tab, m.withAt(tab.snap.project, path, read.value), path);
    m.mark(tab);
  },
  leaveField({ real, tab }: Here) {
    const path = 'hem.depth';
    real.bench.getState().leave(path);
    if (tab.running === path) tab.running = undefined;
    const entry = tab.snap.entries[path];
    // What can't be read stays where it is, and so nothing changes.
    if (entry?.bad) return;
    if (entry) tab.snap = { ...tab.snap, entries: without(tab.snap.entries, path) };
    // To take away what was typed is a change to be kept, even where nothing was.
    m.mark(tab);
  },
  choose: (here: Here) => choose(here, 'waist.finish', pick(FINISHES, here.value)),
  bringBlocks: (here: Here) => choose(here, 'block', { source: 'drawn', front: part, back: part }),
  slide({ real, tab, value }: Here) {
    real.bench.getState().slide('leg.spread', value);
    tab.snap = { ...tab.snap, entries: without(tab.snap.entries, 'leg.spread') };
    m.change(tab, m.withAt(tab.snap.project, 'leg.spread', value), 'leg.spread');
  },
  rename({ real, tab, value }: Here) {
    real.bench.getState().slide('name', `name ${value}`);
    m.change(tab, m.withAt(tab.snap.project, 'name', `name ${value}`), 'name');
  },
  remedy({ real, tab, value }: Here) {
    const fix = { label: say`more`, changes: [{ path: 'waist.turnOfCloth', value: 1 + value / 100 }] };
    real.bench.getState().remedy({ id: 'any', fix } as never);
    m.change(tab, m.withAt(tab.snap.project, 'waist.turnOfCloth', 1 + value / 100), 'remedy any');
    tab.running = undefined;
  },
  units({ real, tab, value }: Here) {
    const units = pick(['cm', 'inch'] as const, value);
    real.bench.getState().showUnits(units);
    tab.snap = { ...tab.snap, project: { ...tab.snap.project, units } };
    m.mark(tab);
  },
  undo({ real, tab }: Here) {
    real.bench.getState().undo();
    m.travel(tab, 'back');
  },
  redo({ real, tab }: Here) {
    real.bench.getState().redo();
    m.travel(tab, 'forth');
  },
  openFile({ real, tab, value }: Here) {
    const project = { ...exampleProject, name: `file ${value}` };
    real.bench.getState().open(saveProject(project), 'a file');
    tab.running = undefined;
    m.change(tab, project as unknown as m.Tree, 'open', real.bench.getState().id);
    tab.snap = { ...tab.snap, entries: {} };
    tab.running = undefined;
    m.mark(tab);
  },
  startFresh({ real, tab }: Here) {
    real.bench.getState().startFresh();
    tab.running = undefined;
    // What stands in a project with nothing chosen is the schema's affair, and tried elsewhere.
    m.change(tab, real.bench.getState().project as unknown as m.Tree, 'fresh', real.bench.getState().id);
    tab.snap = { ...tab.snap, entries: Object.fromEntries(NEEDED.map((path) => [path, { text: '', bad: true }])) };
    tab.running = undefined;
    m.mark(tab);
  },
  look({ real, tab, model }: Here) {
    real.keeper.look();
    m.look(model, tab, spotOf(real.bench.getState()));
  },
  bringBlocksAnew({ real, tab }: Here) {
    real.bench.getState().takeBlocks({ source: 'drawn', front: part, back: part } as never, say`Brought.`, true);
    tab.running = undefined;
    const { project, id } = real.bench.getState();
    const drafted = real.bench.getState().history.past.at(-1)?.project as unknown as m.Tree;
    m.change(tab, drafted, 'fresh', id);
    m.change(tab, project as unknown as m.Tree, 'block');
    tab.snap = { ...tab.snap, entries: Object.fromEntries(NEEDED.map((path) => [path, { text: '', bad: true }])) };
    tab.running = undefined;
    m.mark(tab);
  },
  async copy({ real, tab, model }: Here) {
    real.keeper.copy();
    await m.copyHere(model, tab);
  },
  async wait({ real, tab, model }: Here) {
    await real.wait();
    await m.flush(model, tab);
  },
  async openKept({ real, tab, model, value }: Here) {
    const ids = [...model.rows.keys()];
    if (ids.length === 0) return;
    const id = pick(ids, value);
    // Where the browser keeps nothing the list of projects is empty.
    await real.keeper.open(id).catch(() => false);
    await m.open(model, tab, id);
  },
  async remove({ pair, real, model, tab, value, world }: Here) {
    const ids = [...model.rows.keys()].filter((id) => id !== tab.snap.id);
    if (ids.length === 0 || world.disk === 'none') return;
    const id = pick(ids, value);
    const putBack = await real.shelf.remove(id);
    pair.removed = { id, row: model.rows.get(id) as m.Row, putBack };
    model.rows.delete(id);
    // Taken off the list with all that was damaged of it, by the person.
    pair.damaged.length = 0;
  },
  async putBack({ pair, model, world }: Here) {
    const { removed } = pair;
    if (!removed || world.disk !== 'well') return;
    await removed.putBack();
    if (!model.rows.has(removed.id)) model.rows.set(removed.id, removed.row);
    pair.removed = undefined;
  },
  async otherTab(here: Here) {
    const { pair, model, index } = here;
    if (pair.tabs.length === 1) await reopen({ ...here, index: 1 }, notesOf(new Map()));
    else await DONE.closeTab({ ...here, index: 1, real: pair.tabs[1] as Tab, tab: model.tabs[1] as m.ModelTab });
    void index;
  },
  async closeTab({ pair, index, real, tab, model, world }: Here) {
    if (pair.tabs.length === 1) return;
    real.leave();
    await settled(world);
    real.kill();
    await settled(world);
    await m.leave(model, tab);
    await m.flush(model, tab);
    m.letGo(model, tab);
    pair.tabs.splice(index, 1);
    model.tabs.splice(index, 1);
  },
  /** Loads the page anew: what was still to be kept may or may not have the time. */
  async reload(here: Here) {
    const { real, tab, model, world, value } = here;
    real.leave();
    const hasTime = value % 2 === 0;
    // At once: how much of a round of keeping comes before the first wait is not what this is about.
    if (!hasTime) real.kill();
    await m.leave(model, tab);
    if (hasTime) {
      await settled(world);
      await m.flush(model, tab);
    }
    const session = new Map([[LAST, real.session.get(LAST) ?? '']]);
    real.kill();
    m.letGo(model, tab);
    await settled(world);
    await reopen(here, notesOf(new Map([...session].filter(([, text]) => text !== ''))), real.session.get(LAST));
  },
  /** Ends it as a dead battery does. */
  async kill(here: Here) {
    here.real.kill();
    m.letGo(here.model, here.tab);
    await settled(here.world);
    await reopen(here, notesOf(new Map()));
  },
  disk({ world, model, value }: Here) {
    world.disk = pick(['well', 'well', 'full', 'none'] as const, value);
    model.disk = world.disk;
  },
  clockBack({ world, value }: Here) {
    world.date -= value * 3_600_000;
  },
  async damage({ pair, model, world, value }: Here) {
    const ids = [...model.rows.keys()];
    if (ids.length === 0) return;
    const id = pick(ids, value);
    const row = model.rows.get(id) as m.Row;
    const junk = pick(JUNK, value);
    const where = value % 3;
    if (where < 2) {
      const slot = row.slots[where];
      // What stands there now would be written over by this test, not by the program.
      if (!slot || slot.broken) return;
      row.slots[where] = { ...slot, broken: true };
      await putRaw(world, `project/${id}/${where === 0 ? 'a' : 'b'}`, junk);
    } else {
      if (row.way.broken) return;
      row.way = { past: [], future: [], broken: true };
      await putRaw(world, `history/${id}`, junk);
    }
    pair.damaged.push(junk);
  },
} as const satisfies Record<string, (here: Here) => void | Promise<void>>;

/** Often what people do often. */
const OFTEN: readonly (keyof typeof DONE)[] = ['type', 'choose', 'slide', 'undo', 'redo', 'wait', 'wait', 'reload'];

export const commands = fc.array(
  fc.tuple(
    fc.oneof(fc.constantFrom(...OFTEN), fc.constantFrom(...(Object.keys(DONE) as (keyof typeof DONE)[]))),
    fc.nat(1),
    fc.nat(99),
  ),
  { minLength: 1, maxLength: 24 },
);

export async function carryOut(pair: Pair, [name, which, value]: Command): Promise<void> {
  const index = which % pair.tabs.length;
  const { world, model } = pair;
  const real = pair.tabs[index] as Tab;
  const tab = model.tabs[index] as m.ModelTab;
  await DONE[name]({ pair, index, real, tab, model, world, value });
  await settled(world);
}

export async function newPair(world: World): Promise<Pair> {
  const tabs: Tab[] = [];
  const model: m.Model = {
    disk: 'well',
    rows: new Map(),
    notes: new Map(),
    last: undefined,
    tabs: [],
    newest: async (known, project) => {
      const wanted = m.canon(project);
      const places = [
        ...tabs.map(({ bench }) => ({ id: bench.getState().id, text: saveProject(bench.getState().project) })),
        ...[...(await everything(world))].map(([key, value]) => ({
          id: key.split('/')[1] ?? '',
          text: key.startsWith('project/') ? String((value as { text?: unknown } | null)?.text) : '',
        })),
        ...world.notes.keys().map((key) => JSON.parse(world.notes.get(key) ?? '').copy as { id: string; text: string }),
      ];
      const found = places.find(
        ({ id, text }) => !known.has(id) && text.startsWith('{') && m.canon(JSON.parse(text)) === wanted,
      );
      if (!found) throw new Error(`nowhere is a project of its own with the name ${String(project.name)}`);
      return found.id;
    },
  };
  tabs.push(await openTab(world));
  model.tabs.push(m.newTab(started, (tabs[0] as Tab).bench.getInitialState().id));
  return { world, model, tabs, damaged: [], removed: undefined };
}
