import type { Phrase } from '../../length';
import type { BenchState } from './state';
import { type Station, stationOf } from './stations';

/** Whether something typed can't be read or drawn, so that the drawing shows the last good state. */
export const isStale = (state: BenchState): boolean =>
  state.problems.length > 0 || Object.values(state.entries).some((entry) => entry.problem !== undefined);

/** The sentence that stands beside a field: about its text first, then about its value. */
export function problemAt(state: BenchState, path: string): Phrase | undefined {
  const entry = state.entries[path]?.problem;
  return entry ?? state.problems.find((problem) => problem.field === path)?.phrase;
}

/** The first field, in any station, that asks for attention. */
export function firstProblem(state: BenchState): { readonly path: string; readonly phrase: Phrase } | undefined {
  const typed = Object.entries(state.entries).find(([, entry]) => entry.problem);
  if (typed?.[1].problem) return { path: typed[0], phrase: typed[1].problem };
  const [problem] = state.problems;
  return problem && { path: problem.field, phrase: problem.phrase };
}

/** Whether a field of the station asks for attention. */
export function stationAsks(state: BenchState, station: Station): boolean {
  return (
    state.problems.some((problem) => stationOf(problem.field) === station) ||
    Object.entries(state.entries).some(([path, entry]) => entry.problem && stationOf(path) === station)
  );
}
