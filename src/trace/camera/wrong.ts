import type { Row } from '../../plane';
import { choleskyOf, forward, type Matrix } from '../../plane';

/** Rows that stand or fall together: those of one mark. */
export interface Group {
  readonly from: number;
  readonly to: number;
}

/** A mark is wrong where it is so many times as far off as the others are, in squares. @source tolerance: by chance once in thousands of marks */
const WRONG = 12;
/** The next suspect must explain so much less, or nobody can say which of the two is wrong. @source tolerance */
const ALIKE = 0.8;

/**
 * The one group of rows that is off beyond chance, if there is one: by how much the sum of squares falls when it is left
 * out, against what then is left of it (the F-test for a group of outliers).
 *
 * @param groups each mark's rows
 * @param redundancy how many more equations there are than unknowns
 * @source W. Baarda, *A testing procedure for use in geodetic networks*, 1968, for groups; from memory
 */
export function wrongGroup(
  rows: readonly Row[],
  triangle: Matrix,
  groups: readonly Group[],
  redundancy: number,
): number | undefined {
  const cost = rows.reduce((sum, { off }) => sum + off * off, 0);
  const tried = groups.flatMap(({ from, to }, i) => {
    const [count, left] = [to - from, redundancy - (to - from)];
    if (left < 1) return [];
    const saved = savedWithout(rows.slice(from, to), triangle);
    if (saved === undefined) return [];
    return [{ i, saved, times: saved / count / Math.max(1, (cost - saved) / left) }];
  });
  const [first, second] = tried.toSorted((a, b) => b.times - a.times);
  if (!first || first.times < WRONG || (second && second.saved > ALIKE * first.saved)) return undefined;
  return first.i;
}

/** By how much the sum of squares falls without some rows; undefined where without them an unknown is open. */
function savedWithout(rows: readonly Row[], triangle: Matrix): number | undefined {
  const reached = rows.map(({ at, by }) => {
    const line = new Array<number>(triangle.length).fill(0);
    at.forEach((unknown, i) => {
      line[unknown] = (line[unknown] as number) + (by[i] as number);
    });
    return forward(triangle, line);
  });
  const free = rows.map((_, i) =>
    rows.map((_, j) => {
      const held = (reached[i] as readonly number[]).reduce(
        (sum, v, k) => sum + v * ((reached[j] as readonly number[])[k] as number),
        0,
      );
      return (i === j ? 1 : 0) - held;
    }),
  );
  const lower = free.every((row, i) => (row[i] as number) > LEAST_FREE) ? choleskyOf(free) : undefined;
  return (
    lower &&
    forward(
      lower,
      rows.map(({ off }) => off),
    ).reduce((sum, v) => sum + v * v, 0)
  );
}

/** A row that the others leave no more freedom than this carries an unknown alone. @source tolerance */
const LEAST_FREE = 1e-6;
