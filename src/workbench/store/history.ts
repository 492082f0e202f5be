import type { Project } from '../../project';

/** A state that can be come back to, and the name of the change that left it. */
export interface Moment {
  readonly label: string;
  readonly project: Project;
  /** Which of the kept projects it was: opening another is a change like any other. */
  readonly id: string;
}

/** Where one is: a project, and which of the kept ones it is. */
export type Place = Pick<Moment, 'project' | 'id'>;

/** Where a step leads, and the history from there. */
export type Step = Place & { readonly history: History };

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
export function stepBack(history: History, now: Place): Step | undefined {
  const last = history.past.at(-1);
  if (!last) return undefined;
  const future = [{ ...now, label: last.label }, ...history.future];
  return { project: last.project, id: last.id, history: { past: history.past.slice(0, -1), future } };
}

/** One step forward again; undefined where nothing was undone. */
export function stepForward(history: History, now: Place): Step | undefined {
  const [next, ...future] = history.future;
  if (!next) return undefined;
  return {
    project: next.project,
    id: next.id,
    history: { past: [...history.past, { ...now, label: next.label }], future },
  };
}
