import type { Draft } from '../../project';
import { drawnSafely } from '../store/changes';
import type { History } from '../store/history';
import type { BenchState } from '../store/state';
import type { ReadCopy } from './read-copy';

/** The part of the bench that a kept project brings back. */
export type Restored = Pick<
  BenchState,
  'id' | 'project' | 'draft' | 'problems' | 'entries' | 'station' | 'history' | 'before' | 'running' | 'step'
>;

type Going = 'before' | 'running' | 'step';

/**
 * A kept project put back on the bench as it was, what could not be read or drawn included.
 *
 * @param last the drawing that stays where nothing of the project can be drawn, as while measurements are still missing
 */
export function restored(read: ReadCopy, history: History, last: Draft): Restored {
  const now = drawnSafely(read.project);
  const good = now.ok || !read.good ? now : drawnSafely(read.good);
  return placed({
    id: read.id,
    project: read.project,
    draft: good.ok ? good.value : last,
    problems: now.ok ? [] : now.problems,
    entries: read.entries,
    station: read.station,
    history,
  });
}

/** What of a state belongs to its project, to be put back on the bench with nothing going on. */
export const placed = ({
  id,
  project,
  draft,
  problems,
  entries,
  station,
  history,
}: Omit<Restored, Going>): Restored => ({
  id,
  project,
  draft,
  problems,
  entries,
  station,
  history,
  before: undefined,
  running: undefined,
  step: undefined,
});
