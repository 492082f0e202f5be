import { expect, test } from 'vitest';
import { safeFileName } from '../../src/files';

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
