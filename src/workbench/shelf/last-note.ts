import type { History } from '../store/history';
import type { Copy } from './copy';
import type { Notes } from './notes';
import { type ReadCopy, readCopy } from './read-copy';
import { readHistory } from './read-history';

const START = 'legwork-last-note';

/** Where a note of any size has no room, the last steps back have. */
const FEW = 20;

/** A copy as it was noted when a page was left. */
export interface Noted {
  readonly key: string;
  readonly text: string;
  /** Undefined where it can't be read. */
  readonly read: ReadCopy | undefined;
  /** Undefined where there was no room for it. */
  readonly history: History | undefined;
}

/** Notes a copy at once, for a page that is being left: only the shelf is slow enough to be closed over. */
export function noteLast(notes: Notes, copy: Copy, history: History): void {
  const few = { past: history.past.slice(-FEW), future: history.future.slice(0, FEW) };
  // Without any, what is on the shelf stays.
  for (const way of [history, few, undefined])
    if (notes.set(`${START}/${copy.id}`, JSON.stringify({ copy, history: way }))) return;
}

/** Takes the note of a project away, when the shelf holds it. */
export const forgetNote = (notes: Notes, id: string): void => notes.remove(`${START}/${id}`);

/** Everything that was noted and has not come to the shelf yet. */
export function notedLast(notes: Notes): readonly Noted[] {
  return notes
    .keys()
    .filter((key) => key === START || key.startsWith(`${START}/`))
    .map((key) => {
      const text = notes.get(key) ?? '';
      try {
        const { copy, history } = JSON.parse(text) as { copy?: Copy; history?: unknown };
        const read = readCopy(copy, String(copy?.id));
        return { key, text, read, history: history === undefined ? undefined : readHistory(history).history };
      } catch {
        return { key, text, read: undefined, history: undefined };
      }
    });
}
