import type { Mm } from '../../length';
import { cross, distance, type Point, subtract, unit } from '../../plane';
import { pointRound, type WayRound } from './way-round';

/** The centre line’s direction is taken from so much of it, millimetres. @source practice */
const FIRST: Mm = 40;
/** What lies farther off it than this, millimetres, is no more straight: where a program drew it, and where a hand did. @source tolerance */
const OFF: readonly Mm[] = [0.03, 0.6];
/** A curve of the drawing that ends so near, millimetres, ends there. @source tolerance */
const SNAP: Mm = 6;
const STEP: Mm = 1;
/** Of a centre line that is straight for less than this share of the way to the crotch point, nobody can tell where it ends. @source practice */
const LEAST_STRAIGHT = 0.25;

/**
 * Where the centre line of a block stops being straight, between the waist and the crotch point, and whether that is to be
 * seen: on a centre that is hollow all the way down it is not.
 *
 * @param forward whether the outline runs from the waist down
 */
export function centreEnd(
  way: WayRound,
  waist: Mm,
  crotchPoint: Mm,
  forward: boolean,
): { readonly at: Mm; readonly seen: boolean } {
  const sign = forward ? 1 : -1;
  const whole = (((sign * (crotchPoint - waist)) % way.length) + way.length) % way.length;
  const at = (far: Mm): Point => pointRound(way, waist + sign * far);
  const start = at(0);
  const first = Math.min(FIRST, whole / 4);
  const line = unit(subtract(at(first), start));
  const straightFor = (off: Mm): Mm => {
    let far = first;
    while (far + STEP < whole && Math.abs(cross(line, subtract(at(far + STEP), start))) <= off) far += STEP;
    return far;
  };
  const far = OFF.map(straightFor).find((one) => one >= LEAST_STRAIGHT * whole) ?? straightFor(OFF.at(-1) as Mm);
  const joints = way.ends.map((end) => (((sign * (end - waist)) % way.length) + way.length) % way.length);
  const joint = joints
    .filter((one) => one > first && one < whole - STEP && Math.abs(one - far) <= SNAP)
    .sort((a, b) => Math.abs(a - far) - Math.abs(b - far))[0];
  const end = joint ?? far;
  return { at: waist + sign * end, seen: end >= LEAST_STRAIGHT * whole && distance(at(end), at(whole)) > STEP };
}
