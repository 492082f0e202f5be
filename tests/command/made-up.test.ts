import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runDraft } from '../../src/command';
import { faultSentence } from '../../src/command/outcome';
import { progressLine } from '../../src/command/progress-line';
import { systemReason } from '../../src/command/reasons';
import { FILE_KINDS, type Progress } from '../../src/files';
import { exampleProject, saveProject } from '../../src/project';
import { ENGLISH, said, speak, speakNamed } from '../../src/words';

let folder = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'zz-'));
  await speakNamed('made-up');
});
afterAll(() => {
  speak(ENGLISH);
  rmSync(folder, { recursive: true });
});

/** What is the same in every language: how the command is called, options, endings, paths in a project file, units. */
const SAME = [
  /npm run --silent draft --/g,
  /--[a-z-]+/g,
  /\bbody\.\w+/g,
  /\.[a-z][\w.]*/g,
  // The longer first: one name begins with another.
  new RegExp(`\\b(?:${FILE_KINDS.toSorted((a, b) => b.length - a.length).join('|')})\\b`, 'g'),
];

/** Words with a plain vowel that nobody typed: they were not said through the catalogue. */
function escapedFrom(text: string, typed: readonly string[] = []): readonly string[] {
  const known = [folder, ...typed].reduce((rest, one) => rest.replaceAll(one, ''), text);
  const rest = SAME.reduce((words, same) => words.replace(same, ''), known);
  return [...new Set(rest.match(/[\p{L}’-]*[aeiou][\p{L}’-]*/gu) ?? [])];
}

const file = (name: string, text: string) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const project = (name: string, changes = {}) =>
  file(
    name,
    saveProject({ ...exampleProject, name: 'Zzz', body: { ...exampleProject.body, label: 'Zzz' }, ...changes }),
  );
const out = () => join(folder, 'zz');

async function run(...words: readonly string[]) {
  const lines: string[] = [];
  const seen: Progress[] = [];
  const code = await runDraft(words, {
    input: (async function* () {})(),
    say: (line) => lines.push(line),
    complain: (line) => lines.push(line),
    now: () => new Date('2026-03-03T12:00:00Z'),
    progress: (progress) => seen.push(progress),
  });
  return { code, text: lines.join('\n'), seen };
}

describe('in a language that nobody speaks, no English is heard', () => {
  test('in the help', async () => {
    const { code, text } = await run('--help');
    expect(code).toBe(0);
    expect(text).toContain('«');
    expect(escapedFrom(text)).toEqual([]);
  });

  test.each([
    [[]],
    [['zz', '--out']],
    [['zz', 'zz', '--class', 'zz', '--blocks', 'zz', '--files', 'zz', '--zz']],
    [['zz', '--class', 'zz', '--empty-table', '--files', 'nested', '--out', 'zz', '--out', 'zz']],
    [['zz', '--files', 'nested', '--out', 'zz']],
    [['/zz/zz', '--out', 'zz']],
  ])('where it is refused: %j', async (words) => {
    const { code, text } = await run(...words);
    expect([code, escapedFrom(text)]).toEqual([2, []]);
  });

  test('of files that can’t be read, drafted or written', async () => {
    const old = file('1.json', saveProject(exampleProject).replace('"version": 2', '"version": 1'));
    const bad = project('2.json', {
      body: { ...exampleProject.body, label: 'Zzz', hipGirth: 10, waistGirth: undefined },
    });
    for (const words of [[folder], [bad], [bad, project('zz.json')], [file('3.json', '')], [file('4.json', '{}')]]) {
      const { code, text } = await run(...words, '--out', out());
      // A project that is none is told by its keys.
      expect([code, escapedFrom(text, ['format: ', 'legwork-project'])]).toEqual([2, []]);
    }
    const { code, text } = await run(old, project('5.json'), '--out', join(old, 'zz'), '--files', 'handout');
    expect([code, escapedFrom(text)]).toEqual([2, []]);
    expect(text.split('\n')).toHaveLength(2);
  });

  test('of a draft and of how far it has come', async () => {
    const { code, text, seen } = await run(project('6.json'), '--out', out(), '--files', 'handout');
    expect([code, escapedFrom(text)]).toEqual([0, []]);
    const shown: string[] = [];
    let now = 0;
    const line = progressLine({ isTTY: true, write: (words) => shown.push(words) }, () => now);
    now = 1000;
    line.show(seen[0] ?? { share: 0, doing: 'nothing' });
    expect(escapedFrom(shown.join('\n'), ['Ctrl'])).toEqual([]);
  });

  test('at the end of a class', async () => {
    const heads = 'Name;Waist (cm);Hip (cm);Body rise (cm);Inside leg (cm)';
    const typed = [...heads.split(';'), 'Zz'];
    const rows = ['Zz;74,2;1o2;27,2;', 'Zz;74,2;102;27,2;75,8;9;9;9', 'Zz;1;102;27,2;75,8'];
    const order = (...lines: readonly string[]) =>
      run(project('7.json'), '--class', file('zz.csv', lines.join('\n')), '--out', out(), '--files', 'handout');
    const some = await order(heads, 'Zz;74,2;102;27,2;75,8', ...rows);
    expect([some.code, escapedFrom(some.text, ['"1o2"', ...typed])]).toEqual([0, []]);
    const none = await order(heads, ...rows);
    expect([none.code, escapedFrom(none.text, ['"1o2"', ...typed])]).toEqual([2, []]);
    const few = await order('Name;Waist;Hip;Zz', 'Zz;74;102;2');
    expect([few.code, escapedFrom(few.text, ['Body rise', 'Inside leg'])]).toEqual([2, []]);
  });

  test('of what the system says, and of a fault', () => {
    const reason = systemReason(Object.assign(new Error(), { code: 'ENOSPC', syscall: 'zz' }));
    expect(reason && escapedFrom(said(reason))).toEqual([]);
    expect(escapedFrom(faultSentence(Object.assign(new Error('zz'), { stack: '' })))).toEqual([]);
  });

  test('but what was glued on is', () => {
    expect(escapedFrom('«Thé rÿ~» row 3 --out a.pdf zip')).toEqual(['row', 'a']);
  });
});
