import type { Mm } from '../length';
import { curvePart, straight } from './curve';
import { outlineArea, pathMeetings } from './meetings';
import { curveParallel, turnBetween } from './parallel';
import { outlineCurves, pathEnd, pathEndWay, pathStart, pathStartWay } from './path';
import { distance, moved } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Edge, Outline } from './types';

/** Less than this turn (radians, 6°) is no corner where sides have to meet; they are joined across. @source tolerance */
const CORNER = 0.1;

/** One smooth side of the outline, moved inwards. */
interface Side {
  readonly edge: number;
  readonly run: readonly Curve[];
}

/**
 * The parallel of a closed outline on its inside, each edge at its own distance: the net line of a pattern that was
 * drawn with its allowances.
 *
 * @param outline closed, either way round; corners within an edge stay corners
 * @param distanceOf the distance of each edge in mm, 0 or more
 * @returns an edge for an edge, ends meeting; undefined where so much can't be taken off, because two neighbours would
 *   no longer meet
 */
export function insetOutline<Name extends string>(
  outline: Outline<Name>,
  distanceOf: (name: Name) => Mm,
): readonly Edge<Name>[] | undefined {
  const inside = outlineArea(outlineCurves(outline)) > 0 ? -1 : 1;
  const sides: Side[] = outline.flatMap(({ name, curves }, edge) =>
    smoothRuns(curves).map((run) => ({
      edge,
      run: run.flatMap((curve) => curveParallel(curve, inside * distanceOf(name)).flatMap((part) => part.curves)),
    })),
  );
  const most = Math.max(...outline.map(({ name }) => distanceOf(name)));
  const runs = outline.flatMap(({ curves }) => smoothRuns(curves));
  const turns = runs.map((run, i) => turnBetween(pathEndWay(run), pathStartWay(runs[(i + 1) % runs.length] ?? run)));
  for (let i = 0; i < sides.length; i += 1) {
    const next = (i + 1) % sides.length;
    const [before, after] = [sides[i], sides[next]] as [Side, Side];
    const met = joined(before.run, after.run, most, turns[i] as number);
    if (!met) return undefined;
    sides[i] = { ...before, run: met[0] };
    sides[next] = { ...after, run: met[1] };
  }
  return outline.map(({ name }, edge) => ({
    name,
    curves: sides.filter((side) => side.edge === edge).flatMap((side) => side.run),
  }));
}

/** The curves of an edge, parted at its corners. */
function smoothRuns(curves: readonly Curve[]): readonly (readonly Curve[])[] {
  const runs: Curve[][] = [];
  for (const curve of curves) {
    const run = runs.at(-1);
    if (run && Math.abs(turnBetween(pathEndWay(run), pathStartWay([curve]))) < TOLERANCE.smoothTurn) run.push(curve);
    else runs.push([curve]);
  }
  return runs;
}

/** Two neighbours cut where they cross, or carried on straight until they do. */
function joined(
  before: readonly Curve[],
  after: readonly Curve[],
  most: Mm,
  turn: number,
): readonly [readonly Curve[], readonly Curve[]] | undefined {
  if (before.length === 0 || after.length === 0) return undefined;
  const [end, start] = [pathEnd(before), pathStart(after)];
  if (distance(end, start) <= TOLERANCE.parallel) return [before, after];
  if (Math.abs(turn) < CORNER) return [[...before, straight(end, start)], after];
  const reach = 4 * most;
  const on = [...before, straight(end, moved(end, pathEndWay(before), reach))];
  const from = [straight(moved(start, pathStartWay(after), -reach), start), ...after];
  const meeting = pathMeetings(on, from).toSorted(
    (a, b) => distance(a.at, end) + distance(a.at, start) - distance(b.at, end) - distance(b.at, start),
  )[0];
  if (!meeting) return undefined;
  const { first, second } = meeting;
  const kept = [...on.slice(0, first.index), curvePart(on[first.index] as Curve, 0, first.t)];
  const rest = [curvePart(from[second.index] as Curve, second.t, 1), ...from.slice(second.index + 1)];
  return [kept.filter(isDrawn), rest.filter(isDrawn)];
}

const isDrawn = ([a, , , d]: Curve): boolean => distance(a, d) > TOLERANCE.samePoint;
