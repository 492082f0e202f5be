import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { exampleProject, saveProject } from '../../src/project';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'process-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const at = (name: string) => join(folder, name);
const file = (name: string, text: string) => {
  writeFileSync(at(name), text);
  return at(name);
};

/** The command as a process of its own, from its house door, and what came of it. */
function start(words: readonly string[], environment: NodeJS.ProcessEnv = {}) {
  const child = spawn(process.execPath, ['.house/enter.mjs', 'draft', ...words, '--out', at('out')], {
    env: { ...process.env, ...environment },
  });
  let complained = '';
  child.stderr.on('data', (part: Buffer) => {
    complained += part.toString();
  });
  child.stdin.on('error', () => {});
  const ended = new Promise<{ code: number | null; complained: string }>((resolve) => {
    child.on('close', (code) => resolve({ code, complained }));
  });
  return { child, ended };
}

/** Once the command has begun its file; the test's own time limit ends this where it never does. */
async function begun(child: ChildProcess): Promise<readonly string[]> {
  while (child.exitCode === null) {
    const names = existsSync(at('out')) ? readdirSync(at('out')) : [];
    if (names.length > 0) return names;
    await wait(10);
  }
  throw new Error(`ended with ${child.exitCode} before it began a file`);
}

/** Milliseconds: a watchdog, generous because a process loads everything anew. */
vi.setConfig({ testTimeout: 120_000 });

describe('stopped', () => {
  test.each([
    ['SIGTERM', 143],
    ['SIGHUP', 129],
  ] as const)('by %s in the middle of a class, it removes what it began', async (signal, expected) => {
    const rows = Array.from({ length: 200 }, (_, i) => `Ada ${i};74;102;27;76\n`);
    const table = file('t.csv', `Name;Waist (cm);Hip (cm);Body rise (cm);Inside leg (cm)\n${rows.join('')}`);
    const project = file('a.legwork.json', saveProject(exampleProject));
    const { child, ended } = start([project, '--class', table, '--files', 'fit']);
    const [name] = await begun(child);
    expect(name).toMatch(/^\.legwork-\d+-[0-9a-f]{8}-0\.part$/);
    child.kill(signal);
    expect(await ended).toEqual({ code: expected, complained: 'stopped: nothing was written\n' });
    expect(readdirSync(folder).sort()).toEqual(['a.legwork.json', 't.csv']);
  });

  test('by SIGINT while it waits for standard input, it ends at once', async () => {
    const { child, ended } = start(['-']);
    // More than a pipe holds: it is taken only once somebody reads.
    await new Promise((resolve) => child.stdin.write(' '.repeat(1_000_000), resolve));
    child.kill('SIGINT');
    expect(await ended).toEqual({ code: 130, complained: 'stopped: nothing was written\n' });
    expect(readdirSync(folder)).toEqual([]);
  });
});

test('nobody reads what it prints: the files are written, and it ends with 0', async () => {
  const project = file('a.legwork.json', saveProject(exampleProject));
  const { child, ended } = start([project, '--files', 'svg,handout']);
  child.stdout.destroy();
  expect(await ended).toEqual({ code: 0, complained: '' });
  expect(readdirSync(at('out')).sort()).toEqual(['a.handout.pdf', 'a.svg']);
});

test('a fault of the program ends with 2 and one sentence, without a stack trace', async () => {
  const trap = `const { concat } = Buffer; Buffer.concat = (parts, size) => {
    if (parts.length === 1 && String(parts[0]) === 'trap') throw new Error('odd\\n\\x1b');
    return concat(parts, size); };`;
  const { child, ended } = start(['-'], { NODE_OPTIONS: `--import data:text/javascript,${encodeURIComponent(trap)}` });
  child.stdin.end('trap');
  const { code, complained } = await ended;
  expect(complained).toMatch(
    /^program: an error in Legwork, .*Please report it with the project file: odd.* \(src\/command\/read-project\.ts:\d+ < .*\)\n$/,
  );
  expect([code, complained.split('\n').length]).toEqual([2, 2]);
  expect(readdirSync(folder)).toEqual([]);
});
