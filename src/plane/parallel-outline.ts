import type { Mm } from '../length';
import { curveIsStraight, straight } from './curve';
import { curveParallel } from './parallel';
import { type CornerSide, cornerStrands } from './parallel-corners';
import { outermostWay } from './parallel-outermost';
import { pathEnd } from './path';
import { cross, distance, subtract, unit } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Edge, Outline } from './types';

/**
 * The parallel of a closed outline on its outside, each edge at its own distance: the cut line of a stitching line.
 *
 * It is the outer border of everything that lies within an edge's distance of that edge, with outer corners filled up to
 * where both sides, carried on straight, meet: nothing is rounded, because a sewist matches corners. At inner corners,
 * and in hollows tighter than their distance, the sides are cut where they cross, so that no place of an edge has less
 * than its distance.
 *
 * @param outline closed and clockwise; within an edge the curves follow one another without a gap
 * @param distanceOf the distance of each edge in mm, 0 or more
 * @returns an edge for an edge; the ends of neighbours coincide; an edge that lies wholly within its neighbours'
 *   distances is one point
 */
export function parallelOutline<Name extends string>(
  outline: Outline<Name>,
  distanceOf: (name: Name) => Mm,
): readonly Edge<Name>[] {
  const sides = outline.flatMap(({ name, curves }, edge) => {
    const away = distanceOf(name);
    return curves.filter(isDrawn).map((curve): CornerSide => ({ edge, curve, away, runs: curveParallel(curve, away) }));
  });
  const parts = outermostWay(cornerStrands(sides));
  const found = outline.map(({ name }) => ({ name, curves: [] as Curve[] }));
  // An edge once left is not come back to: what little may follow belongs to the one that was reached.
  let reached = 0;
  for (const { edge, curve } of parts) {
    reached = Math.max(reached, edge);
    addTo(found[reached]?.curves ?? [], curve);
  }
  return found.map((edge, i) => (edge.curves.length > 0 ? edge : { name: edge.name, curves: pointEdge(found, i) }));
}

const isDrawn = ([a, , , d]: Curve): boolean => distance(a, d) > TOLERANCE.samePoint;

/** A straight line that goes on straight is one line, so that a corner doesn't leave a joint in the middle of an edge. */
function addTo(run: Curve[], next: Curve): void {
  const last = run.at(-1);
  if (last && curveIsStraight(last) && curveIsStraight(next) && goOn(last, next))
    run.splice(-1, 1, straight(last[0], next[3]));
  else run.push(next);
}

const goOn = (a: Curve, b: Curve): boolean =>
  Math.abs(cross(unit(subtract(a[3], a[0])), unit(subtract(b[3], b[0])))) < TOLERANCE.samePoint;

/** An edge of which nothing is left is the point where its neighbours meet. */
function pointEdge(edges: readonly Edge[], index: number): readonly Curve[] {
  const before = [...edges.slice(index), ...edges.slice(0, index)].findLast((edge) => edge.curves.length > 0);
  const at = pathEnd(before?.curves ?? []);
  return [[at, at, at, at]];
}
