import { choleskyOf, type Matrix, solvedBy } from './matrix';

/**
 * One equation at the present guess: by how many of its standard deviations it is off, and how that changes with the few
 * unknowns it holds.
 */
export interface Row {
  readonly off: number;
  readonly at: readonly number[];
  readonly by: readonly number[];
}

export interface Solved {
  readonly unknowns: readonly number[];
  readonly rows: readonly Row[];
  /** The sum of the squares of what is off. */
  readonly cost: number;
  /** The lower triangle whose product with its transpose is the matrix of the normal equations. */
  readonly triangle: Matrix;
}

/** Rounds of a search that goes on, how much it is damped at first, and when it gives up. @source tolerance */
const MOST_ROUNDS = 80;
const FIRST_DAMPING = 1e-3;
const MOST_DAMPING = 1e9;
/** It ends where a step betters the sum of squares by less than this share. @source tolerance */
const BETTERED = 1e-11;
/** A sum of squares below this is rounding. @source tolerance */
const NOTHING = 1e-18;

/**
 * The unknowns with the least sum of squares: Gauss and Newton's steps, damped so that none makes it worse.
 *
 * @param start a guess near enough
 * @param free which unknowns may change
 * @param rowsAt the equations at a guess; undefined where it makes no sense
 * @param most rounds: fewer where the solution is but a guess for another
 * @source memory: K. Levenberg 1944, D. W. Marquardt 1963, as in Hartley & Zisserman 2004, appendix 6
 * @returns undefined where the start makes no sense, or the equations leave an unknown open
 */
export function leastSquares(
  start: readonly number[],
  free: readonly boolean[],
  rowsAt: (unknowns: readonly number[]) => readonly Row[] | undefined,
  most = MOST_ROUNDS,
): Solved | undefined {
  let unknowns = start;
  let rows = rowsAt(unknowns);
  if (!rows) return undefined;
  let cost = costOf(rows);
  let damping = FIRST_DAMPING;
  for (let round = 0; round < most && cost > NOTHING; round += 1) {
    const { matrix, slope } = normalEquations(rows, free);
    let better: { unknowns: readonly number[]; rows: readonly Row[]; cost: number } | undefined;
    while (!better && damping < MOST_DAMPING) {
      const damped = matrix.map((row, i) => row.map((value, j) => (i === j ? value * (1 + damping) : value)));
      const triangle = choleskyOf(damped);
      const step = triangle && solvedBy(triangle, slope);
      const there = step && unknowns.map((value, i) => value - (step[i] as number));
      const rowsThere = there && rowsAt(there);
      const costThere = rowsThere ? costOf(rowsThere) : Number.POSITIVE_INFINITY;
      if (there && rowsThere && costThere < cost) better = { unknowns: there, rows: rowsThere, cost: costThere };
      else damping *= 10;
    }
    if (!better) break;
    const done = cost - better.cost < BETTERED * cost;
    ({ unknowns, rows, cost } = better);
    damping /= 10;
    if (done) break;
  }
  const triangle = choleskyOf(normalEquations(rows, free).matrix);
  return triangle && { unknowns, rows, cost, triangle };
}

const costOf = (rows: readonly Row[]): number => rows.reduce((sum, { off }) => sum + off * off, 0);

/** The matrix and the slope of the sum of squares; an unknown that is held stands alone in it. */
function normalEquations(rows: readonly Row[], free: readonly boolean[]) {
  const matrix = free.map(() => new Array<number>(free.length).fill(0));
  const slope = new Array<number>(free.length).fill(0);
  free.forEach((open, i) => {
    if (!open) (matrix[i] as number[])[i] = 1;
  });
  for (const { off, at, by } of rows)
    for (let a = 0; a < at.length; a += 1) {
      const i = at[a] as number;
      if (!free[i]) continue;
      const line = matrix[i] as number[];
      slope[i] = (slope[i] as number) + (by[a] as number) * off;
      for (let b = 0; b < at.length; b += 1) {
        const j = at[b] as number;
        if (free[j]) line[j] = (line[j] as number) + (by[a] as number) * (by[b] as number);
      }
    }
  return { matrix, slope };
}
