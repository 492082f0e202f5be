import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import { flattenCurves, outlineCurves, parallelOutline, TOLERANCE } from '../../src/plane';
import { draft } from '../../src/project';
import { benchProjects } from './bodies';

/** A way to draw a parallel outline: how long it takes, and how many pieces a cutter's file gets. */
export interface ParallelTiming {
  readonly name: string;
  readonly p50: number;
  readonly p95: number;
  readonly pieces: number;
}

const AWAY = 15.875;
const REPEATS = 3;

/** Our parallel curves beside a general polygon offsetter's, on the same stitching lines at the same distance. */
export function timeParallels(bodies: number): readonly ParallelTiming[] {
  const outlines = benchProjects(bodies).flatMap((project) => {
    const result = draft(project);
    const leg = result.ok ? result.value.pieces[0] : undefined;
    return leg ? [leg.stitchLine] : [];
  });
  const polygons = outlines.map((outline) => flattenCurves(outlineCurves(outline), TOLERANCE.chord / 4));
  const ours = outlines.map((outline) => timed(() => outlineCurves(parallelOutline(outline, () => AWAY)).length));
  const theirs = polygons.map((points) =>
    timed(
      () =>
        inflatePathsD([points.map(({ x, y }) => ({ x, y }))], AWAY, JoinType.Miter, EndType.Polygon, 4, 4, 0.01).flat()
          .length,
    ),
  );
  return [summed('parallel curves', ours), summed('polygon offset (reference)', theirs)];
}

interface Timed {
  readonly ms: number;
  readonly pieces: number;
}

function timed(work: () => number): Timed {
  let pieces = work();
  const start = performance.now();
  for (let i = 0; i < REPEATS; i += 1) pieces = work();
  return { ms: (performance.now() - start) / REPEATS, pieces };
}

function summed(name: string, runs: readonly Timed[]): ParallelTiming {
  const sorted = runs.map((run) => run.ms).sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  const pieces = runs.reduce((sum, run) => sum + run.pieces, 0) / runs.length;
  return { name, p50: at(0.5), p95: at(0.95), pieces };
}
