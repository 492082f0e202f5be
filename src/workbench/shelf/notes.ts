/** Short texts that the browser keeps by name, where it keeps any: none of it ever fails. */
export interface Notes {
  readonly get: (key: string) => string | undefined;
  /** False where it was not kept. */
  readonly set: (key: string, text: string) => boolean;
  readonly remove: (key: string) => void;
  readonly keys: () => readonly string[];
}

/**
 * The notes of a browser's storage.
 *
 * @param storage asked for each time, because a browser that keeps nothing may throw at the word
 */
export function notesIn(storage: () => Storage): Notes {
  const tried = <T>(act: (notes: Storage) => T, otherwise: T): T => {
    try {
      return act(storage());
    } catch {
      return otherwise;
    }
  };
  return {
    get: (key) => tried((notes) => notes.getItem(key) ?? undefined, undefined),
    set: (key, text) =>
      tried((notes) => {
        notes.setItem(key, text);
        return true;
      }, false),
    remove: (key) => tried((notes) => notes.removeItem(key), undefined),
    keys: () =>
      tried((notes) => Array.from({ length: notes.length }, (_, i) => notes.key(i)).filter((key) => key !== null), []),
  };
}
