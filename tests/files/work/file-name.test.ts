import { expect, test } from 'vitest';
import { safeFileName, unlikeNames } from '../../../src/files';

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
  ['CON', 'pattern-CON'],
  ['nul.pdf', 'pattern-nul.pdf'],
  ['Lpt1', 'pattern-Lpt1'],
  ['com¹.x', 'pattern-com¹.x'],
  ['Connie', 'Connie'],
  ['name. . .', 'name'],
  ['...legwork', 'legwork'],
  ['a\u202etxt.exe', 'a-txt.exe'],
  ['half \ud83d of one', 'half-of-one'],
  ['\u0000\u001b[2J', '2J'],
  ['हिंदी', 'हिंदी'],
])('%j becomes %j', (name, safe) => {
  expect(safeFileName(name)).toBe(safe);
});

test.each(['睡', '👖x', 'é', '𝒳'])('80 letters of %s fit on any disk with the longest of our endings', (letter) => {
  const name = safeFileName(letter.repeat(80));
  expect(name).not.toMatch(/\ufffd|[\ud800-\udbff]$/);
  expect(Buffer.byteLength(`${name}-5000.nested-12-of-12.large.printer-test.legwork.json.part`)).toBeLessThanOrEqual(
    255,
  );
});

test('names that some system takes for the same are made unlike: accents beside their letters, wide letters, sharp s', () => {
  const made = unlikeNames(['Zoé', 'Zoe\u0301', 'ZOÉ', 'Ｚｏé', 'Groß', 'GROSS', 'ﬁt', 'fit']);
  const folded = made.map((name) => name.normalize('NFKC').toUpperCase());
  expect(new Set(folded).size).toBe(8);
});

test('names are made unlike each other, whatever their capitals, and also where a number stands there already', () => {
  const made = unlikeNames(['Ada', 'ada', 'Ada', 'Ada-2', 'Bo']);
  expect(made[0]).toBe('Ada');
  expect(made[4]).toBe('Bo');
  expect(new Set(made.map((name) => name.toLowerCase())).size).toBe(5);
  expect(new Set(unlikeNames(Array(1000).fill('Row'))).size).toBe(1000);
});
