import type { Draft } from '../../project';
import { drawnSafely } from '../store/changes';
import type { History } from '../store/history';
import { type Placed, placed } from '../store/placed';
import type { ReadCopy } from './read-copy';

/**
 * A kept project put back on the bench as it was, what could not be read or drawn included.
 *
 * @param last the drawing that stays where nothing of the project can be drawn, as while measurements are still missing
 */
export function restored(read: ReadCopy, history: History, last: Draft): Placed {
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
