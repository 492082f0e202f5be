import type { Mm } from '../length';
import { joinRuns } from './join-runs';
import { curveParallel } from './parallel';
import type { Curve, Edge, Outline } from './types';

/**
 * The parallel of a closed outline on its outside, each edge at its own distance: the cut line of a stitching line.
 *
 * @param outline closed and clockwise; within an edge the curves follow one another without a gap
 * @param distanceOf the distance of each edge in mm, 0 or more
 * @returns an edge for an edge; the ends of neighbours coincide (see {@link joinRuns} for the corners)
 */
export function parallelOutline<Name extends string>(
  outline: Outline<Name>,
  distanceOf: (name: Name) => Mm,
): readonly Edge<Name>[] {
  const edges = outline.map((edge) => ({
    name: edge.name,
    curves: [...parallelRun(edge.curves, distanceOf(edge.name))],
  }));
  for (let i = 0; i < edges.length; i += 1) {
    const before = edges[i] as Edge<Name> & { curves: Curve[] };
    const after = edges[(i + 1) % edges.length] as Edge<Name> & { curves: Curve[] };
    const joined = joinRuns(before.curves, after.curves);
    before.curves = [...joined.first];
    after.curves = [...joined.second];
  }
  return edges;
}

/** The parallel of one edge: its curves' parallels, joined to one run. */
export function parallelRun(curves: readonly Curve[], away: Mm): readonly Curve[] {
  return curves
    .flatMap((curve) => curveParallel(curve, away))
    .reduce<readonly Curve[]>((run, next) => {
      if (run.length === 0) return next;
      const joined = joinRuns(run, next);
      return [...joined.first, ...joined.second];
    }, []);
}
