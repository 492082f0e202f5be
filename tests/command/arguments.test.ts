import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseArguments } from '../../src/command';
import { FILE_KINDS } from '../../src/files';
import { chance } from '../properties/seed';

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

  test('files whose names begin with a hyphen, after --', () => {
    expect(order('--out', 'd', 'a', '--', '--help', '-b', '--out')).toMatchObject({
      projects: ['a', '--help', '-b', '--out'],
      out: 'd',
    });
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
    [['a', '--out', 'd', '--files', ''], ['--files: missing']],
    [['a', '--out', 'd', '--files', ',pdf,,'], ['--files: "": unknown kind']],
    [
      ['a', '--out', 'd', '--out=e', '--files', 'pdf', '--files', 'svg'],
      ['--out: named twice', '--files: named twice'],
    ],
    [['a', '--out', '--out'], ['--out: missing']],
    [['a', '--out', 'd', '--help=me'], ['--help=me: unknown option']],
    [
      ['a', '--out', 'd', '--toString', '--__proto__=x'],
      ['--toString: unknown option', '--__proto__=x: unknown'],
    ],
    [['--out', 'd', '--'], ['project: missing']],
    [['a', '--out', 'd', '--empty-table', '--files', 'pdf'], ['--empty-table: nothing else is written']],
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

test('any words at all are an order or sentences, each in one line and told once', () => {
  const parts = [
    '--out',
    '--files',
    '--class',
    '--blocks',
    '--strict',
    '--empty-table',
    '--',
    '-',
    '',
    '=',
    'pdf',
    'd',
  ];
  const word = fc.oneof(
    fc.constantFrom(...parts, ...FILE_KINDS),
    fc.tuple(fc.constantFrom(...parts), fc.string({ unit: 'binary' })).map(([option, rest]) => `${option}=${rest}`),
    fc.array(fc.constantFrom(...FILE_KINDS, '', 'png')).map((kinds) => kinds.join(',')),
    fc.string({ unit: 'binary' }),
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 12 }), (words) => {
      const parsed = parseArguments(words);
      if (!parsed.ok) {
        expect(parsed.problems.length).toBeGreaterThan(0);
        expect(new Set(parsed.problems).size).toBe(parsed.problems.length);
        for (const problem of parsed.problems) expect(problem).toMatch(/^.*: ./s);
        return;
      }
      if (parsed.order === 'help') throw new Error('nobody asked for help');
      const { projects, out, files, table, emptyTable } = parsed.order;
      // Every word of the order was among those given.
      for (const path of projects) expect(words).toContain(path);
      expect(words.some((given) => given === out || given === `--out=${out}`)).toBe(true);
      expect(new Set(projects).size).toBe(projects.length);
      expect(files === 'all' || files.length > 0).toBe(true);
      expect(table !== undefined && emptyTable).toBe(false);
    }),
    chance('the words of the command line', 2000),
  );
});
