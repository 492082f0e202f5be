import { type MeasurementKey, measurements } from '../../body';

/** A unit that a column's head names. */
export type ColumnUnit = 'mm' | 'cm' | 'm' | 'in';

/** What a column of a table of bodies holds. */
export type ColumnKind = MeasurementKey | 'name' | 'nappy' | 'length' | 'clothWidth';

/** A column that was recognised by its head. */
export interface Column {
  readonly kind: ColumnKind;
  /** As the head says it; undefined where it says none. */
  readonly unit: ColumnUnit | undefined;
}

/** Heads of the columns that are no measurement, as the empty table writes them; the first name is the one written. */
export const OTHER_HEADS = {
  name: [
    'Name',
    'Learner',
    'Pupil',
    'Student',
    'Label',
    'First name',
    'Given name',
    'Last name',
    'Family name',
    'Surname',
  ],
  nappy: ['Nappy', 'Diaper'],
  length: ['Length', 'Leg length'],
  clothWidth: ['Cloth width'],
} as const;

/** Further words of the trade for a measurement. @source practice */
const ALSO: Readonly<Partial<Record<MeasurementKey, readonly string[]>>> = {
  hipGirth: ['Hips'],
  insideLeg: ['Inseam'],
  ageYears: ['Age in years'],
  kneeGirth: ['Knees'],
};

const UNITS: Readonly<Record<string, ColumnUnit>> = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
};

/** No name of a column is longer. */
const LONGEST_HEAD = 80;

/** Letters and figures only: `hip_girth`, `Hip girth` and `hipGirth` are the same. */
const plainWord = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');

const KINDS: ReadonlyMap<string, ColumnKind> = new Map<string, ColumnKind>([
  ...measurements.flatMap(({ key, name }) =>
    // A table's heads are read back, so they are English in every language.
    [key, `body.${key}`, name.template, `${name.template} girth`, ...(ALSO[key] ?? [])].map(
      (word) => [plainWord(word), key] as const,
    ),
  ),
  ...Object.entries(OTHER_HEADS).flatMap(([kind, words]) =>
    words.map((word) => [plainWord(word), kind as ColumnKind] as const),
  ),
]);

/**
 * What a column holds, by its head: the key of the project file or the printed name, with a unit after it or without:
 * `Hip (cm)`, `hipGirth`, `Body rise, in`, `knee_mm`.
 *
 * @returns undefined where the head is none of ours
 */
export function columnOf(head: string): Column | undefined {
  const text = head.trim();
  if (text.length > LONGEST_HEAD) return undefined;
  const whole = KINDS.get(plainWord(text));
  if (whole) return { kind: whole, unit: undefined };
  const parts = /^(.*?)[\s,;:_([/-]+(mm|cm|m|inches|inch|in|"|″)\s*[)\]]?\.?$/i.exec(text);
  const kind = KINDS.get(plainWord(parts?.[1] ?? ''));
  const unit = UNITS[parts?.[2]?.toLowerCase() ?? ''];
  return kind && unit ? { kind, unit } : undefined;
}

export const isMeasurement = (kind: ColumnKind): kind is MeasurementKey => measurements.some((m) => m.key === kind);

/** What a column holds, as its head says it. */
export const nameOf = (kind: ColumnKind): string => measurements.find((m) => m.key === kind)?.name.template ?? kind;

/** Where the project file has what a column holds, for those that are no measurement of the body. */
const OTHER_FIELDS: Readonly<Partial<Record<ColumnKind, string>>> = { length: 'leg.length', clothWidth: 'cloth.width' };

/** Where the project file has what a column holds. */
export const fieldOf = (kind: ColumnKind): string => OTHER_FIELDS[kind] ?? `body.${kind}`;
