import type { Mm } from '../length';
import { curveIsStraight, curvePart, straight } from './curve';
import { pathMeetings } from './meetings';
import { turnBetween } from './parallel';
import { pathEnd, pathEndWay, pathReverse, pathStart, pathStartWay } from './path';
import { distance, dot, linesMeet, subtract } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Point } from './types';

/** A corner may be extended by this many times the distance between the ends before it is cut off straight. */
const LONGEST_CORNER = 4;

export interface JoinedRuns {
  readonly first: readonly Curve[];
  readonly second: readonly Curve[];
}

/**
 * Joins the end of one run of curves to the start of the next, so that they share a point.
 *
 * Outer corners: both go on straight until they meet (nothing is rounded: a sewist matches corners). Inner corners and
 * loops: both are cut where they cross. Smooth meetings at different distances: a straight step. Corners sharper than
 * {@link LONGEST_CORNER} allows are cut off straight.
 *
 * @param first the run that ends here
 * @param second the run that starts here
 */
export function joinRuns(first: readonly Curve[], second: readonly Curve[]): JoinedRuns {
  const end = pathEnd(first);
  const start = pathStart(second);
  const gap = distance(end, start);
  if (gap < TOLERANCE.samePoint) return { first, second: withStart(second, end) };
  const wayEnd = pathEndWay(first);
  const wayStart = pathStartWay(second);
  const meet = linesMeet(end, wayEnd, start, wayStart);
  const turn = turnBetween(wayEnd, wayStart);
  // At an inner corner the runs overlap and cross; at an outer one they stand apart and go on until they meet.
  if (turn < -TOLERANCE.smoothTurn) {
    const crossed = cutAtCrossing(first, second);
    if (crossed) return crossed;
  }
  const meetsAhead = meet && ahead(meet, end, wayEnd) >= 0 && ahead(meet, start, wayStart) <= 0;
  if (
    meetsAhead &&
    turn > TOLERANCE.smoothTurn &&
    distance(meet, end) + distance(meet, start) <= 2 * LONGEST_CORNER * gap
  ) {
    return { first: extended(first, meet), second: extendedBack(second, meet) };
  }
  return cutAtCrossing(first, second) ?? { first: [...first, straight(end, start)], second };
}

const ahead = (p: Point, from: Point, way: Point): Mm => dot(subtract(p, from), way);

/** The run carried on straight to a point: a straight last line is lengthened, not followed by another. */
function extended(run: readonly Curve[], to: Point): readonly Curve[] {
  const last = run.at(-1) as Curve;
  if (distance(last[3], to) < TOLERANCE.samePoint) return run;
  return curveIsStraight(last) ? [...run.slice(0, -1), straight(last[0], to)] : [...run, straight(last[3], to)];
}

const extendedBack = (run: readonly Curve[], from: Point): readonly Curve[] =>
  pathReverse(extended(pathReverse(run), from));

/** Cuts both runs at the crossing that is nearest to the corner: the last on the first run. */
export function cutAtCrossing(first: readonly Curve[], second: readonly Curve[]): JoinedRuns | undefined {
  const meeting = pathMeetings(first, second).at(-1);
  if (!meeting) return undefined;
  const head = first.slice(0, meeting.first.index + 1);
  const tail = second.slice(meeting.second.index);
  const cut = [...head.slice(0, -1), curvePart(head.at(-1) as Curve, 0, Math.max(meeting.first.t, 1e-9))];
  const rest = [curvePart(tail[0] as Curve, Math.min(meeting.second.t, 1 - 1e-9), 1), ...tail.slice(1)];
  return { first: withEnd(cut, meeting.at), second: withStart(rest, meeting.at) };
}

/** The run with its last point set to `to`: closes gaps of rounding only. */
function withEnd(run: readonly Curve[], to: Point): readonly Curve[] {
  const [a, b, c] = run.at(-1) as Curve;
  return [...run.slice(0, -1), [a, b, c, to]];
}

/** The run with its first point set to `from`: closes gaps of rounding only. */
export function withStart(run: readonly Curve[], from: Point): readonly Curve[] {
  const [, b, c, d] = run[0] as Curve;
  return [[from, b, c, d], ...run.slice(1)];
}
