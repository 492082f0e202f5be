import {
  choleskyOf,
  type FourSeen,
  type Homography,
  homographyPoint,
  homographyThrough,
  type Seen,
  solvedBy,
} from '../../plane';
import { withNinth } from './unknowns';

/**
 * A homography near any number of points and where each is seen, to begin with: the direct linear transformation with
 * its ninth number at 1. Four points lie round in their order, and are met exactly.
 *
 * @param seen both sides about 0 and of the size of 1
 * @param flat whether there is no perspective
 * @returns undefined where they are too few, cross over or lie on a line
 */
export function homographyNear(seen: readonly Seen[], flat: boolean): Homography | undefined {
  if (seen.length < (flat ? 3 : 4)) return undefined;
  const found = flat
    ? affineNear(seen)
    : seen.length === 4
      ? homographyThrough(seen as FourSeen)
      : projectiveNear(seen);
  return found && seen.every(({ from }) => homographyPoint(found, from)) ? found : undefined;
}

function affineNear(seen: readonly Seen[]): Homography | undefined {
  const solve = (axis: 'x' | 'y') =>
    nearest(
      seen.map(({ from }) => [from.x, from.y, 1]),
      seen.map(({ to }) => to[axis]),
    );
  const [across, down] = [solve('x'), solve('y')];
  return across && down && withNinth([...across, ...down, 0, 0]);
}

function projectiveNear(seen: readonly Seen[]): Homography | undefined {
  const found = nearest(
    seen.flatMap(({ from: { x, y }, to }) => [
      [x, y, 1, 0, 0, 0, -to.x * x, -to.x * y],
      [0, 0, 0, x, y, 1, -to.y * x, -to.y * y],
    ]),
    seen.flatMap(({ to }) => [to.x, to.y]),
  );
  return found && withNinth(found);
}

/** The unknowns for which linear equations are least off. */
function nearest(equations: readonly (readonly number[])[], values: readonly number[]) {
  const count = equations[0]?.length ?? 0;
  const each = Array.from({ length: count }, (_, i) => i);
  const sum = (of: (row: readonly number[], at: number) => number) =>
    equations.reduce((all, row, i) => all + of(row, i), 0);
  const triangle = choleskyOf(each.map((i) => each.map((j) => sum((row) => (row[i] as number) * (row[j] as number)))));
  return (
    triangle &&
    solvedBy(
      triangle,
      each.map((i) => sum((row, at) => (row[i] as number) * (values[at] as number))),
    )
  );
}
