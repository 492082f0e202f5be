import { own, words } from '../../words';
import type { History } from '../store/history';
import { type Copy, hashOf } from './copy';
import { found, openDatabase, type Within } from './database';
import { rawText } from './raw-text';
import { type KeptBody, readBody } from './read-body';
import { newestOf, type ReadCopy, readCopy } from './read-copy';
import { readHistory } from './read-history';

/** A project on the shelf: its newest copy that can be read, or what there is of one that this program can't read. */
export type Shelved =
  | { readonly readable: true; readonly id: string; readonly name: string; readonly savedAt: number }
  | { readonly readable: false; readonly id: string; readonly raw: unknown };

/** A project as it is taken from the shelf. */
export interface Taken {
  readonly read: ReadCopy;
  readonly history: History;
  /** What of it could not be read and was set aside now, in words; empty where all is whole, or was told before. */
  readonly setAside: readonly string[];
}

/** What putting a copy away came to. */
export type Put =
  | { readonly ok: true }
  /** Somebody else put a newer one there in the meantime; nothing was written. */
  | { readonly ok: false; readonly newer: ReadCopy };

/** Something that could not be read, set aside as it was. */
export interface Aside {
  readonly key: string;
  readonly what: string;
  readonly raw: unknown;
}

/** A body on the shelf, or what there is of one that can't be read. */
export type ShelvedBody =
  | { readonly readable: true; readonly body: KeptBody }
  | { readonly readable: false; readonly id: string; readonly raw: unknown };

/** Everything that is kept on this computer, in one database of the browser. Each fails where the browser keeps nothing. */
export interface Shelf {
  /** Writes a copy, unless one that can be read there is newer than `base`; without a history the one there stays. */
  readonly put: (copy: Copy, history: History | undefined, base: number) => Promise<Put>;
  /** Undefined where there is none that can be read. What can't be read of it is set aside at once. */
  readonly take: (id: string) => Promise<Taken | undefined>;
  readonly list: () => Promise<readonly Shelved[]>;
  /** Takes a project off the shelf; the function puts it back as it was, unless it has come back by itself. */
  readonly remove: (id: string) => Promise<() => Promise<void>>;
  /** The project that was kept last. */
  readonly last: () => Promise<string | undefined>;
  readonly bodies: () => Promise<readonly ShelvedBody[]>;
  readonly putBody: (body: KeptBody) => Promise<void>;
  readonly removeBody: (id: string) => Promise<void>;
  /** What was marked on photographs of blocks, as it was put there. */
  readonly marks: () => Promise<unknown>;
  readonly putMarks: (marks: unknown) => Promise<void>;
  /** The table of a class that was filled in last, as it was put there. */
  readonly classTable: () => Promise<unknown>;
  readonly putClassTable: (table: unknown) => Promise<void>;
  /** Sets something aside that can't be read, whose place will be needed. */
  readonly setAside: (owner: string, what: string, raw: unknown) => Promise<void>;
  readonly asides: () => Promise<readonly Aside[]>;
  readonly removeAside: (key: string) => Promise<void>;
}

const SLOTS = ['a', 'b'] as const;
const slotKey = (id: string, slot: string) => `project/${id}/${slot}`;
const historyKey = (id: string) => `history/${id}`;
/** All keys that start with a word. */
const all = (start: string) => IDBKeyRange.bound(`${start}/`, `${start}/\uffff`);

/** Opens the shelf, in the browser's own storage or in another. */
export function openShelf(within: Within = openDatabase('legwork')): Shelf {
  const write = (work: (store: IDBObjectStore) => void) => within('readwrite', async (store) => work(store));
  return {
    put: (copy, history, base) => within('readwrite', (store) => putCopy(store, copy, history, base)),
    take: async (id) => {
      const taken = await within('readonly', (store) => takeCopy(store, id));
      if (!taken) return undefined;
      const { broken, ...whole } = taken;
      if (broken.length === 0) return { ...whole, setAside: [] };
      const told = await within(
        'readwrite',
        (store) => Promise.all(broken.map((one) => setAside(store, id, ...one))),
        // Where there is no room it stays where it is, and can be read from there no less.
      ).catch(() => []);
      return { ...whole, setAside: broken.flatMap(([what], i) => (told[i] ? [what] : [])) };
    },
    list: () => within('readonly', async (store) => shelvedFrom(await entriesOf(store, 'project'))),
    remove: (id) => within('readwrite', (store) => removeProject(store, id, within)),
    last: () =>
      within('readonly', async (store) => {
        const last = await found<unknown>(store.get('last'));
        return typeof last === 'string' ? last : undefined;
      }),
    bodies: () => within('readonly', async (store) => (await entriesOf(store, 'body')).map(bodyFrom)),
    putBody: (body) => write((store) => store.put(body, `body/${body.id}`)),
    removeBody: (id) => write((store) => store.delete(`body/${id}`)),
    marks: () => within('readonly', (store) => found<unknown>(store.get('marks'))),
    putMarks: (marks) => write((store) => store.put(marks, 'marks')),
    classTable: () => within('readonly', (store) => found<unknown>(store.get('class'))),
    putClassTable: (table) => write((store) => store.put(table, 'class')),
    setAside: async (owner, what, raw) => {
      await within('readwrite', (store) => setAside(store, owner, what, raw));
    },
    asides: () => within('readonly', async (store) => (await entriesOf(store, 'aside')).map(asideFrom)),
    removeAside: (key) => write((store) => store.delete(key)),
  };
}

type Entries = readonly (readonly [key: string, value: unknown])[];

async function entriesOf(store: IDBObjectStore, start: string): Promise<Entries> {
  const both = [found(store.getAllKeys(all(start))), found<unknown[]>(store.getAll(all(start)))] as const;
  const [keys, values] = await Promise.all(both);
  return keys.map((key, i) => [String(key), values[i]]);
}

/** Both copies of a project in their places, and its history. */
async function partsOf(store: IDBObjectStore, id: string) {
  const keys = [...SLOTS.map((slot) => slotKey(id, slot)), historyKey(id)];
  const values = await Promise.all(keys.map((key) => found<unknown>(store.get(key))));
  return { keys, values, slots: values.slice(0, SLOTS.length), history: values.at(-1) };
}

/** What can be had of a project, and what can't be read of it. */
async function takeCopy(store: IDBObjectStore, id: string) {
  const { slots, history } = await partsOf(store, id);
  const read = newestOf(slots, id);
  if (!read) return undefined;
  const way = readHistory(history);
  const broken: [what: string, raw: unknown][] = slots
    .filter((slot) => slot !== undefined && !readCopy(slot, id)?.whole)
    .map((slot) => [words`a copy of “${own(read.project.name)}”`, slot]);
  if (!way.whole) broken.push([words`some of what could be undone in “${own(read.project.name)}”`, history]);
  return { read, history: way.history, broken };
}

/**
 * One transaction: it holds as a whole or not at all. The newest copy that can be read stays until the next save; what
 * stands in the other place and can't be read is set aside, never written over.
 */
async function putCopy(store: IDBObjectStore, copy: Copy, history: History | undefined, base: number): Promise<Put> {
  const { slots, history: before } = await partsOf(store, copy.id);
  const newest = newestOf(slots, copy.id);
  // An older one is what damage to the newest has left.
  if (newest && newest.revision > base) return { ok: false, newer: newest };
  const at = newest !== undefined && slots[0] === newest.copy ? 1 : 0;
  const old = slots[at];
  if (old !== undefined && !readCopy(old, copy.id)?.whole)
    await setAside(store, copy.id, words`a copy of a project`, old);
  store.put(copy, slotKey(copy.id, SLOTS[at]));
  if (history) {
    if (!isOwn(before, newest?.revision) && !readHistory(before).whole)
      await setAside(store, copy.id, words`some of what could be undone in a project`, before);
    store.put({ ...history, revision: copy.revision } satisfies ShelvedHistory, historyKey(copy.id));
  }
  store.put(copy.id, 'last');
  return { ok: true };
}

/** A history with the revision of the copy that it was put away with. */
interface ShelvedHistory extends History {
  readonly revision: number;
}

/**
 * Whether a history is the one that was put away with the newest copy: then it can be read, and need not be, which would
 * take longer than a keystroke at each save.
 */
const isOwn = (found: unknown, newest: number | undefined): boolean =>
  newest !== undefined && (found as Partial<ShelvedHistory> | null | undefined)?.revision === newest;

/** The same thing is set aside once, however often it is met; whether this was the first time. */
async function setAside(store: IDBObjectStore, owner: string, what: string, raw: unknown): Promise<boolean> {
  const text = rawText(raw);
  const key = `aside/${owner}/${hashOf(text).toString(36)}${text.length.toString(36)}`;
  if ((await found(store.getKey(key))) !== undefined) return false;
  store.put({ what, raw }, key);
  return true;
}

function asideFrom([key, value]: Entries[number]): Aside {
  const { what, raw } = (typeof value === 'object' && value !== null ? value : {}) as Partial<Aside>;
  // As they were set aside at first, without a word.
  return typeof what === 'string' ? { key, what, raw } : { key, what: words`a copy of a project`, raw: value };
}

async function removeProject(store: IDBObjectStore, id: string, within: Within): Promise<() => Promise<void>> {
  const { keys, values } = await partsOf(store, id);
  for (const key of keys) store.delete(key);
  return () =>
    within('readwrite', async (again) => {
      const now = await partsOf(again, id);
      // Another tab has kept it meanwhile, and what that wrote is newer.
      if (now.slots.some((slot) => slot !== undefined)) return;
      keys.forEach((key, i) => {
        if (values[i] !== undefined) again.put(values[i], key);
      });
    });
}

function shelvedFrom(entries: Entries): readonly Shelved[] {
  const ids = [...new Set(entries.map(([key]) => key.split('/')[1] ?? ''))];
  return ids
    .map((id): Shelved => {
      const own = entries.flatMap(([key, value]) => (key.startsWith(`project/${id}/`) ? [value] : []));
      const read = newestOf(own, id);
      if (!read) return { readable: false, id, raw: own[0] };
      return { readable: true, id, name: read.project.name, savedAt: read.savedAt };
    })
    .sort((a, b) => timeOf(b) - timeOf(a));
}

const timeOf = (shelved: Shelved): number => (shelved.readable ? shelved.savedAt : 0);

function bodyFrom([key, raw]: Entries[number]): ShelvedBody {
  const id = key.slice('body/'.length);
  const body = readBody(raw, id);
  return body ? { readable: true, body } : { readable: false, id, raw };
}
