import type { Units } from '../../length';
import type { Project } from '../../project';
import type { Result } from '../../words';
import type { PdfOptions } from '../pen/options';
import type { LongWork, Progress } from '../work/long-work';
import type { ClassOrder } from './make-class';
import type { MadeMember, Member } from './member';
import type { ClassTable } from './read-class';
import type { TableRecords } from './table';

// The reader of tables and the writers of a class are loaded when they are first asked for.

/**
 * Reads a table of bodies, one a row, each to be drafted with the project's own choices.
 *
 * @param bytes of a CSV file
 * @param project whose design is used
 */
export const readClass = async (bytes: Uint8Array, project: Project): Promise<Result<ClassTable>> =>
  (await import('./read-class')).readClass(bytes, project);

/**
 * Reads the records of a table, to be mended before a class is read of them.
 *
 * @param bytes of a CSV file
 */
export const readRecords = async (bytes: Uint8Array): Promise<Result<TableRecords>> =>
  (await import('./table')).readRecords(bytes);

/** A class of a table's records; the rest as for {@link readClass}. */
export const classOf = async (records: TableRecords, project: Project): Promise<Result<ClassTable>> =>
  (await import('./read-class')).classOf(records, project);

/** What mends a table on the screen, row by row and at once. */
export const loadMending = async () => {
  const [mend, look, table, columns] = await Promise.all([
    import('./mend'),
    import('./look-through'),
    import('./table'),
    import('./columns'),
  ]);
  const { fieldOf, isMeasurement } = columns;
  return { ...mend, lookAtRow: look.lookAtRow, tableHead: table.tableHead, fieldOf, isMeasurement };
};

/** Every row of a class drafted and checked, as long work: a step for each row. */
export const lookWork = async (table: ClassTable, units: Units): Promise<LongWork<readonly Member[]>> =>
  (await import('./look-through')).lookThrough(table, units);

/**
 * A class's set in one ZIP, as long work.
 *
 * @param write is given each piece of the ZIP as soon as it is packed
 */
export const classWork = async (
  order: ClassOrder,
  options: Omit<PdfOptions, 'fileName'>,
  write: (bytes: Uint8Array) => void,
): Promise<AsyncGenerator<Progress, readonly MadeMember[]>> =>
  (await import('./make-class')).makeClass(order, options, write);

/** An empty table of bodies to fill in, in the project's units. */
export const emptyTable = async (project: Pick<Project, 'units'>): Promise<string> =>
  (await import('./write-table')).emptyTable(project);
