import { type Copy, isWhole, newestOf } from './copy';
import { found, openDatabase } from './database';

/** A body kept apart from any project. */
export interface KeptBody {
  readonly id: string;
  readonly label: string;
  readonly figures: Readonly<Record<string, unknown>>;
  readonly savedAt: number;
}

/** A project on the shelf: its newest whole copy, or the raw text of one that this program can't read. */
export type Shelved =
  | { readonly readable: true; readonly id: string; readonly copy: Copy }
  | { readonly readable: false; readonly id: string; readonly raw: unknown };

/** What putting a copy away came to. */
export type Put =
  | { readonly ok: true }
  /** Somebody else put a newer one there in the meantime; nothing was written. */
  | { readonly ok: false; readonly newer: Copy };

/** Everything that is kept on this computer, in one database of the browser. */
export interface Shelf {
  /** Writes a copy, unless the newest whole one there is not `base`. */
  readonly put: (copy: Copy, history: unknown, base: number) => Promise<Put>;
  readonly take: (id: string) => Promise<{ copy: Copy; history: unknown } | undefined>;
  readonly list: () => Promise<readonly Shelved[]>;
  /** Takes a project off the shelf; the function puts it back as it was. */
  readonly remove: (id: string) => Promise<() => Promise<void>>;
  readonly last: () => Promise<string | undefined>;
  readonly bodies: () => Promise<readonly KeptBody[]>;
  readonly putBody: (body: KeptBody) => Promise<void>;
  readonly removeBody: (id: string) => Promise<void>;
  /** What was marked on photographs of blocks, as it was put there. */
  readonly marks: () => Promise<unknown>;
  readonly putMarks: (marks: unknown) => Promise<void>;
}

const SLOTS = ['a', 'b'] as const;
const slotKey = (id: string, slot: string) => `project/${id}/${slot}`;
const historyKey = (id: string) => `history/${id}`;
/** All keys that start with a word. */
const all = (start: string) => IDBKeyRange.bound(`${start}/`, `${start}/\uffff`);

/** Opens the shelf; its first use fails where the browser keeps nothing. */
export function openShelf(name = 'legwork'): Shelf {
  const within = openDatabase(name);
  return {
    put: (copy, history, base) => within('readwrite', (store) => putCopy(store, copy, history, base)),
    take: (id) =>
      within('readonly', async (store) => {
        const keys = [historyKey(id), ...SLOTS.map((slot) => slotKey(id, slot))];
        const [history, ...slots] = await Promise.all(keys.map((key) => found<unknown>(store.get(key))));
        const copy = newestOf(slots);
        return copy && { copy, history };
      }),
    list: () =>
      within('readonly', async (store) => {
        const both = [found(store.getAllKeys(all('project'))), found(store.getAll(all('project')))] as const;
        const [keys, values] = await Promise.all(both);
        return shelvedFrom(keys.map(String), values);
      }),
    remove: (id) =>
      within('readwrite', async (store) => {
        const keys = [...SLOTS.map((slot) => slotKey(id, slot)), historyKey(id)];
        const values = await Promise.all(keys.map((key) => found(store.get(key))));
        for (const key of keys) store.delete(key);
        return async () => {
          await within('readwrite', async (again) => {
            keys.forEach((key, i) => {
              if (values[i] !== undefined) again.put(values[i], key);
            });
          });
        };
      }),
    last: () => within('readonly', (store) => found(store.get('last'))),
    bodies: () => within('readonly', (store) => found(store.getAll(all('body')))),
    putBody: (body) =>
      within('readwrite', async (store) => {
        store.put(body, `body/${body.id}`);
      }),
    removeBody: (id) =>
      within('readwrite', async (store) => {
        store.delete(`body/${id}`);
      }),
    marks: () => within('readonly', (store) => found<unknown>(store.get('marks'))),
    putMarks: (marks) =>
      within('readwrite', async (store) => {
        store.put(marks, 'marks');
      }),
  };
}

/**
 * One transaction: it holds as a whole or not at all. The newest whole copy stays until the next save; what stands in
 * the other place and can't be read is moved aside, never written over.
 */
async function putCopy(store: IDBObjectStore, copy: Copy, history: unknown, base: number): Promise<Put> {
  const slots = await Promise.all(SLOTS.map((slot) => found<unknown>(store.get(slotKey(copy.id, slot)))));
  const newest = newestOf(slots);
  if (newest && newest.revision !== base) return { ok: false, newer: newest };
  const at = newest !== undefined && slots[0] === newest ? 1 : 0;
  const old = slots[at];
  if (old !== undefined && !isWhole(old)) store.put(old, `aside/${copy.id}/${copy.savedAt}`);
  store.put(copy, slotKey(copy.id, SLOTS[at]));
  store.put(history, historyKey(copy.id));
  store.put(copy.id, 'last');
  return { ok: true };
}

function shelvedFrom(keys: readonly string[], values: readonly unknown[]): readonly Shelved[] {
  const ids = [...new Set(keys.map((key) => key.split('/')[1] ?? ''))];
  return ids
    .map((id): Shelved => {
      const own = values.filter((_, i) => keys[i]?.startsWith(`project/${id}/`));
      const copy = newestOf(own);
      return copy ? { readable: true, id, copy } : { readable: false, id, raw: own[0] };
    })
    .sort((a, b) => timeOf(b) - timeOf(a));
}

const timeOf = (shelved: Shelved): number => (shelved.readable ? shelved.copy.savedAt : 0);
