/** `LEGWORK_EVERY=1` runs the outside tests on every body and every combination, instead of a share of them. */
export const every = process.env.LEGWORK_EVERY === '1';

/** So many of a list, evenly spread over it; all of them where everything is asked for. */
export function share<T>(all: readonly T[], count: number): readonly T[] {
  if (every) return all;
  const step = Math.max(1, Math.floor(all.length / count));
  return all.filter((_, i) => i % step === 0).slice(0, count);
}
