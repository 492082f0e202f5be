import type { Mm } from '../length';
import { enginePath } from './engine';
import { distance } from './point';
import { TOLERANCE } from './tolerances';
import type { Curve, Point } from './types';

/** Where two runs of curves meet: the point, and on each run the curve's index and the parameter on it. */
export interface Meeting {
  readonly at: Point;
  readonly first: { readonly index: number; readonly t: number };
  readonly second: { readonly index: number; readonly t: number };
}

/** All points where two open runs of curves meet or cross, in the order of the first run. By the vector engine. */
export function pathMeetings(first: readonly Curve[], second: readonly Curve[]): readonly Meeting[] {
  const found = enginePath(first, false).getIntersections(enginePath(second, false));
  return found
    .map((location) => ({
      at: { x: location.point.x, y: location.point.y },
      first: { index: location.index, t: location.time },
      second: { index: location.intersection.index, t: location.intersection.time },
    }))
    .sort((a, b) => a.first.index + a.first.t - (b.first.index + b.first.t));
}

/**
 * Points in which a closed run of curves crosses itself: none on a simple outline. By the vector engine.
 *
 * Where two curves run on into each other smoothly the engine sees a crossing at their common end; those are no
 * crossings. A loop smaller than {@link TOLERANCE.chord} is none that a cutter could see.
 */
export function outlineCrossings(curves: readonly Curve[]): readonly Point[] {
  const ends = curves.map((curve) => curve[3]);
  return enginePath(closedUp(curves), true)
    .getIntersections(null as never)
    .map((location) => ({ x: location.point.x, y: location.point.y }))
    .filter((p) => ends.every((end) => distance(end, p) > TOLERANCE.chord));
}

/** The area inside a closed run of curves, mm²; exact for cubics, positive for clockwise as seen (y down). */
export function outlineArea(curves: readonly Curve[]): number {
  return enginePath(closedUp(curves), true).area;
}

/** The engine joins the last curve to the first by their indices, so a hair's breadth between them must be closed. */
function closedUp(curves: readonly Curve[]): readonly Curve[] {
  const first = curves[0];
  const last = curves.at(-1);
  if (!first || !last) return curves;
  const gap: Mm = Math.hypot(first[0].x - last[3].x, first[0].y - last[3].y);
  if (gap > 1000 * TOLERANCE.samePoint) throw new RangeError(`the outline is open by ${gap.toFixed(4)} mm`);
  return curves;
}
