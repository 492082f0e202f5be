import { saveProject } from '../../project';
import type { BenchState, Entry } from '../store/state';

/**
 * A project as it is kept on this computer: its file's text, and what a file does not hold. Each project has two copies
 * in turn; the newest that is whole wins, so that a save that is interrupted never costs the one before.
 */
export interface Copy {
  readonly id: string;
  /** Counts the saves of this project, in whatever tab. */
  readonly revision: number;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  readonly text: string;
  /** The last state that could be drawn, where the present one can't. */
  readonly good: string | undefined;
  /** What was typed and can't be read, by field. */
  readonly entries: Readonly<Record<string, Entry>>;
  readonly station: string;
  readonly check: number;
}

/** The copy of what is on the bench now. */
export function copyOf(state: BenchState, revision: number, savedAt: number): Copy {
  const text = saveProject(state.project);
  const good = state.problems.length > 0 ? saveProject(state.draft.project) : undefined;
  const entries = Object.fromEntries(Object.entries(state.entries).filter(([, entry]) => entry.problem));
  return { id: state.id, revision, savedAt, text, good, entries, station: state.station, check: checkOf(text, good) };
}

/** A check number over a copy's texts. */
export const checkOf = (text: string, good: string | undefined): number => hashOf(text, good ?? '');

/** Fowler, Noll and Vo's hash 1a of some texts, 32 bits. */
export function hashOf(...texts: readonly string[]): number {
  let hash = 0x811c9dc5;
  for (const part of texts) {
    for (let i = 0; i < part.length; i += 1) hash = Math.imul(hash ^ part.charCodeAt(i), 0x01000193) >>> 0;
  }
  return hash;
}
