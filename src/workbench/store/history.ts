import type { Project } from '../../project';

/** Never at hand at run time: it only lets the compiler tell a place that was made here from anything that looks like one. */
declare const madeHere: unique symbol;

/**
 * Where one is: a project, and which of the kept ones it is; opening another is a change like any other. Nothing else
 * goes into the history, which is kept as it is: only {@link placeOf} makes one, so that no larger thing, as the whole
 * workbench with its functions, is taken for a place because it also has a project and an id.
 */
export interface Place {
  readonly project: Project;
  readonly id: string;
  readonly [madeHere]: true;
}

/** A state that can be come back to, and the name of the change that left it. */
export interface Moment extends Place {
  readonly label: string;
}

/** Where a step leads, and the history from there. */
export interface Step extends Place {
  readonly history: History;
}

export interface History {
  readonly past: readonly Moment[];
  readonly future: readonly Moment[];
}

export const noHistory: History = { past: [], future: [] };

/** Projects share what did not change, so that two hundred of them weigh little. */
const LIMIT = 200;

/** The place of something that has one, and nothing else of it. */
export const placeOf = ({ project, id }: { readonly project: Project; readonly id: string }): Place =>
  ({ project, id }) as Place;

/** A place by the name of the change that left it. */
export const momentOf = (label: string, place: Place): Moment => ({ ...placeOf(place), label });

/** The history after a change by that name, which left a place; what had been undone is forgotten. */
export function remember(history: History, label: string, left: Place): History {
  return { past: [...history.past, momentOf(label, left)].slice(-LIMIT), future: [] };
}

/** One step back: the place to return to and the history from there; undefined where there is nothing to undo. */
export function stepBack({ past, future }: History, now: Place): Step | undefined {
  const last = past.at(-1);
  if (!last) return undefined;
  return stepTo(last, { past: past.slice(0, -1), future: [momentOf(last.label, now), ...future] });
}

/** One step forward again; undefined where nothing was undone. */
export function stepForward({ past, future }: History, now: Place): Step | undefined {
  const [next, ...others] = future;
  if (!next) return undefined;
  return stepTo(next, { past: [...past, momentOf(next.label, now)], future: others });
}

const stepTo = (place: Place, history: History): Step => ({ ...placeOf(place), history });

/**
 * The history of a copy that goes on as a project of its own: its steps are the copy's, by the copy's name, and leave the
 * first one as it is.
 */
export function historyOfCopy({ past, future }: History, from: Place, to: Place): History {
  const { name } = from.project;
  const own = ({ label, project, id }: Moment): Moment => {
    const named = project.name === name ? { ...project, name: to.project.name } : project;
    return momentOf(label, id === from.id ? placeOf({ project: named, id: to.id }) : placeOf({ project, id }));
  };
  return { past: past.map(own), future: future.map(own) };
}
