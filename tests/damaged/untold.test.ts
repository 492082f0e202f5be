import { expect, test } from 'vitest';
import { exampleProject, type Repair, saveProject } from '../../src/project';
import { UNSAID } from '../../src/words';
import { damagedFile } from './cases';
import { untold } from './untold';

const TEXT = saveProject(exampleProject);
const told = (field: string): Repair => ({ problem: { field, value: 1, phrase: UNSAID }, now: undefined });

test('what is changed, lost or turned into something else is seen unless it is told', () => {
  expect(untold(TEXT, exampleProject, [])).toEqual([]);
  const spread = { ...exampleProject, leg: { ...exampleProject.leg, spread: 1 } };
  expect(untold(TEXT, spread, [])).toEqual(['leg.spread']);
  expect(untold(TEXT, spread, [told('leg.spread')])).toEqual([]);
  expect(untold(TEXT, spread, [told('leg')])).toEqual([]);
  expect(untold(TEXT, spread, [told('leg.length')])).toEqual(['leg.spread']);
  expect(untold(TEXT.replace('"cloth": {', '"notes": [], "cloth": {'), exampleProject, [])).toEqual(['notes']);
  expect(untold('{"cloth": []}', exampleProject, [])).toEqual(['cloth']);
  expect(untold('{"cloth": {"__proto__": 1}}', exampleProject, [])).toEqual(['cloth.__proto__']);
});

test('the same seed damages the same file in the same way, another seed in another', () => {
  const text = (seed: number) => Buffer.from(damagedFile(seed).bytes).toString('base64');
  expect(text(11)).toBe(text(11));
  expect(new Set(Array.from({ length: 100 }, (_, i) => text(i))).size).toBe(100);
});
