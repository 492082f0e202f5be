import type { BenchState } from './state';

/** The part of the bench that belongs to the project on it. */
export type Placed = Pick<
  BenchState,
  'begun' | 'id' | 'project' | 'draft' | 'problems' | 'entries' | 'station' | 'history' | 'before' | 'running' | 'step'
>;

type Going = 'begun' | 'before' | 'running' | 'step';

/** What of a state belongs to its project, to be put on the bench with nothing going on. */
export const placed = ({ id, project, draft, problems, entries, station, history }: Omit<Placed, Going>): Placed => ({
  begun: true,
  id,
  project,
  draft,
  problems,
  entries,
  station,
  history,
  before: undefined,
  running: undefined,
  step: undefined,
});
