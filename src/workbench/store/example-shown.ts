import { draft, exampleOf, type Habits } from '../../project';
import { noHistory } from './history';
import { newId } from './new-id';
import { type Placed, placed } from './placed';

/** The finished example on the bench, as nobody has changed it; it can always be drawn. */
export function exampleShown(habits: Habits): Placed {
  const project = exampleOf(habits);
  const result = draft(project);
  if (!result.ok) throw new Error('the example can’t be drafted');
  return placed({
    id: newId(),
    project,
    draft: result.value,
    problems: [],
    entries: {},
    station: 'edges',
    history: noHistory,
  });
}
