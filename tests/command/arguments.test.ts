import { describe, expect, test } from 'vitest';
import { parseArguments } from '../../src/command';
import { FILE_KINDS } from '../../src/files';

const order = (...words: string[]) => {
  const parsed = parseArguments(words);
  return parsed.ok ? parsed.order : parsed.problems;
};

describe('what can be asked for', () => {
  test.each([
    [
      ['a.legwork.json', '--out', 'dir'],
      { projects: ['a.legwork.json'], out: 'dir', files: 'all', emptyTable: false, strict: false },
    ],
    [['--out=dir', '-', '--strict'], { projects: ['-'], out: 'dir', files: 'all', emptyTable: false, strict: true }],
    [
      ['--files', 'report,pdf', '--out', 'dir', 'a'],
      { projects: ['a'], out: 'dir', files: ['pdf', 'report'], emptyTable: false, strict: false },
    ],
    [
      ['a', 'b', '-', '--out', 'd', '--files', 'zip,nested'],
      { projects: ['a', 'b', '-'], out: 'd', files: ['nested', 'zip'], emptyTable: false, strict: false },
    ],
    [
      ['--files=svg', 'a', '--out', '-'],
      { projects: ['a'], out: '-', files: ['svg'], emptyTable: false, strict: false },
    ],
  ])('%j', (words, expected) => {
    expect(order(...words)).toEqual(expected);
  });

  test('a class from a table, and an empty table', () => {
    expect(order('a', '--class', 't.csv', '--out', 'd', '--files', 'pdf,nested')).toEqual({
      projects: ['a'],
      out: 'd',
      files: ['pdf', 'nested'],
      table: 't.csv',
      emptyTable: false,
      strict: false,
    });
    expect(order('a', '--empty-table', '--out=d')).toMatchObject({ emptyTable: true, files: 'all' });
  });

  test('every kind by its own name', () => {
    const files = FILE_KINDS.join(',');
    expect(order('a', 'b', '--out', 'd', '--files', files)).toMatchObject({ files: FILE_KINDS });
  });

  test('help, whatever else is wrong', () => {
    expect(order('--help')).toBe('help');
    expect(order('--nonsense', '--help')).toBe('help');
  });
});

describe('what is refused, a sentence for each', () => {
  test.each([
    [[], ['project: missing', '--out: missing']],
    [['a'], ['--out: missing']],
    [['a', '--out'], ['--out: missing']],
    [['a', '--out', '--strict'], ['--out: missing']],
    [['a', '--out', ''], ['--out: missing']],
    [['a', '--out', 'd', '--files'], ['--files: missing']],
    [['a', '--out', 'd', '--files', 'pdf,png'], ['--files: "png": unknown kind']],
    [['a', '--out', 'd', '--files', ''], ['--files: "": unknown kind']],
    [['a', 'b', 'a', '--out', 'd'], ['project: "a": named twice']],
    [['a', '--out', 'd', '--files', 'svg,nested'], ['--files: "nested": needs two projects']],
    [['a', '--out', 'd', '--fast'], ['--fast: unknown option']],
    [['a', '--out', 'd', '--strict=yes'], ['--strict=yes: unknown option']],
    [['a', '--out', 'd', '-x'], ['-x: unknown option']],
    [['a', '--out', 'd', '--class'], ['--class: missing']],
    [['a', 'b', '--out', 'd', '--class', 't'], ['project: "b": a class has one project']],
    [['a', '--out', 'd', '--class', 't', '--blocks', 'b.svg'], ['--blocks: blocks that were brought']],
    [['a', '--out', 'd', '--class', 't', '--empty-table'], ['--empty-table: a table is written or read']],
  ])('%j', (words, starts) => {
    const problems = order(...words);
    expect(problems).toHaveLength(starts.length);
    for (const [i, start] of starts.entries()) expect((problems as string[])[i]).toMatch(new RegExp(`^${start}`));
  });
});
