/** Rows of numbers. */
export type Matrix = readonly (readonly number[])[];

/** A pivot that lost so many of its digits says that the equations leave an unknown open. @source tolerance */
const LOST = 1e-13;

/**
 * The lower triangle L of a symmetric positive matrix A = L Lᵀ.
 *
 * @source memory: A.-L. Cholesky, in any book of numerical analysis
 * @returns undefined where the matrix isn't positive, to within rounding
 */
export function choleskyOf(matrix: Matrix): Matrix | undefined {
  const lower = matrix.map((row) => new Array<number>(row.length).fill(0));
  for (let i = 0; i < matrix.length; i += 1) {
    const [row, given] = [lower[i] as number[], matrix[i] as readonly number[]];
    for (let j = 0; j <= i; j += 1) {
      const other = lower[j] as number[];
      let sum = given[j] as number;
      for (let k = 0; k < j; k += 1) sum -= (row[k] as number) * (other[k] as number);
      if (j < i) row[j] = sum / (other[j] as number);
      else if (sum > LOST * (given[i] as number)) row[i] = Math.sqrt(sum);
      else return undefined;
    }
  }
  return lower;
}

/** x of L y = b. */
export function forward(lower: Matrix, b: readonly number[]): readonly number[] {
  const y: number[] = [];
  lower.forEach((row, i) => {
    let sum = b[i] as number;
    for (let k = 0; k < i; k += 1) sum -= (row[k] as number) * (y[k] as number);
    y.push(sum / (row[i] as number));
  });
  return y;
}

/** x of L Lᵀ x = b. */
export function solvedBy(lower: Matrix, b: readonly number[]): readonly number[] {
  const x = [...forward(lower, b)];
  for (let i = lower.length - 1; i >= 0; i -= 1) {
    let sum = x[i] as number;
    for (let k = i + 1; k < lower.length; k += 1)
      sum -= ((lower[k] as readonly number[])[i] as number) * (x[k] as number);
    x[i] = sum / ((lower[i] as readonly number[])[i] as number);
  }
  return x;
}
