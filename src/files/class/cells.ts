import { ASKED_KEYS, ESTIMATED, type MeasurementKey, measurements } from '../../body';
import { LENGTH_NAMES, type LengthName } from '../../leg';
import { MM_PER, type Mm, type ParsedLength, parseLength, type Units } from '../../length';
import type { Project } from '../../project';
import { inTurn, mm, number, own, type Phrase, said, say } from '../../words';
import type { ColumnUnit } from './columns';

type Cell<Value> = { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly phrase: Phrase };

const bad = (phrase: Phrase): Cell<never> => ({ ok: false, phrase });

const LONGEST_LENGTH = 60;
const NO_LENGTH: ParsedLength = { ok: false, reason: 'not-a-length' };

/** How far beyond a limit a value is more likely in another unit than misread: every two units differ by more. */
const FAR = 2;
const UNIT_NAMES = { mm: say`millimetres`, cm: say`centimetres`, in: say`inches` } as const;

/**
 * A length in a cell: with a unit of its own, or a bare number in the unit of its column or, where the head names none,
 * of the project.
 */
export function lengthCell(text: string, unit: ColumnUnit | undefined, units: Units): Cell<Mm> {
  // No length is longer; of what is, nothing needs to be read.
  const long = text.length > LONGEST_LENGTH;
  const bare = long ? NO_LENGTH : parseLength(unit === undefined ? text : `${text} ${unit}`, units);
  // A unit in the cell stands above the head's: with both the text is no length, with its own alone it is.
  const read = bare.ok || long ? bare : parseLength(text, units);
  if (read.ok) return { ok: true, value: read.mm };
  const sample = units === 'inch' ? '40 1/8 in' : '102.5 cm';
  return bad(say`isn’t a length; write a number such as ${own(sample)}.`);
}

/** The words by which a cell asks for an estimate, where one may be asked for. */
const ESTIMATE = /^(?:estimated?|est\.?)$/i;

/** A height that nobody measured, and whose estimate is asked for; undefined where the cell says anything else. */
export const estimatedCell = (text: string, key: MeasurementKey): typeof ESTIMATED | undefined =>
  ASKED_KEYS.some((one) => one === key) && ESTIMATE.test(text.slice(0, LONGEST_LENGTH)) ? ESTIMATED : undefined;

/** A length of the catalogue within its limits; beyond them it is said in which other unit the number would be right. */
export function measurementCell(
  text: string,
  key: MeasurementKey,
  unit: ColumnUnit | undefined,
  units: Units,
): Cell<number> {
  const measurement = measurements.find((one) => one.key === key);
  if (!measurement) return bad(say`isn’t a measurement.`);
  if (measurement.unit === 'years') return yearsCell(text, measurement.lowest, measurement.highest);
  const read = lengthCell(text, unit, units);
  if (!read.ok) return read;
  const { lowest, highest, name } = measurement;
  const fits = (value: number) => value >= lowest && value <= highest;
  if (fits(read.value)) return read;
  const limits = say`${name} must lie between ${mm(lowest)} and ${mm(highest)}`;
  const meant = unit ?? (units === 'inch' ? 'in' : 'cm');
  // Near its limits a value is rather misread than in another unit.
  const far = read.value > FAR * highest || read.value * FAR < lowest;
  const other = (['cm', 'in', 'mm'] as const).find(
    (one) => far && one !== meant && fits((read.value / MM_PER[meant]) * MM_PER[one]),
  );
  return bad(
    other
      ? say`was read as ${mm(read.value)}; ${limits}. In ${UNIT_NAMES[other]} it would do: write the unit into the head or the cell.`
      : say`was read as ${mm(read.value)}; ${limits}.`,
  );
}

function yearsCell(text: string, lowest: number, highest: number): Cell<number> {
  const match = /^(\d+(?:[.,]\d+)?)\s*(?:y|yr|yrs|years?)?\.?$/i.exec(text.slice(0, LONGEST_LENGTH));
  const value = Number(match?.[1]?.replace(',', '.'));
  if (!match || !(value >= lowest && value <= highest))
    return bad(say`must be a number of years between ${number(lowest)} and ${number(highest)}.`);
  return { ok: true, value };
}

const YES = new Set(['yes', 'y', 'true', 'x', '1', '✓']);
const NO = new Set(['no', 'n', 'false', '-', '0']);

/** Yes or no. */
export function yesNoCell(text: string): Cell<boolean> {
  const word = text.toLowerCase();
  if (YES.has(word)) return { ok: true, value: true };
  return NO.has(word) ? { ok: true, value: false } : bad(say`must be yes or no.`);
}

const LENGTHS = Object.entries(LENGTH_NAMES) as readonly (readonly [LengthName, Phrase])[];
const plainWord = (text: string): string => text.toLowerCase().replace(/[^a-z]+/g, '');

/** How long the legs become: a length with a name, or the finished inseam. */
export function legLengthCell(
  text: string,
  unit: ColumnUnit | undefined,
  units: Units,
): Cell<Project['leg']['length']> {
  const named = LENGTHS.find(([key, name]) =>
    [key, name.template, said(name)].some((word) => plainWord(word) === plainWord(text)),
  );
  if (named && /[a-z]/i.test(text)) return { ok: true, value: named[0] };
  const read = lengthCell(text, unit, units);
  if (read.ok) return { ok: true, value: { inseam: read.value } };
  return bad(say`must be ${inTurn(Object.values(LENGTH_NAMES), ', ')}, or the finished inseam as a length.`);
}

/** A cell as a spreadsheet shows it: the mark that keeps a text from being a formula is taken off again. */
export const cellText = (cell: string): string => cell.replace(/^'(?=[=+\-@＝＋－＠])/, '');
