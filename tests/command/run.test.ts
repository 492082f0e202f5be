import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { runDraft } from '../../src/command';
import type { Progress } from '../../src/files';
import { exampleProject, saveProject } from '../../src/project';
import { projectWith } from '../files/drafts';
import { openPdf } from '../outside/paper/render';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'draft-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

async function run(words: readonly string[], input: readonly string[] = []) {
  const said: string[] = [];
  const complained: string[] = [];
  const code = await runDraft(words, {
    input: (async function* () {
      for (const part of input) yield Buffer.from(part);
    })(),
    say: (line) => said.push(line),
    complain: (line) => complained.push(line),
    now: () => new Date('2026-11-24T12:00:00Z'),
  });
  return { code, said, complained };
}

const project = (name: string, text: string | Uint8Array = saveProject(exampleProject)) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const out = () => join(folder, 'out');
const written = () => readdirSync(folder).filter((name) => name === 'out');

describe('a project that can be drafted', () => {
  test('of an earlier cut is written, and said to be drawn otherwise now', async () => {
    const old = project('old.json', saveProject(exampleProject).replace('"version": 2', '"version": 1'));
    const { code, said, complained } = await run([old, '--out', out(), '--files', 'handout']);
    expect([code, said.length]).toEqual([0, 1]);
    expect(complained).toEqual([expect.stringMatching(/old\.json: It was drawn by an earlier cut/)]);
  });

  test('writes every file under the project file’s own name and prints the paths', async () => {
    const { code, said, complained } = await run([project('First pair.legwork.json'), '--out', out()]);
    expect([code, complained]).toEqual([0, []]);
    const names = [
      'First pair.pdf',
      'First pair.large.pdf',
      'First pair.printer-test.pdf',
      'First pair.reference.pdf',
      'First pair.projector.pdf',
      'First pair.projector-test.pdf',
      'First pair.svg',
      'First pair.blocks.svg',
      'First pair.dxf',
      'First pair.r12.dxf',
      'First pair.guide.pdf',
      'First pair.guide.html',
      'First pair.fit.pdf',
      'First pair.report.json',
      'First pair.handout.pdf',
      'First pair.zip',
    ];
    expect(said).toEqual(names.map((name) => join(out(), name)));
    expect(readdirSync(out()).sort()).toEqual([...names].sort());
    expect(JSON.parse(readFileSync(join(out(), 'First pair.report.json'), 'utf8'))).toMatchObject({
      format: 'legwork-report',
      version: 2,
    });
    expect(readFileSync(join(out(), 'First pair.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('with blocks of somebody’s own uses them, and what it writes of them is the same again', async () => {
    const path = project('a.legwork.json');
    await run([path, '--out', out(), '--files', 'blocks']);
    const blocks = join(out(), 'a.blocks.svg');
    const again = join(folder, 'again');
    const { code, complained } = await run([path, '--out', again, '--files', 'blocks,handout', '--blocks', blocks]);
    expect([code, complained]).toEqual([0, []]);
    const handout = openPdf(readFileSync(join(again, 'a.handout.pdf')));
    expect(handout.text()).not.toContain('The front is');
    handout.close();
    const edge = (folder: string) =>
      /<path id="front-crotch"[^>]* d="([^"]*)"/.exec(readFileSync(join(folder, 'a.blocks.svg'), 'utf8'))?.[1];
    expect(edge(again)?.length).toBe(edge(out())?.length);
  });

  test('with a drawing of just two closed outlines takes them by their shapes, and tells it', async () => {
    const drawing = fileURLToPath(new URL('../trace/fixtures/librecad.dxf', import.meta.url));
    const { code, complained } = await run([
      project('a.legwork.json'),
      '--out',
      out(),
      '--files',
      'blocks',
      '--blocks',
      drawing,
    ]);
    expect([code, written()]).toEqual([0, ['out']]);
    expect(complained).toEqual([
      `${drawing}: Front and back, their corners and edges were found by their shapes.`,
      `${drawing}: The front has no plain hip line; it is taken to lie 18.6 cm below the waist at the side.`,
      `${drawing}: The back has no plain hip line; it is taken to lie 18.6 cm below the waist at the side.`,
    ]);
  });

  test('with a drawing whose shapes don’t tell all says what to name, and nothing is written', async () => {
    const drawing = fileURLToPath(new URL('../trace/fixtures/inkscape.dxf', import.meta.url));
    const { code, complained } = await run([project('a.legwork.json'), '--out', out(), '--blocks', drawing]);
    expect([code, written()]).toEqual([2, []]);
    expect(complained).toEqual([
      `${drawing}: file: doesn’t tell in which unit it is drawn: save it with its unit, or as SVG with a width in mm, cm or in.`,
    ]);
  });

  test('with a drawing that holds no blocks is refused, and nothing is written', async () => {
    const path = project('a.legwork.json');
    const drawing = project('no.svg', '<svg xmlns="http://www.w3.org/2000/svg" width="9" viewBox="0 0 9 9"/>');
    const { code, complained } = await run([path, '--out', out(), '--blocks', drawing]);
    expect(code).toBe(2);
    expect(complained).toEqual([`${drawing}: file: has no line that can be read.`]);
    expect(written()).toEqual([]);
    expect((await run([path, '--out', out(), '--blocks', join(folder, 'none.svg')])).complained[0]).toContain(
      'there is no such file',
    );
  });

  test('from standard input, in parts, is named by the project', async () => {
    const text = saveProject(exampleProject);
    const { code, said } = await run(['-', '--out', out(), '--files', 'report'], [text.slice(0, 100), text.slice(100)]);
    expect(code).toBe(0);
    expect(said).toEqual([join(out(), 'Flannel-bottoms-first-pair.report.json')]);
  });

  test('with a byte order mark in front is read all the same', async () => {
    const path = project('a.legwork.json', `\ufeff${saveProject(exampleProject)}`);
    expect((await run([path, '--out', out(), '--files', 'svg'])).code).toBe(0);
  });

  test('writes over the files of an earlier run, and leaves nothing half-written', async () => {
    const words = [project('a.legwork.json'), '--out', out(), '--files', 'svg,report'];
    await run(words);
    expect((await run(words)).code).toBe(0);
    expect(readdirSync(out()).sort()).toEqual(['a.report.json', 'a.svg']);
  });

  test('--strict says 1 where a check says wrong, and writes the files all the same', async () => {
    // A hem far too narrow for the foot.
    const path = project('a.legwork.json', saveProject(projectWith({ leg: { shape: { hemGirth: 300 } } })));
    const loose = await run([path, '--out', out(), '--files', 'report']);
    const { checks } = JSON.parse(readFileSync(join(out(), 'a.report.json'), 'utf8')) as {
      checks: { verdict: string }[];
    };
    expect(checks.some((check) => check.verdict === 'wrong')).toBe(true);
    const strict = await run([path, '--out', out(), '--files', 'report', '--strict']);
    expect([loose.code, strict.code]).toEqual([0, 1]);
    expect(strict.said).toHaveLength(1);
  });
});

describe('several projects', () => {
  const two = () => [
    project('a.legwork.json'),
    project('b.legwork.json', saveProject(projectWith({ body: { label: 'Body 2', hipGirth: 1100 } }))),
  ];

  test('each has its own files, and all are laid on each other', async () => {
    const { code, complained } = await run([...two(), '--out', out(), '--files', 'report,nested']);
    expect([code, complained]).toEqual([0, []]);
    expect(readdirSync(out()).sort()).toEqual([
      'a-and-1-more.nested.large.pdf',
      'a-and-1-more.nested.pdf',
      'a-and-1-more.nested.svg',
      'a.report.json',
      'b.report.json',
    ]);
  });

  test('tell how far they have come, never back, and name what they do', async () => {
    const seen: Progress[] = [];
    await runDraft([...two(), '--out', out(), '--files', 'pdf,svg'], {
      input: (async function* () {})(),
      say: () => {},
      complain: () => {},
      now: () => new Date(0),
      progress: (progress) => seen.push(progress),
    });
    const shares = seen.map(({ share }) => share);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
    expect(seen.map(({ doing }) => doing)).toEqual(
      expect.arrayContaining(['drafting 2 of 2', expect.stringMatching(/^a.pdf, sheet A.$/), 'b.svg']),
    );
  });

  test('one that can not be drafted refuses all, and is named', async () => {
    const words = [...two(), project('c.legwork.json', '{}'), '--out', out()];
    const { code, said, complained } = await run(words);
    expect([code, said]).toEqual([2, []]);
    expect(complained).toEqual([expect.stringMatching(/c\.legwork\.json: format: missing/)]);
    expect(written()).toEqual([]);
  });

  test('two whose files would have the same name are refused', async () => {
    mkdirSync(join(folder, 'other'));
    const words = [project('a.legwork.json'), project('other/A.legwork.json'), '--out', out(), '--files', 'svg'];
    const { code, complained } = await run(words);
    expect(code).toBe(2);
    expect(complained).toEqual([expect.stringMatching(/another project is called "A" too; rename one/)]);
  });
});

describe('what is refused: exit code 2, one line each, nothing written', () => {
  const refusals: readonly {
    readonly name: string;
    readonly words: () => readonly string[];
    readonly input?: readonly string[];
    readonly lines: readonly RegExp[];
  }[] = [
    { name: 'no words at all', words: () => [], lines: [/^project: missing/, /^--out: missing/] },
    {
      name: 'no such file',
      words: () => [join(folder, 'no.json'), '--out', out()],
      lines: [/^file: .*no\.json.*there is no such file/],
    },
    { name: 'a folder', words: () => [folder, '--out', out()], lines: [/^file: .*is a folder/] },
    {
      name: 'broken JSON',
      words: () => [project('a.json', '{"format":'), '--out', out()],
      lines: [/^file: .*can’t be read as JSON/],
    },
    {
      name: 'another format',
      words: () => [project('a.json', '{"format":"x","version":1}'), '--out', out()],
      lines: [/^format: "x": must be/],
    },
    {
      name: 'a newer version',
      words: () => [project('a.json', '{"format":"legwork-project","version":3}'), '--out', out()],
      lines: [/^version: 3: .*newer/],
    },
    {
      name: '50 MB, by its size',
      words: () => [project('a.json', new Uint8Array(50_000_000)), '--out', out()],
      lines: [/^file: .*50 MB.*at most 5 MB/],
    },
    {
      name: 'endless standard input',
      words: () => ['-', '--out', out()],
      input: Array<string>(60).fill('x'.repeat(100_000)),
      lines: [/^file: "-": .*larger than the 5 MB/],
    },
    {
      name: 'two values out of their limits',
      words: () => [
        project(
          'a.json',
          JSON.stringify({ ...exampleProject, body: { ...exampleProject.body, hipGirth: 10, insideLeg: 9000 } }),
        ),
        '--out',
        out(),
      ],
      lines: [/^body\.hipGirth: 10: \S/, /^body\.insideLeg: 9000: \S/],
    },
    {
      name: 'a paper that is in no table',
      words: () => [project('a.json', JSON.stringify({ ...exampleProject, paper: { sheet: 'A5' } })), '--out', out()],
      lines: [/^paper\.sheet: "A5": .*A4/],
    },
    {
      name: 'a folder that can not be made',
      words: () => [project('a.json'), '--out', join(project('file'), 'sub')],
      lines: [/^--out: .*can’t be written to/],
    },
  ];

  test.each(refusals)('$name', async ({ words, input = [], lines }) => {
    const { code, said, complained } = await run(words(), input);
    expect(code).toBe(2);
    expect(said).toEqual([]);
    expect(complained).toHaveLength(lines.length);
    for (const [i, line] of lines.entries()) expect(complained[i]).toMatch(line);
    expect(written()).toEqual([]);
  });
});
