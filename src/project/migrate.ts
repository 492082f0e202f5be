/** A parsed project file, whatever version wrote it. */
export type RawProject = Readonly<Record<string, unknown>>;

/** Takes a file from the version before to the version it is named by; it changes what changed its meaning, no more. */
export type Migration = (raw: RawProject) => RawProject;

/** The newest project version that this program reads and writes. */
export const VERSION = 1;

/**
 * One migration for each version after the first, by the version it leads to. New fields need none: they have defaults.
 */
const MIGRATIONS: Readonly<Record<number, Migration>> = {};

/**
 * Brings an older project file up to the newest version, step by step.
 *
 * @param raw the parsed file
 * @param version the version that wrote it
 * @param steps the migrations, by the version they lead to
 * @param newest where to stop
 * @returns the file as the newest version would have written it; undefined where a step is not known
 */
export function migrated(
  raw: RawProject,
  version: number,
  steps: Readonly<Record<number, Migration>> = MIGRATIONS,
  newest: number = VERSION,
): RawProject | undefined {
  let now = raw;
  for (let to = version + 1; to <= newest; to += 1) {
    const step = steps[to];
    if (!step) return undefined;
    now = { ...step(now), version: to };
  }
  return now;
}
