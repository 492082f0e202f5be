import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { found, NoStorage, openDatabase, type Within } from '../../../src/workbench/shelf/database';
import { type Keeper, startKeeper } from '../../../src/workbench/shelf/keeper';
import { createKept } from '../../../src/workbench/shelf/kept';
import type { Notes } from '../../../src/workbench/shelf/notes';
import { openLast } from '../../../src/workbench/shelf/open-last';
import { openShelf, type Shelf } from '../../../src/workbench/shelf/shelf';
import type { Surroundings } from '../../../src/workbench/shelf/surroundings';
import { createBench } from '../../../src/workbench/store/bench';
import { Locks } from './locks';

/** How the storage of a computer does. */
export type Disk = 'well' | 'full' | 'none';

/** Every touch of the store, before it is carried out; it may throw, or never come back. */
export type Step = (name: string, store: IDBObjectStore) => void;

/** One computer with one browser: everything that its tabs share. */
export interface World {
  disk: Disk;
  /** What the clock on the wall says, milliseconds since 1970. */
  date: number;
  /** Milliseconds that only go on. */
  clock: number;
  readonly factory: IDBFactory;
  readonly notes: Notes;
  readonly locks: Locks;
  readonly tabs: Set<Tab>;
  /** How much is asked of the storage just now. */
  asked: number;
  /** How often it was asked at all. */
  times: number;
  /** Called at every touch of the store, for tests that break it there. */
  step: Step | undefined;
}

export interface Tab {
  readonly bench: ReturnType<typeof createBench>;
  readonly kept: ReturnType<typeof createKept>;
  readonly keeper: Keeper;
  readonly shelf: Shelf;
  readonly session: Notes;
  /** Faults of the program that it told. */
  readonly faults: readonly unknown[];
  /** Lets time pass for it, so that what waits is done. */
  readonly wait: () => Promise<void>;
  /** Tells it that it may be gone the next moment. */
  readonly leave: () => void;
  /** From now on nothing of it happens any more. */
  readonly kill: () => void;
}

export const newWorld = (): World => ({
  disk: 'well',
  date: 1_800_000_000_000,
  clock: 0,
  factory: new IDBFactory(),
  notes: notesOf(new Map()),
  locks: new Locks(),
  tabs: new Set(),
  asked: 0,
  times: 0,
  step: undefined,
});

export const notesOf = (texts: Map<string, string>): Notes => ({
  get: (key) => texts.get(key),
  set: (key, text) => {
    texts.set(key, text);
    return true;
  },
  remove: (key) => void texts.delete(key),
  keys: () => [...texts.keys()],
});

const tick = () => new Promise<void>((go) => setImmediate(go));

/** Waits until nobody asks anything of the storage any more. */
export async function settled(world: World): Promise<void> {
  for (let calm = 0; calm < 3; calm = world.asked === 0 ? calm + 1 : 0) await tick();
}

const forever = new Promise<never>(() => undefined);

/** The storage as one tab has it: full, not there, or gone with the tab. */
function withinOf(world: World, isAlive: () => boolean): Within {
  const within = openDatabase('legwork', () => world.factory);
  return async (mode, work) => {
    if (!isAlive()) return forever;
    world.asked += 1;
    world.times += 1;
    try {
      if (world.disk === 'none') throw new NoStorage('there is none');
      return await within(mode, async (store) => {
        const done = await work(touched(world, store));
        world.step?.('commit', store);
        return done;
      });
    } catch (fault) {
      if (fault instanceof Killed) return forever;
      throw fault;
    } finally {
      world.asked -= 1;
    }
  };
}

/** Thrown in the middle of a transaction, it is the end of the tab. */
export class Killed extends Error {}

/** The store with a word before each touch of it. */
function touched(world: World, store: IDBObjectStore): IDBObjectStore {
  const full = () => {
    if (world.disk === 'full') throw new DOMException('no room', 'QuotaExceededError');
  };
  return new Proxy(store, {
    get(target, name) {
      const value: unknown = Reflect.get(target, name);
      if (typeof value !== 'function') return value;
      return (...values: unknown[]) => {
        if (name === 'put') full();
        world.step?.(String(name), target);
        return value.apply(target, values);
      };
    },
  });
}

/** Opens a tab, with what it brings back. */
export async function openTab(world: World, session = notesOf(new Map())): Promise<Tab> {
  let alive = true;
  const timers = new Set<{ readonly at: number; readonly act: () => void }>();
  const faults: unknown[] = [];
  let onLeave = () => {};
  let hear: (news: { id: string }) => void = () => {};
  const bench = createBench();
  const kept = createKept();
  const shelf = openShelf(withinOf(world, () => alive));
  const tell = (news: { id: string }) => {
    for (const other of world.tabs) if (other !== tab) heard.get(other)?.(news);
  };
  const around: Surroundings = {
    shelf,
    bench,
    kept,
    locks: world.locks.of(session),
    openNews: (listen) => {
      hear = listen;
      return { tell, close: () => undefined };
    },
    ofTab: session,
    onComputer: world.notes,
    date: () => world.date,
    clock: () => world.clock,
    after(milliseconds, act) {
      const timer = { at: world.clock + milliseconds, act };
      timers.add(timer);
      return () => timers.delete(timer);
    },
    onLeave(act) {
      onLeave = act;
      return () => undefined;
    },
    tellFault: (fault) => faults.push(fault),
  };
  const pass = (milliseconds: number) => {
    world.clock += milliseconds;
    world.date += milliseconds;
    for (const timer of [...timers].filter(({ at }) => at <= world.clock)) {
      timers.delete(timer);
      timer.act();
    }
  };
  const keeper = startKeeper(around);
  const tab: Tab = {
    bench,
    kept,
    keeper,
    shelf,
    session,
    faults,
    async wait() {
      pass(LONG);
      await settled(world);
    },
    leave: () => onLeave(),
    kill() {
      alive = false;
      timers.clear();
      world.tabs.delete(tab);
      world.locks.leave(session);
    },
  };
  heard.set(tab, (news) => alive && hear(news));
  world.tabs.add(tab);
  let open = false;
  void openLast(around, keeper, () => true).then(() => {
    open = true;
  });
  while (!open) {
    await settled(world);
    // A note of a project that another tab holds is waited for.
    if (!open) pass(SHORT);
  }
  await settled(world);
  return tab;
}

/** Longer than anything is put off, ms. */
const LONG = 61_000;
/** As long as a tab that opens waits for one that closes, ms. */
const SHORT = 500;

const heard = new WeakMap<Tab, (news: { id: string }) => void>();

/** Everything that stands in the storage, by key, whatever its state. */
export async function everything(world: World): Promise<Map<string, unknown>> {
  const within = (reading.get(world) ??
    reading
      .set(
        world,
        openDatabase('legwork', () => world.factory),
      )
      .get(world)) as Within;
  return within('readonly', async (store) => {
    const [keys, values] = await Promise.all([found(store.getAllKeys()), found<unknown[]>(store.getAll())]);
    return new Map(keys.map((key, i) => [String(key), values[i]]));
  });
}

/** Puts something in the storage by hand. */
export const putRaw = (world: World, key: string, value: unknown): Promise<void> =>
  openDatabase('legwork', () => world.factory)('readwrite', async (store) => {
    store.put(value, key);
  });

const reading = new WeakMap<World, Within>();
