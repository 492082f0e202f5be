import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { DamagedFile } from './cases';
import { type Judged, judged } from './judge';

/** Files that once went wrong, named by their kind and by how, with what becomes of each. */
const KEPT: Readonly<Record<string, Judged['became']>> = {
  'table.controls-in-names.txt': 'opened',
  'project.cut-in-a-list.txt': 'repaired',
  'drawing.flags-packed-and-empty-path.txt': 'refused',
  'project.list-for-a-group.txt': 'repaired',
  'project.name-twice.txt': 'repaired',
  'project.names-of-the-language.txt': 'repaired',
  'project.nested-deeply.txt': 'refused',
  'drawing.reaches-too-far-back.txt': 'refused',
  'drawing.reaches-too-far-front.txt': 'refused',
  'drawing.rotated-by-style.txt': 'refused',
  'project.too-large-numbers.txt': 'repaired',
};

const folder = new URL('./kept/', import.meta.url);

test.each(Object.entries(KEPT))('%s is %s, and nothing of it is lost without a word', async (name, became) => {
  const kind = name.slice(0, name.indexOf('.')) as DamagedFile['kind'];
  const found = await judged({ kind, bytes: readFileSync(new URL(name, folder)) }, true);
  expect(found).toMatchObject({ became, faults: [] });
});

test('every kept file is tried', () => {
  expect(readdirSync(folder).sort()).toEqual(Object.keys(KEPT).sort());
});
