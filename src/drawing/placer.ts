import { type Point, point } from '../plane';
import type { PiecePlace } from './types';

/** The mapping of a place: every point is turned about the origin, then shifted. Quarter turns are exact. */
export function placer({ turn, shift }: Omit<PiecePlace, 'piece'>): (p: Point) => Point {
  if (turn === 0) return (p) => point(p.x + shift.x, p.y + shift.y);
  const [cos, sin] = turnCosSin(turn);
  return (p) => point(p.x * cos - p.y * sin + shift.x, p.x * sin + p.y * cos + shift.y);
}

/** Cosine and sine of an angle in degrees; of quarter turns without rounding. */
export function turnCosSin(turn: number): readonly [number, number] {
  const quarter = turn / 90;
  if (Number.isInteger(quarter)) {
    const at = ((quarter % 4) + 4) % 4;
    return [[1, 0, -1, 0][at] as number, [0, 1, 0, -1][at] as number];
  }
  const radians = (turn * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
}
