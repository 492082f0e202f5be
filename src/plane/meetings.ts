import type { Mm } from '../length';
import { curveCrossings, curveLoop } from './crossings';
import { cross, distance } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Point } from './types';

/** Where two runs of curves meet: the point, and on each run the curve's index and the parameter on it. */
export interface Meeting {
  readonly at: Point;
  readonly first: { readonly index: number; readonly t: number };
  readonly second: { readonly index: number; readonly t: number };
}

/** All points where two open runs of curves meet or cross, in the order of the first run. */
export function pathMeetings(first: readonly Curve[], second: readonly Curve[]): readonly Meeting[] {
  const found: Meeting[] = [];
  first.forEach((curve, i) => {
    second.forEach((other, j) => {
      for (const { at, t, u } of curveCrossings(curve, other)) {
        // A crossing where two curves of a run join is found on both.
        if (found.every((meeting) => distance(meeting.at, at) > TOLERANCE.samePoint))
          found.push({ at, first: { index: i, t }, second: { index: j, t: u } });
      }
    });
  });
  return found.sort((a, b) => a.first.index + a.first.t - (b.first.index + b.first.t));
}

/**
 * Points in which a closed run of curves crosses itself: none on a simple outline.
 *
 * Two curves that run on into each other share their common end; those are no crossings. A loop smaller than
 * {@link TOLERANCE.chord} is none that a cutter could see.
 */
export function outlineCrossings(curves: readonly Curve[]): readonly Point[] {
  mustClose(curves);
  const ends = curves.map((curve) => curve[3]);
  const found: Point[] = [];
  const note = (at: Point) => {
    if ([...ends, ...found].every((other) => distance(other, at) > TOLERANCE.chord)) found.push(at);
  };
  curves.forEach((curve, i) => {
    const loop = curveLoop(curve);
    if (loop) note(loop);
    for (const other of curves.slice(i + 1)) for (const { at } of curveCrossings(curve, other)) note(at);
  });
  return found;
}

/**
 * The area inside a closed run of curves, mm²; positive for clockwise as seen (y down).
 *
 * Exact for cubics: half the integral of x·dy − y·dx, which for one cubic is a sum over the cross products of its points.
 */
export function outlineArea(curves: readonly Curve[]): number {
  mustClose(curves);
  return curves.reduce((sum, [a, b, c, d]) => {
    const swept = 6 * cross(a, b) + 3 * cross(a, c) + cross(a, d) + 3 * cross(b, c) + 3 * cross(b, d) + 6 * cross(c, d);
    return sum + swept / 20;
  }, 0);
}

/** A hair's breadth of rounding between the last curve and the first is closed; more is an open outline. */
function mustClose(curves: readonly Curve[]): void {
  const first = curves[0];
  const last = curves.at(-1);
  if (!first || !last) return;
  const gap: Mm = distance(first[0], last[3]);
  if (gap > 1000 * TOLERANCE.samePoint) throw new RangeError(`the outline is open by ${gap.toFixed(4)} mm`);
}
