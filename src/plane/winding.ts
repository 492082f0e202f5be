import { type ControlBox, controlBox } from './control-box';
import { curveSplit } from './curve';
import type { Curve, Point } from './types';

/** Halvings at the most: after them a metre-long curve is a hundred-thousandth of a millimetre. */
const DEEPEST = 27;

/**
 * How many times a closed run of curves goes round a point: +1 for once clockwise as seen (y down), 0 outside.
 *
 * Counts what a line from the point to the right crosses, each curve's downward crossings against its upward ones. A
 * curve wholly to the right of the point counts by its ends alone; one beside the point is halved until it is.
 *
 * @param curves closed: each starts where the one before it ended
 * @returns the count for a point that is not on the curves
 */
export function windings(curves: readonly Curve[]): (p: Point) => number {
  const boxes = curves.map(controlBox);
  return (p) => {
    let sum = 0;
    for (let i = 0; i < boxes.length; i += 1) {
      const { top, bottom, right } = boxes[i] as ControlBox;
      if (bottom > p.y && top <= p.y && right >= p.x) sum += crossed(curves[i] as Curve, p, DEEPEST);
    }
    return sum;
  };
}

/** A curve's downward crossings of the line to the right of a point, less the upward ones. */
function crossed(curve: Curve, p: Point, depth: number): number {
  const [a, b, c, d] = curve;
  if (Math.max(a.y, b.y, c.y, d.y) <= p.y || Math.min(a.y, b.y, c.y, d.y) > p.y) return 0;
  if (Math.max(a.x, b.x, c.x, d.x) < p.x) return 0;
  // The line's own height belongs to what is above it, so that two curves that meet on the line count once.
  if (depth === 0 || Math.min(a.x, b.x, c.x, d.x) > p.x) return Number(d.y > p.y) - Number(a.y > p.y);
  const [first, second] = curveSplit(curve, 0.5);
  return crossed(first, p, depth - 1) + crossed(second, p, depth - 1);
}
