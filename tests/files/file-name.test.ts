import { expect, test } from 'vitest';
import { safeFileName, unlikeNames } from '../../src/files';

test.each([
  ['Flannel bottoms', 'Flannel-bottoms'],
  ['../../etc/passwd', 'etc-passwd'],
  ['.hidden', 'hidden'],
  ['a/b\\c:d*e?f"g<h>i|j', 'a-b-c-d-e-f-g-h-i-j'],
  ['Żółte spodnie', 'Żółte-spodnie'],
  ['睡衣', '睡衣'],
  ['   ', 'pattern'],
  ['', 'pattern'],
  ['--strict', 'strict'],
  ['line\nbreak', 'line-break'],
  ['x'.repeat(300), 'x'.repeat(80)],
])('%j becomes %j', (name, safe) => {
  expect(safeFileName(name)).toBe(safe);
});

test('names are made unlike each other, whatever their capitals, and also where a number stands there already', () => {
  const made = unlikeNames(['Ada', 'ada', 'Ada', 'Ada-2', 'Bo']);
  expect(made[0]).toBe('Ada');
  expect(made[4]).toBe('Bo');
  expect(new Set(made.map((name) => name.toLowerCase())).size).toBe(5);
  expect(new Set(unlikeNames(Array(1000).fill('Row'))).size).toBe(1000);
});
