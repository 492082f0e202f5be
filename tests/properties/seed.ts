import fc, { type Parameters } from 'fast-check';

/**
 * The seed of a run, printed whether it fails or not: the same seed draws the same cases. It is the same on every
 * machine, so that a change fails by its own fault and not by chance.
 * `LEGWORK_SEED=new npm test -- unit tests/properties` draws new cases, `LEGWORK_SEED=…` with a printed seed repeats a
 * run, `LEGWORK_RUNS=10` makes it ten times as long.
 */
const SEED = 20261124;
const asked = process.env.LEGWORK_SEED;
const seed = asked === 'new' ? Math.floor(Math.random() * 2 ** 31) : Number(asked ?? SEED);
const times = Number(process.env.LEGWORK_RUNS ?? 1);

/** How long one property may take, milliseconds. */
export const PATIENCE = 60_000 * Math.max(1, times);

/**
 * What fast-check needs to know for one property.
 *
 * @param name for the log
 * @param runs how many cases, before the times asked for
 */
export function chance(name: string, runs: number): Parameters<unknown> & { readonly numRuns: number } {
  const numRuns = Math.max(1, Math.round(runs * times));
  console.log(`${name}: seed ${seed}, ${numRuns} cases`);
  // Shrinking drafts again and again; the smallest failure so far is small enough then.
  return { seed, numRuns, interruptAfterTimeLimit: 0.8 * PATIENCE };
}

/** How many of a property's cases must have come to something: fewer where a shorter run is asked for. */
export const enough = (count: number): number => count * Math.min(1, times);

const STEPS = 10_000;

/** A number between two others, in ten thousand even steps: fast-check's own doubles are mostly next to nothing. */
export const between = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: STEPS }).map((step) => low + ((high - low) * step) / STEPS);
