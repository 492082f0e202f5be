import { saveProject } from '../../project';
import { words } from '../../words';
import { noHistory } from '../store/history';
import { copied } from './copied';
import { type Copy, checkOf } from './copy';
import { holdLater } from './holding';
import { type Noted, notedLast } from './last-note';
import type { ReadCopy } from './read-copy';
import type { Surroundings } from './surroundings';

/** A page that is being closed lets its projects go in less than this; one that doesn't is open still, ms. */
const CLOSING = 500;

/** A note that can be read. */
type Readable = Noted & { readonly read: ReadCopy };

/**
 * Brings what was noted by pages that were closed to the shelf, unless the shelf has it. A note goes only when the shelf
 * holds what it says; one that can't be read is set aside, and one of a project that went on otherwise is kept apart.
 *
 * @returns the notes that could not be brought there, and why
 */
export async function shelveNotes(around: Surroundings): Promise<{ left: readonly Readable[]; trouble?: unknown }> {
  const left: Readable[] = [];
  let trouble: unknown;
  for (const noted of notedLast(around.onComputer)) {
    const { key, text, read } = noted;
    try {
      if (read) await shelveNote(around, noted, read);
      else {
        await around.shelf.setAside('note', words`what was noted when a page was closed`, text);
        around.onComputer.remove(key);
      }
    } catch (fault) {
      trouble ??= fault;
      if (read) left.push({ ...noted, read });
    }
  }
  return { left, trouble };
}

async function shelveNote({ locks, shelf, onComputer, after }: Surroundings, { key, history }: Noted, read: ReadCopy) {
  const patience = new AbortController();
  const stop = after(CLOSING, () => patience.abort());
  const held = await holdLater(locks, read.id, patience.signal);
  stop();
  // A page has it open, and keeps it from there.
  if (!held) return;
  try {
    const put = await shelf.put(read.copy, history, read.revision - 1);
    if (!put.ok && put.newer.copy.text !== read.copy.text) await shelf.put(...apart(read, history));
    onComputer.remove(key);
  } finally {
    held.release();
  }
}

function apart(read: ReadCopy, history: Noted['history']): [Copy, Noted['history'], number] {
  const own = copied({ id: read.id, project: read.project, history: history ?? noHistory });
  const text = saveProject(own.project);
  const copy = { ...read.copy, id: own.id, revision: 1, text, check: checkOf(text, read.copy.good) };
  return [copy, own.history, 0];
}
