import type { Units } from '../../length';
import type { Project } from '../../project';
import type { Result } from '../../words';
import type { PdfOptions } from '../pen/options';
import type { LongWork, Progress } from '../work/long-work';
import type { ClassOrder } from './make-class';
import type { MadeMember, Member } from './member';
import type { ClassTable } from './read-class';

// The reader of tables and the writers of a class are loaded when they are first asked for.

/**
 * Reads a table of bodies, one a row, each to be drafted with the project's own choices.
 *
 * @param bytes of a CSV file
 * @param project whose design is used
 */
export const readClass = async (bytes: Uint8Array, project: Project): Promise<Result<ClassTable>> =>
  (await import('./read-class')).readClass(bytes, project);

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
