import * as v from 'valibot';
import { openProject, type Project, STATIONS, type Station, salvageProject, valueAt, withValue } from '../../project';
import type { Phrase } from '../../words';
import { TYPED_LIMITS } from '../store/limits';
import type { Entry } from '../store/state';
import { type Copy, checkOf } from './copy';

/** What of a kept copy can be used; each part is checked on its own, so that none costs another. */
export interface ReadCopy {
  /** As it was found. */
  readonly copy: Copy;
  readonly id: string;
  /** 0 where the copy doesn't say, so that any other counts as newer. */
  readonly revision: number;
  /** 0 where the copy doesn't say. */
  readonly savedAt: number;
  readonly project: Project;
  /** The last state that could be drawn, where this one could not. */
  readonly good: Project | undefined;
  readonly entries: Readonly<Record<string, Entry>>;
  readonly station: Station;
  /** What a person should know about it. */
  readonly notes: readonly Phrase[];
  /** Whether all of it could be read. */
  readonly whole: boolean;
}

/**
 * Reads what was kept of a project.
 *
 * @param found what the storage gave back: it may be anything
 * @param id under which it was found
 * @returns undefined where no project can be had from it
 */
export function readCopy(found: unknown, id: string): ReadCopy | undefined {
  if (typeof found !== 'object' || found === null) return undefined;
  const copy = found as Copy;
  const { text, good } = copy;
  if (copy.id !== id || typeof text !== 'string' || !(good === undefined || typeof good === 'string')) return undefined;
  if (copy.check !== checkOf(text, good)) return undefined;
  const shown = shownProject(text);
  const asItWas = shown?.value;
  const drawn = good === undefined ? undefined : openProject(good);
  const project = asItWas ?? (drawn?.ok ? drawn.value : undefined);
  if (!project) return undefined;
  const entries = readEntries(copy.entries);
  const revision = Number.isSafeInteger(copy.revision) && copy.revision > 0 ? copy.revision : 0;
  const savedAt = Number.isFinite(copy.savedAt) ? copy.savedAt : 0;
  return {
    copy,
    id,
    revision,
    savedAt,
    project,
    good: asItWas && drawn?.ok ? drawn.value : undefined,
    entries: entries.read,
    station: (STATIONS as readonly string[]).includes(copy.station) ? (copy.station as Station) : 'edges',
    notes: (asItWas ? shown?.notes : drawn?.ok ? drawn.notes : undefined) ?? [],
    whole: asItWas !== undefined && drawn?.ok !== false && entries.whole && revision > 0,
  };
}

/** The newest copy that can be read among what was found under an id. */
export const newestOf = (found: readonly unknown[], id: string): ReadCopy | undefined =>
  found
    .flatMap((one) => readCopy(one, id) ?? [])
    .sort((a, b) => b.revision - a.revision)
    .at(0);

interface Shown {
  readonly value: Project;
  readonly notes: readonly Phrase[];
}

/**
 * A project that was on the bench: one that could be opened as a file, or one of whose numbers are out of their limits, as
 * somebody typed them. Anything else is none: the page would not know what to show of it.
 */
export function shownProject(text: string): Shown | undefined {
  const opened = openProject(text);
  if (opened.ok) return opened;
  const salvaged = salvageProject(text);
  if (!salvaged.ok || salvaged.value.cutShort) return undefined;
  const stood = JSON.parse(text) as Project;
  const fields = salvaged.value.repairs.map(({ problem }) => problem.field);
  const typed = (field: string) => field in TYPED_LIMITS && Number.isFinite(valueAt(stood, field));
  if (!fields.every(typed)) return undefined;
  const { project, notes } = salvaged.value;
  return { value: fields.reduce((now, field) => withValue(now, field, valueAt(stood, field)), project), notes };
}

const figure = v.pipe(v.number(), v.finite());
/** Longer than anything that is typed into a field for a number, and than any sentence about it. */
const LONGEST = 2000;
const decimals = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10));
const value = v.union([
  // Copies of before have bare strings.
  v.pipe(
    v.string(),
    v.transform((own) => ({ own })),
  ),
  v.strictObject({ own: v.pipe(v.string(), v.maxLength(LONGEST)) }),
  v.strictObject({ mm: figure }),
  v.strictObject({ amount: figure }),
  v.strictObject({ degrees: figure }),
  v.strictObject({ share: figure }),
  v.strictObject({ number: figure, decimals }),
]);
const values = <Value>(of: v.GenericSchema<unknown, Value>) => v.pipe(v.array(of), v.maxLength(40));
const phraseOf = <Value>(of: v.GenericSchema<unknown, Value>) =>
  v.strictObject({ template: v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST)), values: values(of) });
const simple = phraseOf(value);
const within = v.union([
  value,
  simple,
  v.strictObject({ inside: simple }),
  v.strictObject({ list: values(simple), joined: v.picklist(['and', 'or', 'comma']) }),
]);
/** A sentence about a number in a field; it holds another one at most. Copies of before have its parts in a row. */
const problem = v.union([
  phraseOf(within),
  v.pipe(
    values(value),
    v.minLength(1),
    v.transform((parts) => ({ template: parts.map((_, i) => `{${i}}`).join(''), values: parts })),
  ),
]);
const text = v.pipe(v.string(), v.maxLength(LONGEST));
const entry = v.strictObject({ text, problem });

/** What was half typed, field by field; what stands at no field could never be put right, and would bar the way for ever. */
function readEntries(found: unknown): { readonly read: Readonly<Record<string, Entry>>; readonly whole: boolean } {
  if (typeof found !== 'object' || found === null || Array.isArray(found)) return { read: {}, whole: false };
  const all = Object.entries(found);
  const read = all.flatMap(([path, one]): [string, Entry][] => {
    const checked = v.safeParse(entry, one);
    return Object.hasOwn(TYPED_LIMITS, path) && checked.success ? [[path, checked.output]] : [];
  });
  return { read: Object.fromEntries(read), whole: read.length === all.length };
}
