import { describe, expect, test } from 'vitest';
import { FILE_KINDS, parseArguments } from '../../src/command';

const order = (...words: string[]) => {
  const parsed = parseArguments(words);
  return parsed.ok ? parsed.order : parsed.problems;
};

describe('what can be asked for', () => {
  test.each([
    [['a.legwork.json', '--out', 'dir'], { project: 'a.legwork.json', out: 'dir', files: FILE_KINDS, strict: false }],
    [['--out=dir', '-', '--strict'], { project: '-', out: 'dir', files: FILE_KINDS, strict: true }],
    [
      ['--files', 'report,pdf', '--out', 'dir', 'a'],
      { project: 'a', out: 'dir', files: ['pdf', 'report'], strict: false },
    ],
    [['--files=svg', 'a', '--out', '-'], { project: 'a', out: '-', files: ['svg'], strict: false }],
  ])('%j', (words, expected) => {
    expect(order(...words)).toEqual(expected);
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
    [['a', 'b', '--out', 'd'], ['project: "b": one project at a time']],
    [['a', '--out', 'd', '--fast'], ['--fast: unknown option']],
    [['a', '--out', 'd', '--strict=yes'], ['--strict=yes: unknown option']],
    [['a', '--out', 'd', '-x'], ['-x: unknown option']],
  ])('%j', (words, starts) => {
    const problems = order(...words);
    expect(problems).toHaveLength(starts.length);
    for (const [i, start] of starts.entries()) expect((problems as string[])[i]).toMatch(new RegExp(`^${start}`));
  });
});
