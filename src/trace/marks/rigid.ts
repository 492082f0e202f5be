import { cross, dot, type Point, scale, subtract, turned } from '../../plane';

/** The middle of some points. */
export const middleOf = (points: readonly Point[]): Point =>
  scale(
    points.reduce((sum, p) => ({ x: sum.x + p.x, y: sum.y + p.y }), { x: 0, y: 0 }),
    1 / points.length,
  );

/** Where a sheet or a block lies: its own origin, and by how much it is turned, radians. */
interface Laid {
  readonly at: Point;
  readonly turn: number;
}

/**
 * How a sheet is moved and turned so that its points come nearest to where they lie.
 *
 * @source P. Schönemann, A generalized solution of the orthogonal Procrustes problem, *Psychometrika* 31 (1966), in the plane and without mirroring; from memory
 */
export function movedOnto(from: readonly Point[], to: readonly Point[]): Laid {
  const [here, there] = [middleOf(from), middleOf(to)];
  const pairs = from.map((p, i) => [subtract(p, here), subtract(to[i] as Point, there)] as const);
  const turn = Math.atan2(
    pairs.reduce((sum, [a, b]) => sum + cross(a, b), 0),
    pairs.reduce((sum, [a, b]) => sum + dot(a, b), 0),
  );
  return { at: subtract(there, turned(here, { x: 0, y: 0 }, turn)), turn };
}
