/** A project as it lies on this computer, without looking into it. */
export interface RawProject {
  readonly id: string;
  readonly name: string;
  readonly text: string;
  readonly revision: number;
}

/** Everything that lies on this computer, by key; nothing of the program is needed to read it, and nothing is written. */
export async function keptRaw(name = 'legwork'): Promise<ReadonlyMap<string, unknown>> {
  const all = new Map<string, unknown>();
  try {
    for (const [key, value] of Object.entries(localStorage)) if (key.startsWith('legwork')) all.set(key, value);
  } catch {
    // A browser that keeps nothing.
  }
  try {
    for (const [key, value] of await shelfRaw(name)) all.set(key, value);
  } catch {
    // The same.
  }
  return all;
}

/** A database that doesn't answer for this long has nothing for us, ms. */
const PATIENCE = 2000;

function shelfRaw(name: string): Promise<readonly (readonly [string, unknown])[]> {
  return new Promise((resolve, reject) => {
    setTimeout(() => reject(new Error('no answer')), PATIENCE);
    const opening = indexedDB.open(name);
    opening.onerror = () => reject(opening.error);
    // Nothing was kept before: then nothing is begun here either.
    opening.onupgradeneeded = () => opening.transaction?.abort();
    opening.onsuccess = () => {
      const database = opening.result;
      const store = database.transaction('shelf').objectStore('shelf');
      const keys = store.getAllKeys();
      const values = store.getAll();
      values.onerror = () => reject(values.error);
      values.onsuccess = () => {
        resolve(keys.result.map((key, i) => [String(key), values.result[i]]));
        database.close();
      };
    };
  });
}

/** The newest text of each project among what lies there, whatever else is wrong with it. */
export function rawProjects(all: ReadonlyMap<string, unknown>): readonly RawProject[] {
  const newest = new Map<string, RawProject>();
  for (const [key, value] of all) {
    const [kind, id = ''] = key.split('/');
    const { text, revision } = (value ?? {}) as { text?: unknown; revision?: unknown };
    if (kind !== 'project' || typeof text !== 'string') continue;
    const own = { id, name: nameIn(text), text, revision: typeof revision === 'number' ? revision : 0 };
    if (own.revision >= (newest.get(id)?.revision ?? 0)) newest.set(id, own);
  }
  return [...newest.values()];
}

function nameIn(text: string): string {
  try {
    const { name } = JSON.parse(text) as { name?: unknown };
    return typeof name === 'string' && name !== '' ? name : 'a project';
  } catch {
    return 'a project';
  }
}
