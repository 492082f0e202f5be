import Papa from 'papaparse';
import { type BodyGiven, ESTIMATED, type Measurement, measurementName, measurements } from '../../body';
import { LENGTH_NAMES } from '../../leg';
import { exactText, plain, plainWords, type Units } from '../../length';
import { exampleProject, type Project } from '../../project';
import { inside, inTurn, type Phrase, said, say, words } from '../../words';
import { OTHER_HEADS } from './columns';

/** Spreadsheets know by it that the letters are UTF-8; readers of RFC 4180 pass it over. */
const MARK = '\uFEFF';

/** What a spreadsheet takes for a formula begins so, also in the wide letters of East Asia. */
const FORMULA = /^[=+\-@＝＋－＠]/;

/**
 * Rows as a CSV file (RFC 4180: commas or what the file was parted by before, quotation marks, CR LF). Every cell is one line of plain words; one that a
 * spreadsheet would take for a formula gets an apostrophe before it, by which it stays what it is.
 */
export const csvFile = (rows: readonly (readonly string[])[], delimiter = ','): string =>
  `${MARK}${Papa.unparse(
    rows.map((cells) => cells.map(harmlessCell)),
    { newline: '\r\n', delimiter },
  )}\r\n`;

function harmlessCell(text: string): string {
  const words = plainWords(text);
  return FORMULA.test(words) ? `'${words}` : words;
}

/** The head of a measurement's column: its English name in every language, by which it is read back, and the unit of its figures. */
export const measurementHead = ({ name, unit }: Measurement, units: Units): string =>
  unit === 'years' ? `${name.template} (years)` : `${name.template} (${units === 'inch' ? 'in' : 'cm'})`;

/** A measurement as it is read back from a cell of its column; empty where it was not taken, a word where it is estimated. */
export function measurementText({ key, unit }: Measurement, body: BodyGiven, units: Units): string {
  const value = body[key];
  if (value === undefined) return '';
  if (value === ESTIMATED) return value;
  return unit === 'years' ? plain(value, 2) : exactText(value, units);
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
    words`yes where one is worn`,
    words`${inTurn(Object.values(LENGTH_NAMES), ', ')}; empty: as the project`,
    words`empty: as the project`,
  ];
  return csvFile([
    [OTHER_HEADS.name[0], ...measurements.map((m) => measurementHead(m, units)), ...others],
    [note(say`needed?`), ...measurements.map(neededTold), ...others.map(() => words`may stay empty`)],
    [note(say`what`), ...measurements.map(({ definition }) => said(definition)), ...own],
    [note(say`where the tape goes`), ...measurements.map(({ where }) => said(where)), ...others.map(() => '')],
    [note(say`example`), ...measurements.map((m) => measurementText(m, EXAMPLE, units)), ...others.map(() => '')],
  ]);
}

const neededTold = ({ required, inPlace }: Measurement): string => {
  if (!required) return words`may stay empty`;
  return inPlace ? words`needed, or ${inside(measurementName(inPlace))}` : words`needed`;
};

/** The first cell of a row of notes, which is passed over when the table is read. */
const note = (what: Phrase): string => `# ${said(what)}`;
