import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { runDraft } from '../../src/command';
import type { Disk } from '../../src/command/disk';
import { saveProject } from '../../src/project';
import { projectWith } from '../files/drafts';
import { brokenDisk } from './broken-disk';

let folder = '';
let path = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'class-'));
  path = file('evening.legwork.json', saveProject(projectWith()));
});
afterEach(() => rmSync(folder, { recursive: true }));

const file = (name: string, text: string) => {
  const at = join(folder, name);
  writeFileSync(at, text);
  return at;
};
const out = () => join(folder, 'out');

const run = (...words: readonly string[]) => runOn(undefined, ...words);

async function runOn(disk: Disk | undefined, ...words: readonly string[]) {
  const said: string[] = [];
  const complained: string[] = [];
  const code = await runDraft(words, {
    input: (async function* () {})(),
    say: (line) => said.push(line),
    complain: (line) => complained.push(line),
    now: () => new Date('2026-11-24T12:00:00Z'),
    ...(disk && { disk }),
  });
  return { code, said, complained };
}

const HEADS = 'Name;Waist (cm);Hip (cm);Body rise (cm);Inside leg (cm)';
const ADA = 'Ada;74,2;102;27,2;75,8';
const BEN = 'Ben;74,2;1o2;27,2;';

describe('--class', () => {
  test('writes one ZIP, tells each bad row with its column, and leaves nothing half written', async () => {
    const table = file('bodies.csv', `${HEADS}\n${ADA}\n${BEN}\n`);
    const order = [path, '--class', table, '--out', out(), '--files', 'fit,report'];
    const { code, said, complained } = await run(...order);
    expect([code, said]).toEqual([0, [join(out(), 'evening.class.zip')]]);
    expect(complained).toEqual([
      'row 3 (Ben): Hip (cm): "1o2": isn’t a length; write a number such as 102.5 cm.',
      'row 3 (Ben): Inside leg (cm): missing: Inside leg is needed: on the body, from the crotch to the floor, inside of the leg. Trouser inseam will do in its place.',
    ]);
    expect(readdirSync(out())).toEqual(['evening.class.zip']);
    expect(Object.keys(unzipSync(readFileSync(join(out(), 'evening.class.zip')))).sort()).toEqual([
      'Ada/Ada.fit.pdf',
      'Ada/Ada.legwork.json',
      'Ada/Ada.report.json',
      'summary.csv',
      'summary.pdf',
    ]);
    expect((await run(...order, '--strict')).code).toBe(1);
  });

  test('of which no row can be drafted is refused, and writes nothing', async () => {
    const table = file('bodies.csv', `${HEADS}\n${BEN}\n`);
    const { code, said, complained } = await run(path, '--class', table, '--out', out());
    expect([code, said, readdirSync(folder).sort()]).toEqual([2, [], ['bodies.csv', 'evening.legwork.json']]);
    expect(complained.at(-1)).toContain('no row can be drafted; nothing was written');
  });

  test('whose disk is full is told once, and no row is blamed for it', async () => {
    const table = file('bodies.csv', `${HEADS}\n${ADA}\n${ADA.replace('Ada', 'Eve')}\n`);
    let written = 0;
    const { disk } = brokenDisk((_, call) => call === 'writeSync' && ++written === 2, 'ENOSPC');
    const { code, said, complained } = await runOn(disk, path, '--class', table, '--out', out(), '--files', 'handout');
    expect([code, said]).toEqual([2, []]);
    expect(complained).toEqual([expect.stringMatching(/^--out: .*evening\.class\.zip can’t .*the disk is full/)]);
    expect(readdirSync(folder).sort()).toEqual(['bodies.csv', 'evening.legwork.json']);
  });

  test.each([
    ['Name;Hip\nAda;102\n', /bodies\.csv: table: .*no row names the columns/],
    [`${HEADS}\n`, /bodies\.csv: table: .*holds no body/],
  ])('a table that can’t be understood is refused: %j', async (text, complaint) => {
    const { code, complained } = await run(path, '--class', file('bodies.csv', text), '--out', out());
    expect(code).toBe(2);
    expect(complained[0]).toMatch(complaint);
  });

  test('a table or a folder that isn’t there is told in a sentence', async () => {
    expect((await run(path, '--class', join(folder, 'none.csv'), '--out', out())).complained[0]).toContain(
      'there is no such file',
    );
    const table = file('bodies.csv', `${HEADS}\n${ADA}\n`);
    expect((await run(path, '--class', table, '--out', join(table, 'in'), '--files', 'fit')).complained[0]).toMatch(
      /^--out: .* can’t be written to/,
    );
  });
});

test('--empty-table writes a table to fill in, in the project’s units', async () => {
  const inches = file('inches.legwork.json', saveProject(projectWith({ units: 'inch' })));
  const { code, said } = await run(inches, '--empty-table', '--out', out());
  expect([code, said]).toEqual([0, [join(out(), 'inches.bodies.csv')]]);
  expect(readFileSync(said[0] ?? '', 'utf8')).toMatch(/^\uFEFFName,Waist \(in\),Hip \(in\)/);
});

test('--empty-table never writes over a table that may have been filled in', async () => {
  const [filled = ''] = (await run(path, '--empty-table', '--out', out())).said;
  writeFileSync(filled, 'filled in');
  const { code, complained } = await run(path, '--empty-table', '--out', out());
  expect([code, complained]).toEqual([2, [expect.stringMatching(/evening\.bodies\.csv .*may have been filled in/)]]);
  expect(readFileSync(filled, 'utf8')).toBe('filled in');
});
