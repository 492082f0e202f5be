import { checksOf, draft, type Project, sheetsOf, workingOf } from '../../src/project';
import { benchProjects } from './bodies';
import { type Timing, timing } from './timing';

/** Runs before anything is timed: until the engine has compiled the hot paths. */
const WARM_UP = 200;

/**
 * Times the whole pipeline: one body many times, then many bodies once each, with their stages.
 *
 * @param runs of the one body
 * @param bodies how many different ones
 */
export function timeDrafts(runs: number, bodies: number): readonly Timing[] {
  const projects = benchProjects(bodies);
  const one = projects[0] as Project;
  for (let i = 0; i < WARM_UP; i += 1) draft(projects[i % projects.length] as Project);
  const stages = new Map<string, number[]>();
  const timed = (project: Project): number => {
    const start = performance.now();
    let last = start;
    const done = (stage: string) => {
      const now = performance.now();
      stages.set(stage, [...(stages.get(stage) ?? []), now - last]);
      last = now;
    };
    const result = draft(project, done);
    if (!result.ok) throw new Error(`a bench body was refused: ${result.problems.map((p) => p.field).join()}`);
    // These are found when they are asked for.
    if (checksOf(result.value).length > 0) done('checks');
    if (workingOf(result.value).length > 0) done('working');
    if (sheetsOf(result.value).sheets.length > 0) done('sheets');
    return performance.now() - start;
  };
  const same = Array.from({ length: runs }, () => timed(one));
  stages.clear();
  const many = projects.map(timed);
  return [
    timing('one body, whole draft', same),
    timing(`${bodies} bodies, whole draft`, many),
    ...[...stages].map(([stage, times]) => timing(`  of it: ${stage}`, times)),
  ];
}
