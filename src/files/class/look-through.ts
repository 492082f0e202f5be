import type { Project } from '../../project';
import { own } from '../../words';
import { countedOff, type LongWork } from '../work/long-work';
import { type Member, memberOf, rowDraft } from './member';
import { type ClassRow, type ClassTable, classRowAt } from './read-class';
import type { TableRecords } from './table';

type Units = Project['units'];

/** Every row drafted and checked, nothing made of it yet: what a teacher looks through first. A step for each row. */
export function* lookThrough({ rows }: ClassTable, units: Units): LongWork<readonly Member[]> {
  const members: Member[] = [];
  for (const [i, row] of rows.entries()) {
    yield { share: i / rows.length, doing: countedOff(own(row.name), i, rows.length) };
    members.push(looked(row, units));
  }
  return members;
}

/**
 * One row of a table, drafted and checked again after a cell of it was typed anew.
 *
 * @param row as a spreadsheet numbers it
 */
export const lookAtRow = (table: TableRecords, row: number, project: Project): Member =>
  looked(classRowAt(table, row - 1, project), project.units);

const looked = (row: ClassRow, units: Units): Member => memberOf(row, rowDraft(row), units);
