import Papa from 'papaparse';
import { plainWords } from '../../length';
import { number, type Phrase, type Problem, type Result, say } from '../../words';
import { type Column, columnOf, isMeasurement } from './columns';

/** One record of the file; its number is the one a spreadsheet shows beside it. */
export interface TableRow {
  readonly row: number;
  readonly cells: readonly string[];
}

/** A head of the table, and what it was recognised as. */
export interface TableHead {
  readonly text: string;
  readonly column: Column | undefined;
}

/** A table as it was typed: every record of its file, also the titles, notes and empty lines between the bodies. */
export interface TableRecords {
  readonly records: readonly (readonly string[])[];
  /** Which record names the columns, counted from 0. */
  readonly headsAt: number;
  readonly delimiter: string;
  /** Whether the file says in its first line what parts its cells, as some spreadsheets want to be told. */
  readonly namesDelimiter: boolean;
}

/** A table whose heads were found; what stands above them is passed over. */
export interface WrittenTable {
  readonly heads: readonly TableHead[];
  readonly rows: readonly TableRow[];
}

/** What may stand between two cells. RFC 4180 has the comma; spreadsheets write the others where that is the decimal sign. */
const DELIMITERS = [',', ';', '\t', '|'] as const;
/** Titles may stand above the heads, no more than this many rows of them. */
const ROWS_ABOVE = 20;
/** No table of bodies is larger, bytes. */
const LARGEST_TABLE = 5_000_000;
/** More lines than rows that can be made, for titles and notes between them. */
const MOST_LINES = 20_000;
/** What is shown of a head. */
const LONGEST_SHOWN = 80;
/** In one line of the file; a table of bodies has a few dozen columns. */
const MOST_CELLS = 500;
/** Fewer columns of measurements are no table of bodies, but a word by chance. */
const LEAST_COLUMNS = 2;

/**
 * Reads a CSV table (RFC 4180, and what spreadsheets make of it: other delimiters, a byte order mark, UTF-16) as far as
 * its heads and cells.
 *
 * @param bytes of the file
 */
export function readRecords(bytes: Uint8Array): Result<TableRecords> {
  if (bytes.length > LARGEST_TABLE)
    return refused(
      undefined,
      say`has ${number(bytes.length / 1e6, 1)} MB; a table of bodies has at most ${number(LARGEST_TABLE / 1e6, 0)} MB.`,
    );
  const text = tableText(bytes);
  const tooMany = crowd(text);
  if (tooMany) return refused(text.slice(0, 40), tooMany);
  const named = /^sep=(.)\r?\n/i.exec(text);
  const body = named ? text.slice(named[0].length) : text;
  const delimiters = named?.[1] ? [named[1]] : DELIMITERS;
  // The delimiter is the one that makes most columns known: decimal commas can't mislead that.
  const tries = delimiters.map((delimiter) => ({ delimiter, ...headsOf(body, delimiter) }));
  const best = tries.reduce((a, b) => (b.known > a.known ? b : a));
  if (best.known < LEAST_COLUMNS)
    return {
      ok: false,
      problems: [
        noHeads(
          body,
          tries.map(({ delimiter }) => delimiter),
        ),
      ],
    };
  const { data, errors } = Papa.parse<string[]>(body, { delimiter: best.delimiter });
  const open = errors.find(({ code }) => code === 'MissingQuotes');
  if (open) {
    const row = (open.row ?? 0) + 1;
    const phrase = say`a quotation mark is opened in row ${number(row, 0)} and never closed, so all that follows is one cell.`;
    return { ok: false, problems: [{ field: 'table', place: say`row ${number(row, 0)}`, value: '"', phrase }] };
  }
  const { at: headsAt, delimiter } = best;
  return { ok: true, value: { records: data, headsAt, delimiter, namesDelimiter: named !== null } };
}

/** The heads and the bodies of a table; rows without a word are passed over. */
export function writtenTable({ records, headsAt }: TableRecords): WrittenTable {
  const heads = (records[headsAt] ?? []).map(tableHead);
  const rows = records
    .map((cells, i) => tableRow(cells, i))
    .slice(headsAt + 1)
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  return { heads, rows };
}

/** What a cell says as a head. */
export const tableHead = (text: string): TableHead => ({
  text: plainWords(text.slice(0, LONGEST_SHOWN)),
  column: columnOf(text),
});

/** One record as a row. */
export const tableRow = (cells: readonly string[], at: number): TableRow => ({
  row: at + 1,
  cells: cells.map((cell) => cell.trim()),
});

const refused = (value: unknown, phrase: Phrase): Result<never> => ({
  ok: false,
  problems: [{ field: 'table', value, phrase }],
});

/** What makes a text too long or too wide for a table of bodies, before anything of it is taken apart. */
function crowd(text: string): Phrase | undefined {
  let [lines, cells] = [1, 1];
  for (let i = 0; i < text.length; i += 1) {
    const sign = text[i] as string;
    if (sign === '\n' || sign === '\r') {
      lines += 1;
      cells = 1;
    } else if ((DELIMITERS as readonly string[]).includes(sign)) cells += 1;
    if (cells > MOST_CELLS)
      return say`has a row of more than ${number(MOST_CELLS, 0)} cells; a table of bodies has a column for each measurement.`;
    if (lines > 2 * MOST_LINES) return say`has more than ${number(MOST_LINES, 0)} lines: divide it.`;
  }
  return undefined;
}

/** The row in which most columns are known, and how many. */
function headsOf(text: string, delimiter: string): { readonly at: number; readonly known: number } {
  const { data } = Papa.parse<string[]>(text, { delimiter, preview: ROWS_ABOVE });
  const known = data.map((cells) => cells.filter((cell) => isMeasurement(columnOf(cell)?.kind ?? 'name')).length);
  const most = Math.max(0, ...known);
  return { at: Math.max(0, known.indexOf(most)), known: most };
}

function noHeads(text: string, delimiters: readonly string[]): Problem {
  const downwards = delimiters.some((delimiter) => {
    const { data } = Papa.parse<string[]>(text, { delimiter, preview: 3 * ROWS_ABOVE });
    return data.filter(([first]) => isMeasurement(columnOf(first ?? '')?.kind ?? 'name')).length >= LEAST_COLUMNS;
  });
  return {
    field: 'table',
    value: text.slice(0, 40),
    phrase: downwards
      ? say`the measurements stand below one another; turn the table, so that each body is one row.`
      : say`no row names the columns: one row must say Name, Waist, Hip, Body rise, Inside leg …, and each body follows in a row of its own.`,
  };
}

/**
 * The text of a table, whatever program saved it: UTF-8 or UTF-16 by its byte order mark, else UTF-8 where the bytes are
 * that, else Windows-1252, in which older spreadsheets save.
 */
function tableText(bytes: Uint8Array): string {
  const [a, b] = bytes;
  if (a === 0xff && b === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (a === 0xfe && b === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
