import type { Mm } from '../length';
import { curveCurvature, curveTangent, straight } from './curve';
import { type ParallelRun, parallelPoint, turnBetween } from './parallel';
import { type CutSides, endsCut, startsCut } from './parallel-cuts';
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
  const around = (i: number) => (i + sides.length) % sides.length;
  const runs = sides.map((side): readonly ParallelRun[] | undefined => side.runs);
  const lines = sides.map((): Between => ({ leaving: [], arriving: [] }));
  const skipped = new Set<number>();
  /** The sides of one edge from a corner on, with what is left of each. */
  const fromCorner = (i: number, step: 1 | -1): readonly CornerSide[] => {
    const chain: CornerSide[] = [];
    for (
      let at = around(i);
      sides[at]?.edge === sides[around(i)]?.edge && chain.length < sides.length;
      at = around(at + step)
    )
      chain.push({ ...(sides[at] as CornerSide), runs: runs[at] ?? [] });
    return chain;
  };
  sides.forEach((_, i) => {
    if (skipped.has(i)) return;
    const corner = cornerOf(fromCorner(i, -1), fromCorner(i + 1, 1));
    lines[i] = corner;
    corner.before?.forEach((left, k) => {
      runs[around(i - k)] = left;
      if (k > 0) lines[around(i - k)] = { leaving: [], arriving: [] };
    });
    corner.after?.forEach((left, k) => {
      runs[around(i + 1 + k)] = left;
      if (k > 0) skipped.add(around(i + k));
    });
  });
  return sides
    .flatMap((side, i): readonly Strand[] => {
      const after = sides[around(i + 1)] as CornerSide;
      const left = runs[i];
      return [
        { edge: side.edge, curves: left ? allAlong({ ...side, runs: left }) : [] },
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

/** What lies between two sides: straight lines of the one before and of the one after. */
interface Between {
  readonly leaving: readonly Curve[];
  readonly arriving: readonly Curve[];
}

/** The same, and what is left of the sides on one hand of it if they were cut, from the corner on. */
interface Corner extends Between {
  readonly before?: CutSides['runs'];
  readonly after?: CutSides['runs'];
}

/** A corner between the sides that arrive at it and those that leave it, on both hands from the corner on. */
function cornerOf(arriving: readonly CornerSide[], leaving: readonly CornerSide[]): Corner {
  const [before, after] = [arriving[0] as CornerSide, leaving[0] as CornerSide];
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
    const cut = endsCut(arriving, start, wayStart, LONGEST_CORNER * before.away);
    return cut ? { leaving: [], arriving: lineTo(cut.at, start), before: cut.runs } : step;
  }
  if (ahead(meet, start, wayStart) > 0) {
    const cut = startsCut(leaving, end, wayEnd, LONGEST_CORNER * after.away);
    return cut ? { leaving: lineTo(end, cut.at), arriving: [], after: cut.runs } : step;
  }
  return { leaving: lineTo(end, meet), arriving: lineTo(meet, start) };
}

const ahead = (p: Point, from: Point, way: Point): Mm => dot(subtract(p, from), way);

const lineTo = (a: Point, b: Point): readonly Curve[] => (distance(a, b) < TOLERANCE.samePoint ? [] : [straight(a, b)]);
