import {
  add,
  type Curve,
  cross,
  curveMap,
  leftOf,
  type Point,
  pathEnd,
  pathStart,
  pathStartWay,
  scale,
  subtract,
  unit,
} from '../../plane';

/** A run that sets out nearer than this to the straight way to its end, radians, says nothing of a direction to keep. @source tolerance */
const STRAIGHT_ON = 0.05;

/**
 * A run of curves whose end was moved, redrawn as with a curved ruler: its start stays, and the direction there, and it
 * bends neither otherwise than before nor more to and fro.
 *
 * The plane is mapped so that nothing changes along the first direction, and all else follows the end by its share of
 * the way there; such a map keeps what is smooth and what bends one way only.
 *
 * @param run from the end that stays to the one that is moved
 * @param by how far, and whither
 * @source geometry
 */
export function runEndMoved(run: readonly Curve[], by: Point): readonly Curve[] {
  const start = pathStart(run);
  const chord = subtract(pathEnd(run), start);
  const ahead = pathStartWay(run);
  const kept = Math.abs(cross(unit(chord), ahead)) < STRAIGHT_ON ? leftOf(unit(chord)) : ahead;
  const whole = cross(kept, chord);
  const follow = (p: Point): Point => add(p, scale(by, cross(kept, subtract(p, start)) / whole));
  return run.map((curve) => curveMap(curve, follow));
}
