import type { Point } from '../plane';
import { laidPoint } from './shape';
import type { Placement } from './types';

/**
 * Where a point of a piece lies on the table.
 *
 * @param p in the piece's own coordinates
 * @param placement of the piece
 */
export function placedPoint(p: Point, placement: Placement): Point {
  const laid = laidPoint(p, placement);
  return { x: laid.x + placement.at.x, y: laid.y + placement.at.y };
}
