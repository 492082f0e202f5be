/** What a run has come to so far; plain, so that it can be written down and gone on with. */
export interface Tally {
  /** Seeds below this one are done. */
  readonly next: number;
  readonly draws: number;
  readonly finds: Readonly<Record<string, number>>;
  readonly refused: Readonly<Record<string, number>>;
  /** Of the refused: what came of doing as the refusal says. */
  readonly followed: Readonly<Record<string, number>>;
  /** The most processor time of one draft, milliseconds, and its seed. */
  readonly slowest: readonly [millis: number, seed: number];
  readonly seconds: number;
}

export const emptyTally = (from: number): Tally => ({
  next: from,
  draws: 0,
  finds: {},
  refused: {},
  followed: {},
  slowest: [0, from],
  seconds: 0,
});

export function raised(
  counts: Readonly<Record<string, number>>,
  keys: readonly string[],
): Readonly<Record<string, number>> {
  return { ...counts, ...Object.fromEntries(keys.map((key) => [key, (counts[key] ?? 0) + 1])) };
}

/** A run in a few lines: how many draws, how fast, what was found and what was refused, most first. */
export function tallyText({ draws, next, finds, refused, followed, slowest, seconds }: Tally): string {
  const sorted = (counts: Readonly<Record<string, number>>) => Object.entries(counts).sort(([, a], [, b]) => b - a);
  const refusals = Object.values(refused).reduce((a, b) => a + b, 0);
  const share = (count: number) => `${((100 * count) / Math.max(1, draws)).toFixed(2)} %`;
  return [
    `${draws} draws up to seed ${next - 1}, ${(draws / Math.max(1, seconds)).toFixed(1)} a second; slowest draft ${(slowest[0] / 1000).toFixed(2)} s (seed ${slowest[1]})`,
    'finds:',
    ...(Object.keys(finds).length === 0 ? ['  none'] : []),
    ...sorted(finds).map(([kind, count]) => `  ${String(count).padStart(6)}  ${share(count).padStart(8)}  ${kind}`),
    `refused: ${refusals} (${share(refusals)}); doing as it says: ${sorted(followed)
      .map(([what, count]) => `${what} ${count}`)
      .join(', ')}`,
    ...sorted(refused).map(([why, count]) => `  ${String(count).padStart(6)}  ${share(count).padStart(8)}  ${why}`),
  ].join('\n');
}
