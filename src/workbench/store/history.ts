import { type Project, withoutLastPrint } from '../../project';

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

/** A place that can be come back to, and the name of the change that left it. */
export interface Moment extends Place {
  readonly label: string;
}

/** What can be undone, and what was undone and can be done again: states that can be come back to. */
export interface History<One = Moment> {
  readonly past: readonly One[];
  readonly future: readonly One[];
}

export const noHistory: History<never> = { past: [], future: [] };

/** States share what did not change, so that two hundred of them weigh little. */
const LIMIT = 200;

/** The place of something that has one, and nothing else of it. */
export const placeOf = ({ project, id }: { readonly project: Project; readonly id: string }): Place =>
  ({ project, id }) as Place;

/** A place by the name of the change that left it. */
export const momentOf = (label: string, place: Place): Moment => ({ ...placeOf(place), label });

/**
 * The history after a change; what had been undone is forgotten.
 *
 * @param left the state that it left
 * @param goesOn whether it belongs to the change before, and is undone with it
 */
export function remember<One>({ past }: History<One>, left: One, goesOn = false): History<One> {
  return { past: goesOn ? past : [...past, left].slice(-LIMIT), future: [] };
}

/** A state that was come back to, and the history from there. */
export interface Returned<One> {
  readonly to: One;
  readonly history: History<One>;
}

/**
 * One step back.
 *
 * @param leave the present state as it is to be come back to from the one that is stepped to
 * @returns undefined where there is nothing to undo
 */
export function stepBack<One>({ past, future }: History<One>, leave: (to: One) => One): Returned<One> | undefined {
  const to = past.at(-1);
  return to === undefined ? undefined : { to, history: { past: past.slice(0, -1), future: [leave(to), ...future] } };
}

/** One step forward again; undefined where nothing was undone. */
export function stepForward<One>({ past, future }: History<One>, leave: (to: One) => One): Returned<One> | undefined {
  const [to, ...others] = future;
  return to === undefined ? undefined : { to, history: { past: [...past, leave(to)], future: others } };
}

/**
 * The history of a copy that goes on as a project of its own: its steps are the copy's, by the copy's name, and leave the
 * first one as it is.
 */
export function historyOfCopy({ past, future }: History, from: Place, to: Place): History {
  const { name } = from.project;
  const own = ({ label, project, id }: Moment): Moment => {
    const named = project.name === name ? { ...project, name: to.project.name } : project;
    return momentOf(
      label,
      id === from.id ? placeOf({ project: withoutLastPrint(named), id: to.id }) : placeOf({ project, id }),
    );
  };
  return { past: past.map(own), future: future.map(own) };
}
