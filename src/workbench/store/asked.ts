import { NEEDED, type Station } from '../../project';
import type { Phrase } from '../../words';
import type { BenchState, Entry } from './state';
import { stationOf } from './stations';

/** Whether something typed can't be read or drawn, so that the drawing shows the last good state. */
export const isStale = (state: BenchState): boolean =>
  state.problems.length > 0 || Object.values(state.entries).some((entry) => entry.problem !== undefined);

/** The same, whatever stands or is missing about the body: for work that brings bodies of its own. */
export const isStaleBeyondBody = (state: BenchState): boolean =>
  state.problems.some(({ field }) => !field.startsWith('body.')) ||
  Object.entries(state.entries).some(([path, { problem }]) => problem !== undefined && !path.startsWith('body.'));

/** The sentence that stands beside a field: about its text first, then about its value. */
export function problemAt(state: BenchState, path: string): Phrase | undefined {
  const entry = state.entries[path]?.problem;
  return entry ?? state.problems.find((problem) => problem.field === path)?.phrase;
}

/** Whether a field is empty that has to be filled: nothing is wrong with it, it only waits. */
export const isWaiting = (state: BenchState, path: string): boolean => waiting(state.entries[path]);

/** Whether needed measurements are still to be taken: then what is drawn is nobody’s, and nothing is told of it. */
export const isUnmeasured = (state: BenchState): boolean => NEEDED.some((key) => isWaiting(state, `body.${key}`));

/** The fields that wait to be filled, where nothing else asks for attention; none where something is wrong. */
export function onlyWaiting(state: BenchState): readonly string[] {
  const asking = Object.entries(state.entries).filter(([, entry]) => entry.problem);
  return state.problems.length > 0 || !asking.every(([, entry]) => waiting(entry)) ? [] : asking.map(([path]) => path);
}

const waiting = (entry: Entry | undefined): boolean => entry?.problem !== undefined && entry.text.trim() === '';

/** The first field, in any station, that asks for attention: what is wrong before what only waits. */
export function firstProblem(state: BenchState): { readonly path: string; readonly phrase: Phrase } | undefined {
  const typed = Object.entries(state.entries).flatMap(([path, entry]) =>
    entry.problem ? [{ path, phrase: entry.problem, waits: waiting(entry) }] : [],
  );
  const [problem] = state.problems;
  const refused = problem && { path: problem.field, phrase: problem.phrase };
  return typed.find(({ waits }) => !waits) ?? refused ?? typed[0];
}

/** Whether a field of the station asks for attention. */
export function stationAsks(state: BenchState, station: Station): boolean {
  return (
    state.problems.some((problem) => stationOf(problem.field) === station) ||
    Object.entries(state.entries).some(([path, entry]) => entry.problem && stationOf(path) === station)
  );
}
