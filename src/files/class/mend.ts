import Papa from 'papaparse';
import { measurements } from '../../body';
import type { Units } from '../../length';
import { columnOf, OTHER_HEADS } from './columns';
import { type TableRecords, writtenTable } from './table';
import { csvFile, measurementHead } from './write-table';

/** What is typed into a cell of a table, in place of what stood there. */
export interface Mending {
  /** Which record and which of its cells, counted from 0. */
  readonly at: number;
  readonly cell: number;
  readonly text: string;
}

/** Longer texts than these are no cell of a table of bodies. */
const LONGEST_CELL = 200;

/**
 * A table with some cells typed anew; records that stay as they were are the very same. Empty cells that a record is longer
 * by than its heads are dropped, for what stood there was moved to where it belongs.
 */
export function mended(table: TableRecords, mendings: readonly Mending[]): TableRecords {
  const records = [...table.records];
  const wide = records[table.headsAt]?.length ?? 0;
  for (const { at, cell, text } of mendings) {
    const before = records[at];
    if (!before) continue;
    const cells = [...before];
    while (cells.length <= cell) cells.push('');
    cells[cell] = text.trim().slice(0, LONGEST_CELL);
    while (cells.length > wide && cells.at(-1)?.trim() === '') cells.pop();
    records[at] = cells;
  }
  return { ...table, records };
}

/** A table with an empty column more for each measurement that a body must have and no column is for, to be filled in. */
export function withNeededColumns(table: TableRecords, units: Units): TableRecords {
  const heads = table.records[table.headsAt] ?? [];
  const kinds = heads.map((head) => columnOf(head)?.kind);
  const missing = measurements.filter(({ key, required }) => required && !kinds.includes(key));
  const added = missing.map((m, i) => ({ at: table.headsAt, cell: heads.length + i, text: measurementHead(m, units) }));
  return mended(table, added);
}

/** A table with one body more, of whom only the name is written. */
export function withLearner(table: TableRecords, name: string): TableRecords {
  const { heads } = writtenTable(table);
  const at = heads.findIndex(({ column }) => column?.kind === 'name');
  const cells = heads.map((_, i) => (i === at ? name : ''));
  return { ...table, records: [...table.records.filter((_, i) => !isBlankEnd(table, i)), cells] };
}

/** Whether nothing is written in a record and in all below it: files end so. */
const isBlankEnd = ({ records }: TableRecords, from: number): boolean =>
  records.slice(from).every((cells) => cells.every((cell) => cell.trim() === ''));

/** A table of the usual columns and nobody yet, to be filled in on the screen. */
export const newTable = (units: Units): TableRecords => ({
  records: [[OTHER_HEADS.name[0], ...measurements.map((m) => measurementHead(m, units))]],
  headsAt: 0,
  delimiter: ',',
  namesDelimiter: false,
});

/**
 * Where pasted cells go, as in a spreadsheet: to the right of the first cell and, row by row, down.
 *
 * @param text lines of cells, parted by tabs
 * @param rows the records into which the lines go, from the first one on; lines beyond them are left out
 */
export function pasted(text: string, rows: readonly number[], first: number): readonly Mending[] {
  const { data } = Papa.parse<string[]>(text.replace(/[\r\n]+$/, ''), { delimiter: '\t' });
  return rows.flatMap((at, i) => (data[i] ?? []).map((cell, k) => ({ at, cell: first + k, text: cell })));
}

/** A table as a file that is read as the same: parted as it was, so that the spreadsheet that it came from opens it. */
export function writeRecords({ records, delimiter, namesDelimiter }: TableRecords): string {
  const text = csvFile(records, delimiter);
  return namesDelimiter ? `sep=${delimiter}\r\n${text.replace(/^\uFEFF/, '')}` : text;
}
