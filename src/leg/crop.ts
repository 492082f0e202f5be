import type { Mm } from '../length';
import {
  type Curve,
  curveFrom,
  curveLength,
  distance,
  downWith,
  type Point,
  pathEnd,
  pathEndWay,
  pathUpTo,
  point,
  solveBetween,
  TOLERANCE,
} from '../plane';

/** The steepest slant at which an inseam may meet a straight hem fold: 4.5°, so that with the fold's own tilt it stays within 6° of square. @source practice */
const HEM_SLANT = Math.tan((4.5 * Math.PI) / 180);
/** The last stretch of a cropped inseam, which is eased towards the upright: a hand's breadth at most, and never much more than half of it. @source practice */
const EASED = { share: 0.3, least: 40, most: 120, mostOfLeg: 0.6 } as const;

/**
 * Cuts (or carries on, straight) an inseam at an arc length from the crotch point. The crotch end is never touched.
 *
 * Where the cut inseam would meet the hem more than 4.5° off square, its last stretch is eased towards the upright,
 * so that the hem turns up flat on a straight fold and runs smoothly across the seam.
 *
 * @param inseam from the crotch point down
 * @param length finished inseam
 * @source practice
 */
export function inseamCut(inseam: readonly Curve[], length: Mm): readonly Curve[] {
  const cut = pathUpTo(inseam, length);
  const slant = endSlant(cut);
  if (Math.abs(slant) <= HEM_SLANT) return cut;
  const stretch = Math.min(Math.max(EASED.share * length, EASED.least), EASED.most, EASED.mostOfLeg * length);
  const kept = pathUpTo(inseam, length - stretch);
  const from = pathEnd(kept);
  const start = endSlant(kept);
  const end = Math.sign(slant) * HEM_SLANT;
  const eased = (drop: Mm) => easedLine(from, start, point(from.x + (drop * (start + end)) / 2, from.y + drop), end);
  const drop = solveBetween((d) => curveLength(eased(d)) - stretch, 0.3 * stretch, stretch, TOLERANCE.solved);
  return [...kept, eased(drop)];
}

function endSlant(path: readonly Curve[]): number {
  const way = pathEndWay(path);
  return way.x / way.y;
}

function easedLine(from: Point, start: number, to: Point, end: number): Curve {
  const third = distance(from, to) / 3;
  return curveFrom(from, downWith(start), third, to, downWith(end), third);
}
