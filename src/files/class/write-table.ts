import Papa from 'papaparse';
import { type BodyInput, type Measurement, measurements } from '../../body';
import { LENGTH_NAMES } from '../../leg';
import { fieldText, plain, plainWords, type Units } from '../../length';
import { exampleProject, type Project } from '../../project';
import { OTHER_HEADS } from './columns';

/** Spreadsheets know by it that the letters are UTF-8; readers of RFC 4180 pass it over. */
const MARK = '\uFEFF';

/** What a spreadsheet takes for a formula begins so, also in the wide letters of East Asia. */
const FORMULA = /^[=+\-@＝＋－＠]/;

/**
 * Rows as a CSV file (RFC 4180: commas, quotation marks, CR LF). Every cell is one line of plain words; one that a
 * spreadsheet would take for a formula gets an apostrophe before it, by which it stays what it is.
 */
export const csvFile = (rows: readonly (readonly string[])[]): string =>
  `${MARK}${Papa.unparse(
    rows.map((cells) => cells.map(harmlessCell)),
    { newline: '\r\n' },
  )}\r\n`;

function harmlessCell(text: string): string {
  const words = plainWords(text);
  return FORMULA.test(words) ? `'${words}` : words;
}

/** The head of a measurement's column: its printed name, and the unit of its figures. */
export const measurementHead = ({ name, unit }: Measurement, units: Units): string =>
  unit === 'years' ? `${name} (years)` : `${name} (${units === 'inch' ? 'in' : 'cm'})`;

/** A measurement as it is read back from a cell of its column; empty where it was not taken. */
export function measurementText({ key, unit }: Measurement, body: BodyInput, units: Units): string {
  const value = body[key];
  if (value === undefined) return '';
  return unit === 'years' ? plain(value, 2) : fieldText(value, units);
}

/** To show how a row is filled in. */
const EXAMPLE = exampleProject.body;

/**
 * An empty table of bodies to fill in: every measurement with its unit, whether it is needed, where the tape goes, and an
 * example. Rows that begin with # are notes, and are passed over when the table is read.
 *
 * @param project whose units the table asks for
 */
export function emptyTable({ units }: Pick<Project, 'units'>): string {
  const length = `${OTHER_HEADS.length[0]}`;
  const width = `${OTHER_HEADS.clothWidth[0]} (${units === 'inch' ? 'in' : 'cm'})`;
  const others = [OTHER_HEADS.nappy[0], length, width];
  const own = [
    'yes where one is worn',
    `${Object.values(LENGTH_NAMES).join(', ')}; empty: as the project`,
    'empty: as the project',
  ];
  return csvFile([
    [OTHER_HEADS.name[0], ...measurements.map((m) => measurementHead(m, units)), ...others],
    [
      '# needed?',
      ...measurements.map(({ required }) => (required ? 'needed' : 'may stay empty')),
      ...others.map(() => 'may stay empty'),
    ],
    ['# what', ...measurements.map(({ definition }) => definition), ...own],
    ['# where the tape goes', ...measurements.map(({ where }) => where), ...others.map(() => '')],
    ['# example', ...measurements.map((m) => measurementText(m, EXAMPLE, units)), ...others.map(() => '')],
  ]);
}
