import type { Units } from '../../length';
import { own } from '../../words';
import { countedOff, type LongWork } from '../work/long-work';
import { type Member, memberOf, rowDraft } from './member';
import type { ClassTable } from './read-class';

/** Every row drafted and checked, nothing made of it yet: what a teacher looks through first. A step for each row. */
export function* lookThrough({ rows }: ClassTable, units: Units): LongWork<readonly Member[]> {
  const members: Member[] = [];
  for (const [i, row] of rows.entries()) {
    yield { share: i / rows.length, doing: countedOff(own(row.name), i, rows.length) };
    members.push(memberOf(row, rowDraft(row), units));
  }
  return members;
}
