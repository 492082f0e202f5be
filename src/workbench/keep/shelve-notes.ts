import { saveProject } from '../../project';
import { noHistory } from '../store/history';
import { copied } from './copied';
import { type Copy, checkOf } from './copy';
import { holdLater } from './holding';
import { type Noted, notedLast } from './last-note';
import type { ReadCopy } from './read-copy';
import type { Surroundings } from './surroundings';

/** A page that is being closed lets its projects go in less than this; one that doesn't is open still, ms. */
const CLOSING = 500;

/**
 * Brings what was noted by pages that were closed to the shelf, unless the shelf has it. A note goes only when the shelf
 * holds what it says; one that can't be read is set aside, and one of a project that went on otherwise is kept apart.
 */
export async function shelveNotes(around: Surroundings): Promise<void> {
  for (const noted of notedLast(around.onComputer)) {
    if (noted.read) await shelveNote(around, noted, noted.read);
    else {
      await around.shelf.setAside('note', 'what was noted when a page was closed', noted.text);
      around.onComputer.remove(noted.key);
    }
  }
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
    if (!put.ok && put.newer.copy.text !== read.copy.text) {
      const { newer } = put;
      if (newer.revision < read.revision)
        await shelf.put({ ...read.copy, revision: newer.revision + 1 }, history, newer.revision);
      else await shelf.put(...apart(read, history));
    }
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
