import type { Mm } from '../../../length';
import type { Point } from '../../../plane';
import type { Draft } from '../../../project';
import { useBench } from '../../store/bench';
import type { BenchState } from '../../store/state';
import type { Handle } from './handle';

/** Closer than this nothing is set anew, millimetres. */
const SAME = 1e-6;

/**
 * The number that would bring a handle's button to a point of the drawing. It starts from where the button lies now and
 * goes by the handle's pull, so that what the drafting makes of a number is looked at in every frame.
 */
export function pulledValue(handle: Handle, draft: Draft, to: Point): Mm {
  const at = handle.at(draft);
  return handle.value(draft) + (to.x - at.x) * handle.pull.x + (to.y - at.y) * handle.pull.y;
}

/**
 * Sets a handle's number; what is set until the handle is left is one change.
 *
 * @returns whether it could be drawn; where it could not, nothing was changed
 */
export function setHandle(handle: Handle, wanted: Mm): boolean {
  const before = useBench.getState();
  const { lowest, highest } = handle.limits(before.draft);
  const value = Math.min(highest, Math.max(lowest, wanted));
  if (Math.abs(value - handle.value(before.draft)) < SAME) return true;
  before.slide(handle.path, handle.written(before.draft, value));
  if (useBench.getState().problems.length <= before.problems.length) return true;
  putBack(before);
  return false;
}

/** The project and all that hangs on it as it was at a moment, as if nothing had been tried since. */
export function putBack({ project, draft, before, problems, entries, history, running }: BenchState): void {
  useBench.setState({ project, draft, before, problems, entries, history, running });
}
