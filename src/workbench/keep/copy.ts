import { draft, openProject, type Project, saveProject } from '../../project';
import { redrawn } from '../store/changes';
import { type History, noHistory } from '../store/history';
import type { BenchState, Entry } from '../store/state';
import { STATIONS, type Station } from '../store/stations';

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

/** A check number over a copy's texts: Fowler, Noll and Vo's hash 1a, 32 bits. */
function checkOf(text: string, good: string | undefined): number {
  let hash = 0x811c9dc5;
  for (const part of [text, good ?? '']) {
    for (let i = 0; i < part.length; i += 1) hash = Math.imul(hash ^ part.charCodeAt(i), 0x01000193) >>> 0;
  }
  return hash;
}

/** Whether something from the store is a copy that is whole and that this program can read. */
export function isWhole(found: unknown): found is Copy {
  const copy = found as Partial<Copy> | null | undefined;
  if (typeof copy !== 'object' || copy === null) return false;
  const { id, revision, savedAt, text, good, entries } = copy;
  return (
    typeof id === 'string' &&
    typeof revision === 'number' &&
    typeof savedAt === 'number' &&
    typeof text === 'string' &&
    (good === undefined || typeof good === 'string') &&
    typeof entries === 'object' &&
    entries !== null &&
    copy.check === checkOf(text, good) &&
    openProject(good ?? text).ok
  );
}

/** The newest whole copy among what was found. */
export function newestOf(found: readonly unknown[]): Copy | undefined {
  return found.filter(isWhole).sort((a, b) => b.revision - a.revision)[0];
}

/** The part of the bench that a kept project brings back. */
export type Restored = Pick<
  BenchState,
  'id' | 'project' | 'draft' | 'problems' | 'entries' | 'station' | 'history' | 'before' | 'running' | 'step'
>;

/** A kept project put back on the bench as it was, what could not be read or drawn included; undefined where it can't be. */
export function restored(copy: Copy, history: unknown): Restored | undefined {
  const base = openProject(copy.good ?? copy.text);
  const drawn = base.ok ? draft(base.value) : undefined;
  if (!base.ok || !drawn?.ok) return undefined;
  const project: Project = copy.good === undefined ? base.value : JSON.parse(copy.text);
  const problems = copy.good === undefined ? [] : (redrawn(project).problems ?? []);
  return {
    id: copy.id,
    project,
    draft: drawn.value,
    problems,
    entries: copy.entries,
    station: (STATIONS as readonly string[]).includes(copy.station) ? (copy.station as Station) : 'edges',
    history: isHistory(history) ? history : noHistory,
    before: undefined,
    running: undefined,
    step: undefined,
  };
}

function isHistory(found: unknown): found is History {
  const { past, future } = (found ?? {}) as Partial<History>;
  const areMoments = (list: unknown) =>
    Array.isArray(list) &&
    list.every((one) => typeof one?.label === 'string' && typeof one.id === 'string' && one.project?.format);
  return areMoments(past) && areMoments(future);
}
