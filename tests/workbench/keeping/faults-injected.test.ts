import { describe, expect, it, vi } from 'vitest';
import { exampleProject } from '../../../src/project';
import { rawText } from '../../../src/workbench/shelf/raw-text';
import { length } from '../../../src/workbench/store/quantity';
import { everything, Killed, newWorld, openTab, putRaw, settled, type Tab, type World } from './world';

vi.mock('../../../src/project', async (original) => (await import('./cheap-draft')).withCheapDraft(await original()));

const type = (tab: Tab, text: string) => tab.bench.getState().type({ path: 'hem.depth', quantity: length }, text);
const { label, ...figures } = exampleProject.body;
const body = { id: 'me', label, figures, savedAt: 1 };

/** A tab in which something was kept already. */
async function keptTab(world: World, times = 2): Promise<Tab> {
  const tab = await openTab(world);
  for (let i = 1; i <= times; i += 1) {
    type(tab, `4.${i}`);
    await tab.wait();
  }
  return tab;
}

const only = async (world: World, start: string) =>
  [...(await everything(world)).keys()].find((key) => key.startsWith(start)) ?? '';

/** Everything that is written, from a storage that is as it was before to what it should be after. */
const WRITES: readonly {
  readonly name: string;
  readonly prepared: (world: World) => Promise<Tab>;
  readonly write: (tab: Tab, world: World) => Promise<unknown>;
  /** Whether the keeper comes back to it by itself. */
  readonly again: boolean;
}[] = [
  {
    name: 'the first save',
    prepared: (world) => openTab(world),
    write: (tab) => {
      type(tab, '5');
      return tab.wait();
    },
    again: true,
  },
  {
    name: 'a later save',
    prepared: (world) => keptTab(world),
    write: (tab) => {
      type(tab, '5');
      return tab.wait();
    },
    again: true,
  },
  {
    name: 'a save beside a damaged copy',
    async prepared(world) {
      const tab = await keptTab(world);
      await putRaw(world, await only(world, 'project/'), 'torn');
      return tab;
    },
    write: (tab) => {
      type(tab, '5');
      return tab.wait();
    },
    again: true,
  },
  {
    name: 'a project taken off',
    prepared: (world) => keptTab(world),
    write: (tab) => tab.shelf.remove(tab.bench.getState().id),
    again: false,
  },
  {
    name: 'a project put back',
    async prepared(world) {
      const tab = await keptTab(world);
      putBack.set(tab, await tab.shelf.remove(tab.bench.getState().id));
      return tab;
    },
    write: (tab) => putBack.get(tab)?.() ?? Promise.reject(new Error('nothing to put back')),
    again: false,
  },
  { name: 'a body', prepared: (world) => keptTab(world), write: (tab) => tab.shelf.putBody(body), again: false },
  {
    name: 'marks',
    prepared: (world) => keptTab(world),
    write: (tab) => tab.shelf.putMarks({ shots: [] }),
    again: false,
  },
  {
    name: 'something set aside',
    prepared: (world) => keptTab(world),
    write: (tab) => tab.shelf.setAside('one', 'a copy', 'torn'),
    again: false,
  },
];
const putBack = new WeakMap<Tab, () => Promise<void>>();

const FAULTS = {
  full() {
    throw new DOMException('no room', 'QuotaExceededError');
  },
  'given up': (store: IDBObjectStore) => store.transaction.abort(),
  killed() {
    throw new Killed();
  },
};

/** All that is stored, but for when it was, and for names that are made by chance. */
async function written(world: World): Promise<string> {
  const names: string[] = [];
  const nameOf = (id: string) => (names.includes(id) ? names.indexOf(id) : names.push(id) - 1);
  return rawText([...(await everything(world))])
    .replace(/"savedAt": \d+/g, '')
    .replace(/[0-9a-f]{20}/g, (id) => `project ${nameOf(id)}`);
}

describe.each(WRITES)('$name', ({ prepared, write, again }) => {
  it('is written as a whole or not at all, wherever it is broken off, and that is said', async () => {
    const clean = newWorld();
    const tab = await prepared(clean);
    let steps = 0;
    clean.step = () => {
      steps += 1;
    };
    await write(tab, clean);
    await settled(clean);
    clean.step = undefined;
    const after = await written(clean);
    expect(steps).toBeGreaterThan(1);

    for (let broken = 0; broken < steps; broken += 1)
      for (const [how, fault] of Object.entries(FAULTS)) {
        const where = `${how} at step ${broken}`;
        const world = newWorld();
        const one = await prepared(world);
        const was = await written(world);
        let step = 0;
        world.step = (_, store) => {
          step += 1;
          if (step === broken + 1) fault(store);
        };
        const done = write(one, world).then(
          () => undefined,
          (why: unknown) => one.keeper.tellTrouble(why),
        );
        await settled(world);
        world.step = undefined;
        const now = await written(world);
        expect([was, after], where).toContain(now);
        if (how === 'killed') {
          one.kill();
          const next = await openTab(world);
          type(next, '6');
          await next.wait();
          expect(next.kept.getState().state, where).toBe('kept');
          continue;
        }
        await done;
        expect(one.faults, where).toEqual([]);
        if (now === was) {
          expect(one.kept.getState().state, where).toBe(how === 'full' ? 'full' : 'off');
          expect(one.bench.getState().notice?.text, where).toMatch(/save it as a file/);
        }
        if (!again) continue;
        await one.wait();
        expect(await written(world), where).toBe(after);
        expect(one.kept.getState().state, where).toBe('kept');
      }
  });
});
