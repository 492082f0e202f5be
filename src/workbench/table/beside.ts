import { createStore } from 'zustand';
import { checksOf } from '../../project';
import { useBench } from '../store/bench';
import { undrawable } from '../store/changes';
import { pageStore } from '../store/page-store';
import type { Bench } from '../store/state';
import { draftSteps } from '../store/told-steps';
import { useTable } from './table-state';

/**
 * The workbench as the panels beside the table show it. It is the one that is worked on, but while a button on the
 * drawing is held: then the drawing comes first, in every frame, and what is said of it, the checks above all, between
 * frames: no oftener than it can be read, and where the computer is slow when a frame leaves time for it.
 *
 * Checks and working, which are found when they are first asked for, are asked for here, so that a fault of theirs
 * becomes a problem of the change like any other and leaves the last good drawing where it is.
 */
export const beside = pageStore(createBeside);

/** Numbers that change oftener than twenty times a second can't be read, milliseconds. */
const READABLE = 50;
/** Nobody should wait longer for them, milliseconds. */
const LATEST = 200;

let waiting: ReturnType<typeof setTimeout> | undefined;

function createBeside() {
  useBench.subscribe(() => {
    if (useTable.getState().held === undefined) follow();
    else waiting ??= setTimeout(followWhenIdle, READABLE);
  });
  return createStore<Bench>()(() => useBench.getState());
}

function followWhenIdle(): void {
  // Let go in the meantime, there is nothing left to follow.
  const go = () => waiting !== undefined && follow();
  // Not every browser says when it is idle; there the panels follow all the same.
  if ('requestIdleCallback' in globalThis) requestIdleCallback(go, { timeout: LATEST });
  else go();
}

function follow(): void {
  clearTimeout(waiting);
  waiting = undefined;
  const { draft } = useBench.getState();
  const last = beside.getState().draft;
  try {
    void [checksOf(draft), draftSteps(draft)];
  } catch (fault) {
    useBench.setState({ draft: last, problems: undrawable(fault) });
  }
  beside.setState(useBench.getState(), true);
}
