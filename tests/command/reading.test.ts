import { execFileSync } from 'node:child_process';
import { appendFileSync, existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { runDraft } from '../../src/command';
import { exampleProject, saveProject } from '../../src/project';

let folder = '';
const at = (name: string) => join(folder, name);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'reading-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

async function run(words: readonly string[], input: AsyncIterable<Uint8Array | string> = (async function* () {})()) {
  const complained: string[] = [];
  const said: string[] = [];
  const code = await runDraft([...words, '--out', at('out')], {
    input,
    say: (line) => said.push(line),
    complain: (line) => complained.push(line),
    now: () => new Date(0),
  });
  return { code, said, complained };
}

describe('what is no readable file is refused at once, for a project, a drawing and a table', () => {
  const odd: readonly [string, () => string, RegExp][] = [
    ['an endless device', () => '/dev/zero', /isn’t a plain file/],
    [
      'a pipe that nobody writes to',
      () => (execFileSync('mkfifo', [at('pipe')]) ? at('pipe') : ''),
      /isn’t a plain file/,
    ],
    ['a folder', () => folder, /is a folder/],
    ['a device that holds nothing', () => '/dev/null', /isn’t a plain file/],
    ['a link in a circle', () => at('round'), /links lead round in a circle \(ELOOP\)/],
    ['a file beneath a file', () => join(at('a.json'), 'b'), /a file where a folder should be/],
    ['a name that is too long', () => at('x'.repeat(300)), /the name is too long/],
  ];
  test.each(odd)('%s', async (_, make, words) => {
    writeFileSync(at('a.json'), saveProject(exampleProject));
    symlinkSync('round', at('round'));
    const path = make();
    for (const order of [[path], [at('a.json'), '--blocks', path], [at('a.json'), '--class', path]]) {
      const { code, complained } = await run(order);
      expect([code, complained]).toEqual([2, [expect.stringMatching(words)]]);
    }
    expect(existsSync(at('out'))).toBe(false);
  });

  test('an empty file and an empty standard input', async () => {
    writeFileSync(at('a.json'), '');
    expect((await run([at('a.json')])).complained).toEqual([expect.stringMatching(/^file: .*a\.json": is empty\.$/)]);
    expect((await run(['-'])).complained).toEqual(['file: "-": is empty.']);
  });

  test('standard input that the system does not give', async () => {
    const input = (async function* () {
      yield '{';
      throw Object.assign(new Error(), { code: 'EISDIR', syscall: 'read' });
    })();
    expect((await run(['-'], input)).complained).toEqual([
      'file: "-": can’t be read: it is a folder, not a file (EISDIR).',
    ]);
  });
});

test('letters that are not UTF-8, or cut off within one, are refused and never replaced', async () => {
  const whole = Buffer.from(saveProject({ ...exampleProject, name: 'Hose für Ådne' }));
  const old = Buffer.from(whole.toString('utf8'), 'latin1');
  const cut = Buffer.concat([whole, Buffer.from([0xe2, 0x82])]);
  for (const bytes of [old, cut]) {
    writeFileSync(at('a.json'), bytes);
    const stream = (async function* () {
      yield bytes;
    })();
    for (const { code, complained } of [await run([at('a.json')]), await run(['-'], stream)])
      expect([code, complained]).toEqual([2, [expect.stringMatching(/letters that are not UTF-8/)]]);
  }
});

test('a file that grows while it is read is refused', async () => {
  const text = saveProject(exampleProject);
  writeFileSync(at('a.json'), text + ' '.repeat(3_000_000));
  let growing = true;
  const grow = () => {
    appendFileSync(at('a.json'), ' ');
    if (growing) setImmediate(grow);
  };
  setImmediate(grow);
  const { code, complained } = await run([at('a.json')]);
  growing = false;
  expect([code, complained]).toEqual([2, [expect.stringMatching(/was written to while it was read/)]]);
});

test('a name with signs that steer a terminal is printed without them', async () => {
  const { complained } = await run([at('a\u001b[2J\u0007.json'), '--f\u001b[31m']);
  expect(complained).toHaveLength(1);
  const more = await run([at('a\u001b[2J\u0007.json'), at('\u009b.json')]);
  for (const line of [...complained, ...more.complained]) expect(line).toMatch(/^\P{Cc}+$/u);
});

describe('what would write over something else is refused', () => {
  test('a drawing of blocks that lies where the pattern goes', async () => {
    mkdirSync(at('out'));
    writeFileSync(at('out/a.legwork.json'), saveProject(exampleProject));
    await run([at('out/a.legwork.json'), '--files', 'blocks']);
    const words = [at('out/a.legwork.json'), '--files', 'blocks', '--blocks', at('out/a.blocks.svg')];
    const { code, complained } = await run(words);
    expect([code, complained]).toEqual([
      2,
      [expect.stringMatching(/a\.blocks\.svg .*one of the files that were read/)],
    ]);
  });

  test('two projects of which one’s ending is the other’s name', async () => {
    for (const name of ['a.legwork.json', 'a.r12.legwork.json']) writeFileSync(at(name), saveProject(exampleProject));
    const { code, complained } = await run([at('a.legwork.json'), at('a.r12.legwork.json'), '--files', 'dxf,r12']);
    expect([code, complained]).toEqual([2, [expect.stringMatching(/a\.r12\.dxf would be written twice/)]]);
    expect(existsSync(at('out'))).toBe(false);
  });
});
