import { describe, expect, test } from 'vitest';
import { lookAtRow } from '../../../src/files/class/look-through';
import { memberOf, rowDraft } from '../../../src/files/class/member';
import { mended, newTable, pasted, withLearner, withNeededColumns, writeRecords } from '../../../src/files/class/mend';
import { classOf } from '../../../src/files/class/read-class';
import { readRecords, type TableRecords } from '../../../src/files/class/table';
import { projectWith } from '../drafts';

const project = projectWith();
const TEXT = [
  'Evening class;;;;;',
  '',
  'Name;Waist (cm);Hip (cm);Body rise (cm);Inside leg (cm);Shoe',
  '# note;needed;needed;needed;needed;',
  'Ada;74,2;102;27,2;75,8;38',
  'Ben;74;1o2;27;76;40',
  'Cy;;102;27;76;=1+1',
  '',
].join('\r\n');

function recordsOf(text: string): TableRecords {
  const read = readRecords(new TextEncoder().encode(text));
  if (!read.ok) throw new Error('the table was refused');
  return read.value;
}

const membersOf = (table: TableRecords) => {
  const read = classOf(table, project);
  if (!read.ok) throw new Error('the class was refused');
  return read.value.rows.map((row) => memberOf(row, rowDraft(row), project.units));
};

describe('a table that is mended', () => {
  const table = recordsOf(TEXT);

  test('says which cells are missing or impossible, and no other', () => {
    expect(membersOf(table).map(({ row, name, fields }) => [row, name, fields])).toEqual([
      [5, 'Ada', []],
      [6, 'Ben', ['body.hipGirth']],
      [7, 'Cy', ['body.waistGirth']],
    ]);
  });

  test('names both cells of what looks like a slip', () => {
    const slip = mended(table, [{ at: 4, cell: 4, text: '50' }]);
    expect(lookAtRow(slip, 5, project).fields).toEqual(['body.insideLeg', 'body.bodyRise']);
    expect(lookAtRow(slip, 5, project).look.length).toBeGreaterThan(0);
  });

  test('judges a row at once as the whole class is judged, and leaves the other records as they are', () => {
    const now = mended(table, [
      { at: 5, cell: 2, text: ' 102 ' },
      { at: 6, cell: 1, text: '30 in' },
    ]);
    for (const row of [5, 6, 7]) expect(lookAtRow(now, row, project)).toEqual(membersOf(now)[row - 5]);
    expect(membersOf(now).every(({ figures }) => figures !== undefined)).toBe(true);
    expect(now.records.filter((cells, i) => cells !== table.records[i])).toHaveLength(2);
  });

  test('is saved as it was parted, with its titles and notes, and read again as the same', () => {
    const now = mended(table, [{ at: 5, cell: 2, text: '102,5' }]);
    const text = writeRecords(now);
    expect(text).toContain('Ben;74;102,5;27;76;40\r\n');
    expect(text).toContain('Evening class;');
    expect(text).toContain("'=1+1");
    expect(membersOf(recordsOf(text))).toEqual(membersOf(now));
    const named = recordsOf(`sep=;\r\n${TEXT}`);
    expect(writeRecords(named)).toMatch(/^sep=;\r\nEvening class/);
    expect(membersOf(recordsOf(writeRecords(named)))).toEqual(membersOf(named));
  });

  test('takes pasted cells to the right and down its rows', () => {
    const cells = pasted('75\t103\n76\t104\n77\t105\n', [5, 6], 1);
    expect(cells).toEqual([
      { at: 5, cell: 1, text: '75' },
      { at: 5, cell: 2, text: '103' },
      { at: 6, cell: 1, text: '76' },
      { at: 6, cell: 2, text: '104' },
    ]);
    expect(membersOf(mended(table, cells)).every(({ figures }) => figures !== undefined)).toBe(true);
  });

  test('loses cells beyond its columns once they are emptied: what stood there was moved', () => {
    const split = recordsOf(TEXT.replace('Ada;74,2;102;27,2;75,8;38', 'Ada;74;2;102;27;2;75;8;38'));
    const before = lookAtRow(split, 5, project);
    expect([before.figures, before.fields]).toEqual([undefined, ['table']]);
    const typed = ['74,2', '102', '27,2', '75,8', '38', '', '', ''].map((text, i) => ({ at: 4, cell: i + 1, text }));
    expect(lookAtRow(mended(split, typed), 5, project)).toEqual(lookAtRow(table, 5, project));
  });

  test('gets the columns that every body needs, empty, and no other', () => {
    const few = recordsOf('Name,Waist (cm),Hip (cm)\r\nAda,74,102\r\n');
    const whole = withNeededColumns(few, 'cm');
    expect(whole.records[0]).toEqual(['Name', 'Waist (cm)', 'Hip (cm)', 'Body rise (cm)', 'Inside leg (cm)']);
    expect(membersOf(whole)[0]?.fields).toEqual(['body.bodyRise', 'body.insideLeg']);
    expect(withNeededColumns(table, 'cm').records[2]).toEqual(table.records[2]);
  });

  test('of nobody yet takes learners, who want what every body needs', () => {
    const typed = withLearner(withLearner(newTable('inch'), 'Ada'), 'Ben');
    const members = membersOf(typed);
    expect(members.map(({ row, name }) => [row, name])).toEqual([
      [2, 'Ada'],
      [3, 'Ben'],
    ]);
    expect(members[0]?.fields).toContain('body.hipGirth');
  });
});
