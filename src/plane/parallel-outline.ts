import type { Mm } from '../length';
import { cutAtCrossing, type JoinedRuns, joinRuns, withStart } from './join-runs';
import { curveParallel, turnBetween } from './parallel';
import { pathEnd, pathEndWay, pathLength, pathStart, pathStartWay } from './path';
import { distance } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Edge, Outline } from './types';

/**
 * The parallel of a closed outline on its outside, each edge at its own distance: the cut line of a stitching line.
 *
 * @param outline closed and clockwise; within an edge the curves follow one another without a gap
 * @param distanceOf the distance of each edge in mm, 0 or more
 * @returns an edge for an edge; the ends of neighbours coincide (see {@link joinRuns} for the corners); an edge that
 *   curves tighter than its distance all along is one point
 */
export function parallelOutline<Name extends string>(
  outline: Outline<Name>,
  distanceOf: (name: Name) => Mm,
): readonly Edge<Name>[] {
  const edges = outline.map((edge) => ({
    name: edge.name,
    curves: [...parallelRun(edge.curves, distanceOf(edge.name))],
  }));
  const drawn = edges.filter((edge) => edge.curves.length > 0);
  // Outer corners first: what is carried on straight there may be what an inner corner has to be cut at.
  const corners = drawn.map((before, i) => ({ before, after: drawn[(i + 1) % drawn.length] ?? before }));
  for (const { before, after } of [...corners.filter(isOuter), ...corners.filter((corner) => !isOuter(corner))]) {
    const joined = joinRuns(before.curves, after.curves);
    before.curves = [...joined.first];
    after.curves = [...joined.second];
  }
  return edges.map((edge, i) => (edge.curves.length > 0 ? edge : { name: edge.name, curves: pointEdge(edges, i) }));
}

const isOuter = ({ before, after }: { readonly before: Edge; readonly after: Edge }): boolean =>
  turnBetween(pathEndWay(before.curves), pathStartWay(after.curves)) > TOLERANCE.smoothTurn;

/** An edge that curves tighter than its distance all along has no parallel: it shrinks to the point where its neighbours meet. */
function pointEdge(edges: readonly Edge[], index: number): readonly Curve[] {
  const before = [...edges.slice(index), ...edges.slice(0, index)].findLast((edge) => edge.curves.length > 0);
  const at = pathEnd(before?.curves ?? []);
  return [[at, at, at, at]];
}

/**
 * The parallel of one edge, as one run. Where a stretch was left out, the runs on both sides are cut where they cross;
 * where they don't, the shorter one lies inside the loop and goes too: what stays is then joined to the next edge.
 *
 * @param curves of the edge
 * @param away distance in mm
 */
function parallelRun(curves: readonly Curve[], away: Mm): readonly Curve[] {
  const runs = curves.flatMap((curve) => curveParallel(curve, away));
  return runs.reduce<readonly Curve[]>((before, after) => {
    if (before.length === 0) return after;
    const meets = distance(pathEnd(before), pathStart(after)) < TOLERANCE.parallel;
    const joined = meets ? { first: before, second: withStart(after, pathEnd(before)) } : joinedRuns(before, after);
    if (joined) return [...joined.first, ...joined.second];
    return pathLength(before) > pathLength(after) ? before : after;
  }, []);
}

/** Two runs of one edge joined at their corner or crossing, if they have one. */
function joinedRuns(before: readonly Curve[], after: readonly Curve[]): JoinedRuns | undefined {
  const turn = turnBetween(pathEndWay(before), pathStartWay(after));
  return turn > TOLERANCE.smoothTurn ? joinRuns(before, after) : cutAtCrossing(before, after);
}
