import { type Copy, isWhole } from './copy';
import type { Shelf } from './shelf';

const KEY = 'legwork-last-note';

/** Notes a copy at once, for a page that is being closed: only the shelf is slow enough to be closed over. */
export function noteLast(copy: Copy, history: unknown): void {
  try {
    localStorage.setItem(KEY, JSON.stringify({ copy, history }));
  } catch {
    // No room: then the last second is lost, and nothing else.
  }
}

/** Brings the note of a page that was closed to the shelf, unless the shelf has it, or something newer. */
export async function shelveLastNote(shelf: Shelf): Promise<void> {
  const text = localStorage.getItem(KEY);
  if (text === null) return;
  localStorage.removeItem(KEY);
  try {
    const { copy, history } = JSON.parse(text) as { copy?: unknown; history?: unknown };
    if (isWhole(copy)) await shelf.put(copy, history, copy.revision - 1);
  } catch {
    // A note that can't be read: the shelf holds what was kept before it.
  }
}
