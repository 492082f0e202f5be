import { withoutLastPrint } from '../../project';
import { words } from '../../words';
import { historyOfCopy, placeOf } from '../store/history';
import { newId } from '../store/new-id';
import type { BenchState } from '../store/state';

/** Longer names don't fit their field. */
const LONGEST_NAME = 80;

/** What is on a bench as a project of its own, with another name and another place; the first one stays as it is. */
export function copied(
  state: Pick<BenchState, 'id' | 'project' | 'history'>,
): Pick<BenchState, 'begun' | 'id' | 'project' | 'history' | 'running'> {
  // Letter by letter, so that none is cut in half.
  const ending = words`, copy`;
  const name = [...state.project.name].slice(0, LONGEST_NAME - ending.length - 2).join('') + ending;
  // The paper on the table is the first one's.
  const project = { ...withoutLastPrint(state.project), name };
  const id = newId();
  const history = historyOfCopy(state.history, placeOf(state), placeOf({ project, id }));
  return { begun: true, id, project, history, running: undefined };
}
