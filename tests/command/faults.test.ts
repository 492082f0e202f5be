import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { runDraft } from '../../src/command';
import type { FileJob, FinishedFile, MadeMember } from '../../src/files';
import { type Draft, saveProject } from '../../src/project';
import { projectWith } from '../files/drafts';
import { brokenDisk, folderContent } from './broken-disk';

// The same order makes the same files: what is tried here is how they are written, so they are made once.
vi.mock(import('../../src/files'), async (original) => {
  const files = await original();
  const made = new Map<string, Promise<readonly FinishedFile[]>>();
  const sets: { pieces: Uint8Array[]; members: readonly MadeMember[] }[] = [];
  async function* makeFiles(...[jobs, asked, options]: Parameters<typeof files.makeFiles>) {
    const key = JSON.stringify([jobs.map(({ name }: FileJob) => name), asked]);
    const making = made.get(key) ?? files.carriedOut(files.makeFiles(jobs, asked, options));
    made.set(key, making);
    yield { share: 0, doing: 'made' };
    return await making;
  }
  async function* classAgain(...[order, options, write]: Parameters<typeof files.classWork>) {
    yield { share: 0, doing: 'made' };
    if (sets.length === 0) {
      const pieces: Uint8Array[] = [];
      const work = await files.classWork(order, options, (bytes) => pieces.push(bytes));
      sets.push({ pieces, members: await files.carriedOut(work) });
    }
    for (const piece of sets[0]?.pieces ?? []) write(piece);
    return sets[0]?.members ?? [];
  }
  return { ...files, makeFiles, classWork: async (...given) => classAgain(...given) } as typeof files;
});
vi.mock(import('../../src/project'), async (original) => {
  const project = await original();
  const drafts = new Map<string, ReturnType<typeof project.draft>>();
  const draft = (from: Parameters<typeof project.draft>[0]) => {
    const known = drafts.get(JSON.stringify(from)) ?? project.draft(from);
    drafts.set(JSON.stringify(from), known);
    return known;
  };
  return { ...project, draft, withFewestSheets: (of: Draft) => of };
});

let folder = '';
const at = (name: string) => join(folder, name);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'faults-'));
  writeFileSync(at('a.legwork.json'), saveProject(projectWith()));
  writeFileSync(at('b.legwork.json'), saveProject(projectWith({ body: { hipGirth: 1100 } })));
  writeFileSync(at('t.csv'), 'Name;Waist (cm);Hip (cm);Body rise (cm);Inside leg (cm)\nAda;74,2;102;27,2;75,8\n');
});
afterEach(() => rmSync(folder, { recursive: true }));

const A = 'a.legwork.json';
const ORDERS: Readonly<Record<string, readonly string[]>> = {
  'one project': [A, '--files', 'svg,handout'],
  'several projects': [A, 'b.legwork.json', '--files', 'svg,report'],
  'a ZIP': [A, '--files', 'zip'],
  'a class': [A, '--class', 't.csv', '--files', 'report'],
  'an empty table': [A, '--empty-table'],
};
const HARMLESS = ['linkSync', 'readdirSync', 'unlinkSync'];
const CODES = ['EIO', 'ENOSPC', 'EACCES'];

async function run(words: readonly string[], disk: ReturnType<typeof brokenDisk>['disk']) {
  const complained: string[] = [];
  const said: string[] = [];
  const paths = words.map((word) => (/\.(json|csv)$/.test(word) ? at(word) : word));
  const code = await runDraft([...paths, '--out', at('out')], {
    input: (async function* () {})(),
    say: (line) => said.push(line),
    complain: (line) => complained.push(line),
    now: () => new Date(0),
    disk,
  });
  return { code, said, complained };
}

describe.each(Object.entries(ORDERS))('%s, on a disk that fails', (what, words) => {
  test.each(what === 'an empty table' ? ['no folder'] : ['no folder', 'old files'])(
    'at any call, over %s: 2, one sentence and nothing changed, or all written',
    async (before) => {
      const whole = brokenDisk(() => false, '');
      const names = (await run(words, whole.disk)).said;
      expect(names.length).toBeGreaterThan(0);
      const outcomes = new Set<number>();
      for (let n = 1; n <= 200; n += 1) {
        rmSync(at('out'), { recursive: true, force: true });
        if (before === 'old files') {
          mkdirSync(at('out'));
          for (const name of names) writeFileSync(name, 'old');
        }
        const old = folderContent(folder);
        const { disk, calls } = brokenDisk((number) => number === n, CODES[n % CODES.length] ?? '');
        const { code, said, complained } = await run(words, disk);
        const call = `${calls[n - 1]} (${n})`;
        outcomes.add(code);
        if (code === 2) {
          expect([said, complained.length], call).toEqual([[], 1]);
          expect(complained[0], call).toMatch(/^--out: .*can’t be written to: .*(nothing|put back)/);
          expect(folderContent(folder), call).toEqual(old);
        } else {
          expect([code, said, complained], call).toEqual([0, names, []]);
          if (calls.length < n) break;
          expect(HARMLESS).toContain(calls[n - 1]);
        }
      }
      expect([...outcomes].sort()).toEqual([0, 2]);
    },
  );
});
