import { type Phrase, say } from '../words';

/** A parsed project file, whatever version wrote it. */
export type RawProject = Readonly<Record<string, unknown>>;

/** Takes a file from the version before to the version it is named by. */
export interface Migration {
  /** Changes what changed its meaning, no more. */
  readonly bring: (raw: RawProject) => RawProject;
  /** What a person should know about it, once. */
  readonly note?: Phrase;
}

/** A file as the newest version would have written it, and what to say about that. */
export interface Migrated {
  readonly raw: RawProject;
  readonly notes: readonly Phrase[];
}

/** The newest project version that this program reads and writes. */
export const VERSION = 2 as const;

/**
 * One migration for each version after the first, by the version it leads to. New fields need none: they have defaults.
 */
const MIGRATIONS: Readonly<Record<number, Migration>> = {
  2: {
    bring: (raw) => withUsual(withUsual(raw, 'leg', 'length', 'ankle'), 'hem', 'turnUnder', 10),
    note: say`It was drawn by an earlier cut: every choice in it is kept, but the outline has changed.`,
  },
};

/** Writes out what a field was where it was left out; a group that is no group is left for the schema to refuse. */
function withUsual(raw: RawProject, group: string, key: string, usual: unknown): RawProject {
  const fields = raw[group] === undefined ? {} : raw[group];
  if (!isGroup(fields)) return raw;
  return Object.hasOwn(fields, key) ? raw : { ...raw, [group]: { ...fields, [key]: usual } };
}

const isGroup = (value: unknown): value is RawProject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A name that was changed within a version: how brought blocks came in wasn't kept, and by far the most came on a drawing. */
const withNamesOfToday = (raw: RawProject): RawProject => withPrints(withDrawnBlocks(raw), withDrawnBlocks);

const withDrawnBlocks = (raw: RawProject): RawProject =>
  isGroup(raw.block) && raw.block.source === 'traced' ? { ...raw, block: { ...raw.block, source: 'drawn' } } : raw;

/** The same done to the project as it was when it was last printed, and the time before. */
function withPrints(raw: RawProject, bring: Migration['bring']): RawProject {
  const print = (kept: unknown): unknown => {
    if (!isGroup(kept)) return kept;
    const project = isGroup(kept.project) ? bring(kept.project) : kept.project;
    return { ...kept, project, ...(kept.before !== undefined && { before: print(kept.before) }) };
  };
  return raw.lastPrint === undefined ? raw : { ...raw, lastPrint: print(raw.lastPrint) };
}

/**
 * Brings an older project file up to the newest version, step by step.
 *
 * @param raw the parsed file
 * @param version the version that wrote it
 * @param steps the migrations, by the version they lead to
 * @param newest where to stop
 * @returns undefined where a step is not known
 */
export function migrated(
  raw: RawProject,
  version: number,
  steps: Readonly<Record<number, Migration>> = MIGRATIONS,
  newest: number = VERSION,
): Migrated | undefined {
  let now: Migrated = { raw: withNamesOfToday(raw), notes: [] };
  for (let to = version + 1; to <= newest; to += 1) {
    const step = steps[to];
    if (!step) return undefined;
    now = { raw: { ...step.bring(now.raw), version: to }, notes: [...now.notes, ...(step.note ? [step.note] : [])] };
  }
  return now;
}
