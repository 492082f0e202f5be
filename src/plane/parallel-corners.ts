import type { Mm } from '../length';
import { curveCurvature, curveMeetsLine, curvePart, curvePoint, curveTangent, straight } from './curve';
import { type ParallelRun, parallelPoint, turnBetween } from './parallel';
import { pathEnd, pathReverse } from './path';
import { distance, dot, linesMeet, subtract } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Point } from './types';

/** A corner may be extended by this many times the distance between the sides' ends before it is cut off straight. */
const LONGEST_CORNER = 4;

/** One curve of an outline, with the runs of its parallel. */
export interface CornerSide {
  /** The edge that it belongs to, by number. */
  readonly edge: number;
  readonly curve: Curve;
  readonly away: Mm;
  readonly runs: readonly ParallelRun[];
}

/** A run of curves of one edge. Each strand starts where the one before it ended, all the way round. */
export interface Strand {
  readonly edge: number;
  readonly curves: readonly Curve[];
}

/**
 * Everything that a parallel's outer border can consist of, in order and all the way round: the runs of each side and
 * what lies between them at the corners.
 *
 * Outer corners: both sides go on straight until they meet; a side that would stick out beyond the other, because the
 * other has much less distance, is cut off at it. Inner corners: by way of the corner itself, so that the sides
 * cross. Smooth meetings at different distances: a straight step.
 *
 * @param sides the curves of the outline, in order
 */
export function cornerStrands(sides: readonly CornerSide[]): readonly Strand[] {
  const runs = sides.map((side) => side.runs);
  const lines = sides.map((before, i) => {
    const next = (i + 1) % sides.length;
    const corner = cornerOf(
      { ...before, runs: runs[i] ?? [] },
      { ...(sides[next] as CornerSide), runs: runs[next] ?? [] },
    );
    if (corner.before) runs[i] = corner.before;
    if (corner.after) runs[next] = corner.after;
    return corner;
  });
  return sides
    .flatMap((side, i): readonly Strand[] => {
      const after = sides[(i + 1) % sides.length] as CornerSide;
      return [
        { edge: side.edge, curves: allAlong({ ...side, runs: runs[i] ?? [] }) },
        { edge: side.edge, curves: lines[i]?.leaving ?? [] },
        { edge: after.edge, curves: lines[i]?.arriving ?? [] },
      ];
    })
    .filter(({ curves }) => curves.length > 0);
}

/**
 * The runs of a side one after another. Where a stretch was left out, because the hollow is tighter there than the
 * distance, its band ends at the centres of its curvature: beyond them another place of the side is nearer.
 */
function allAlong({ curve, away, runs }: CornerSide): readonly Curve[] {
  const leftOut = (from: number, to: number): readonly Curve[] => {
    if (to <= from) return [];
    const centres = Array.from({ length: CENTRES + 1 }, (_, i) =>
      centreAt(curve, away, from + ((to - from) * i) / CENTRES),
    );
    const way = [parallelPoint(curve, away, from), ...centres, parallelPoint(curve, away, to)];
    return way.slice(1).flatMap((p, i) => lineTo(way[i] as Point, p));
  };
  const ends = runs.map((run) => run.to);
  return [
    ...runs.flatMap((run, i) => [...leftOut(ends[i - 1] ?? 0, run.from), ...run.curves]),
    ...leftOut(ends.at(-1) ?? 0, 1),
  ];
}

/** Straight lines for the centres of a stretch's curvature. They are hardly ever on the border. */
const CENTRES = 8;

/** The centre of curvature at a place of a hollow, or the parallel's point if that is nearer. */
const centreAt = (curve: Curve, away: Mm, t: number): Point =>
  parallelPoint(curve, Math.min(away, -1 / Math.min(-1 / away, curveCurvature(curve, t))), t);

/** What lies between two sides: straight lines of the one before and of the one after; and a side's runs, if it was cut. */
interface Corner {
  readonly leaving: readonly Curve[];
  readonly arriving: readonly Curve[];
  readonly before?: readonly ParallelRun[];
  readonly after?: readonly ParallelRun[];
}

function cornerOf(before: CornerSide, after: CornerSide): Corner {
  const corner = before.curve[3];
  const end = parallelPoint(before.curve, before.away, 1);
  const start = parallelPoint(after.curve, after.away, 0);
  const [wayEnd, wayStart] = [curveTangent(before.curve, 1), curveTangent(after.curve, 0)];
  const gap = distance(end, start);
  if (gap < TOLERANCE.samePoint) return { leaving: [], arriving: [] };
  const turn = turnBetween(wayEnd, wayStart);
  if (turn < -TOLERANCE.smoothTurn) return { leaving: lineTo(end, corner), arriving: lineTo(corner, start) };
  const step: Corner = { leaving: lineTo(end, start), arriving: [] };
  const meet = turn > TOLERANCE.smoothTurn ? linesMeet(end, wayEnd, start, wayStart) : undefined;
  if (!meet || distance(meet, end) + distance(meet, start) > 2 * LONGEST_CORNER * gap) return step;
  if (ahead(meet, end, wayEnd) < 0) {
    const cut = cutEnd(before, start, wayStart);
    return cut ? { leaving: [], arriving: lineTo(cut.at, start), before: cut.runs } : step;
  }
  if (ahead(meet, start, wayStart) > 0) {
    const cut = cutStart(after, end, wayEnd);
    return cut ? { leaving: lineTo(end, cut.at), arriving: [], after: cut.runs } : step;
  }
  return { leaving: lineTo(end, meet), arriving: lineTo(meet, start) };
}

const ahead = (p: Point, from: Point, way: Point): Mm => dot(subtract(p, from), way);

const lineTo = (a: Point, b: Point): readonly Curve[] => (distance(a, b) < TOLERANCE.samePoint ? [] : [straight(a, b)]);

/** The runs of a side whose end is cut off, and the point where it is. */
interface CutRuns {
  readonly at: Point;
  readonly runs: readonly ParallelRun[];
}

/** A side's runs without what lies beyond a straight line at their end; undefined where the line isn't met near it. */
function cutEnd({ runs, away }: CornerSide, on: Point, way: Point): CutRuns | undefined {
  const last = runs.at(-1);
  if (last?.to !== 1) return undefined;
  const cut = cutRun(last.curves, on, way, LONGEST_CORNER * away);
  return cut && { at: cut.at, runs: [...runs.slice(0, -1), { ...last, curves: cut.curves }] };
}

/** The same at the start. */
function cutStart({ runs, away }: CornerSide, on: Point, way: Point): CutRuns | undefined {
  const first = runs[0];
  if (first?.from !== 0) return undefined;
  const cut = cutRun(pathReverse(first.curves), on, way, LONGEST_CORNER * away);
  return cut && { at: cut.at, runs: [{ ...first, curves: pathReverse(cut.curves) }, ...runs.slice(1)] };
}

/** A run up to its last crossing of a straight line, if that is within reach of its end. */
function cutRun(
  run: readonly Curve[],
  on: Point,
  way: Point,
  reach: Mm,
): { readonly at: Point; readonly curves: readonly Curve[] } | undefined {
  for (let i = run.length - 1; i >= 0; i -= 1) {
    const curve = run[i] as Curve;
    const t = curveMeetsLine(curve, on, way).at(-1);
    if (t === undefined) continue;
    const at = curvePoint(curve, t);
    if (distance(at, pathEnd(run)) > reach) return undefined;
    return { at, curves: [...run.slice(0, i), ...(t > 0 ? [curvePart(curve, 0, t)] : [])] };
  }
  return undefined;
}
