/** Times in milliseconds of one group of runs. */
export interface Timing {
  readonly name: string;
  readonly runs: number;
  readonly p50: number;
  readonly p95: number;
}

/** Half and nineteen in twenty of some times. */
export function timing(name: string, times: readonly number[]): Timing {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { name, runs: times.length, p50: at(0.5), p95: at(0.95) };
}
