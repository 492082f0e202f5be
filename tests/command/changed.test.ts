import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { runDraft } from '../../src/command';
import { exampleProject, openProject, type Project, saveProject } from '../../src/project';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'changed-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

async function written(project: Project, kind: string) {
  const path = join(folder, 'Pair.legwork.json');
  writeFileSync(path, saveProject(project));
  const complained: string[] = [];
  const code = await runDraft([path, '--out', join(folder, kind), '--files', kind], {
    input: (async function* () {})(),
    say: () => {},
    complain: (line) => complained.push(line),
    now: () => new Date('2026-11-24T12:00:00Z'),
  });
  return { code, complained: complained.join('\n') };
}

test('only changed sheets are written of the project out of a ZIP, and refused where there is nothing to write', async () => {
  expect(await written(exampleProject, 'changed')).toEqual({
    code: 2,
    complained: expect.stringMatching(/^files: "changed": nothing is known of an earlier print/),
  });
  expect((await written(exampleProject, 'zip')).code).toBe(0);
  const inside = unzipSync(readFileSync(join(folder, 'zip', 'Pair.zip')));
  expect(Object.keys(inside)).not.toContain('Pair.changed.pdf');
  const opened = openProject(new TextDecoder().decode(inside['Pair.legwork.json']));
  if (!opened.ok) throw new Error('the project in the ZIP is refused');
  expect((await written(opened.value, 'changed')).complained).toMatch(/there is nothing to print/);
  const { hem } = opened.value;
  expect(await written({ ...opened.value, hem: { ...hem, depth: 40 } }, 'changed')).toEqual({
    code: 0,
    complained: '',
  });
  expect(readdirSync(join(folder, 'changed'))).toEqual(['Pair.changed.pdf']);
});
