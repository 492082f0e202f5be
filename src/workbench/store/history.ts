import type { Project } from '../../project';

/** A state that can be come back to, and the name of the change that left it. */
export interface Moment {
  readonly label: string;
  readonly project: Project;
}

export interface History {
  readonly past: readonly Moment[];
  readonly future: readonly Moment[];
}

export const noHistory: History = { past: [], future: [] };

/** Projects share what did not change, so that two hundred of them weigh little. */
const LIMIT = 200;

/** The history after a change that left `moment`; what had been undone is forgotten. */
export function remember(history: History, moment: Moment): History {
  return { past: [...history.past, moment].slice(-LIMIT), future: [] };
}

/** One step back: the project to return to and the history from there; undefined where there is nothing to undo. */
export function stepBack(history: History, now: Project): { project: Project; history: History } | undefined {
  const last = history.past.at(-1);
  if (!last) return undefined;
  const future = [{ label: last.label, project: now }, ...history.future];
  return { project: last.project, history: { past: history.past.slice(0, -1), future } };
}

/** One step forward again; undefined where nothing was undone. */
export function stepForward(history: History, now: Project): { project: Project; history: History } | undefined {
  const [next, ...future] = history.future;
  if (!next) return undefined;
  return { project: next.project, history: { past: [...history.past, { label: next.label, project: now }], future } };
}
