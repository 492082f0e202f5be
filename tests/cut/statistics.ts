/** A list in order, as percentiles are read from it. */
export const inOrder = (values: readonly number[]): readonly number[] => [...values].sort((a, b) => a - b);

/** The value below which a share 0…1 of an ordered list lies; NaN of an empty one. */
export const percentile = (ordered: readonly number[], share: number): number =>
  ordered[Math.min(ordered.length - 1, Math.floor(share * ordered.length))] ?? Number.NaN;

/** Pearson's correlation of pairs, −1…1; NaN where one of the two never changes. */
export function correlation(pairs: readonly (readonly [number, number])[]): number {
  const mean = (of: (pair: readonly [number, number]) => number) =>
    pairs.reduce((sum, pair) => sum + of(pair), 0) / pairs.length;
  const [mx, my] = [mean(([x]) => x), mean(([, y]) => y)];
  const covariance = mean(([x, y]) => (x - mx) * (y - my));
  return covariance / Math.sqrt(mean(([x]) => (x - mx) ** 2) * mean(([, y]) => (y - my) ** 2));
}
