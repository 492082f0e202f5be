import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { borrowed, installed } from '../../.house/install.mjs';
import { nodeProblem } from '../../.house/node-version.mjs';
import { root } from '../../.house/paths.mjs';
import { addStep, closingLine, NOTHING_YET, readTally } from '../../.house/tally.mjs';
import { findTool, missing } from '../../.house/tools.mjs';

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'legwork-commands-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true });
});

describe('Node', () => {
  test('new enough is no problem', () => {
    for (const version of ['20.19.0', '20.20.2', '22.0.0', '24.1.0']) expect(nodeProblem(version), version).toBe('');
  });

  test('too old is said in one sentence with both versions', () => {
    for (const version of ['20.18.3', '18.20.0', '8.1.0']) {
      expect(nodeProblem(version)).toBe(
        `Legwork needs Node 20.19 or newer, and this is Node ${version}: please install a newer one.`,
      );
    }
  });
});

describe('installed packages', () => {
  test('are missing, older or newer than the lock file', () => {
    writeFileSync(join(folder, 'package-lock.json'), '{}');
    expect(installed(folder)).toBe(false);
    mkdirSync(join(folder, 'node_modules'));
    expect(installed(folder), 'a folder that npm did not finish').toBe(false);
    writeFileSync(join(folder, 'node_modules', '.package-lock.json'), '{}');
    expect(installed(folder)).toBe(true);
    const later = Date.now() / 1000 + 60;
    utimesSync(join(folder, 'package-lock.json'), later, later);
    expect(installed(folder)).toBe(false);
  });

  test('of another folder are recognised, because installing through the link would empty that folder', () => {
    expect(borrowed(folder)).toBe(false);
    mkdirSync(join(folder, 'other'));
    symlinkSync(join(folder, 'other'), join(folder, 'node_modules'));
    expect(borrowed(folder)).toBe(true);
    rmSync(join(folder, 'node_modules'));
    mkdirSync(join(folder, 'node_modules'));
    expect(borrowed(folder)).toBe(false);
  });

  test('through a stale link stop the command and stay untouched', () => {
    cpSync(join(root, '.house'), join(folder, '.house'), { recursive: true });
    cpSync(join(root, 'package.json'), join(folder, 'package.json'));
    writeFileSync(join(folder, 'package-lock.json'), '{}');
    mkdirSync(join(folder, 'other'));
    writeFileSync(join(folder, 'other', 'kept'), '');
    symlinkSync('other', join(folder, 'node_modules'));
    const { status, stderr } = spawnSync(process.execPath, ['.house/enter.mjs', 'start'], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect(stderr).toBe(
      'node_modules is a link to packages that do not fit the lock file: please remove the link first.\n',
    );
    expect(status).toBe(1);
    expect(existsSync(join(folder, 'other', 'kept'))).toBe(true);
  });

  test('that are missing stay so where nothing may be installed, and one sentence says it', () => {
    cpSync(join(root, '.house'), join(folder, '.house'), { recursive: true });
    cpSync(join(root, 'package.json'), join(folder, 'package.json'));
    writeFileSync(join(folder, 'package-lock.json'), '{}');
    for (const command of ['test', 'start']) {
      const { status, stderr } = spawnSync(process.execPath, ['.house/enter.mjs', command, '--no-install'], {
        cwd: folder,
        encoding: 'utf8',
      });
      expect(stderr, command).toBe(
        'The packages of package-lock.json are not installed: please run "npm ci" once, or leave out --no-install.\n',
      );
      expect(status, command).toBe(1);
    }
    expect(existsSync(join(folder, 'node_modules'))).toBe(false);
  });

  test('drafting without them says what to do', () => {
    cpSync(join(root, '.house'), join(folder, '.house'), { recursive: true });
    cpSync(join(root, 'package.json'), join(folder, 'package.json'));
    const { status, stderr, stdout } = spawnSync(process.execPath, ['.house/enter.mjs', 'draft', '-'], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect(stderr).toBe(
      'The packages are not installed yet: please run "npm ci" once in the repository, then try again.\n',
    );
    expect(stdout).toBe('');
    expect(status).toBe(2);
  });
});

describe('the closing line', () => {
  test('sums the steps', () => {
    const first = addStep(NOTHING_YET, 0, { passed: 3, failed: 0, skipped: 1 });
    const second = addStep(first, 1, { passed: 4, failed: 2, skipped: 0 });
    expect(closingLine(second)).toBe('7 passed, 2 failed, 1 skipped');
  });

  test('never says "0 failed" after a step that went wrong', () => {
    expect(closingLine(addStep({ passed: 3, failed: 0, skipped: 0 }, 1, NOTHING_YET))).toBe(
      '3 passed, 1 failed, 0 skipped',
    );
  });

  test('counts nothing where a run left no count', () => {
    expect(readTally(join(folder, 'none.json'))).toEqual(NOTHING_YET);
  });

  test('is the last line also where a step is asked for that is not there', () => {
    const { status, stdout } = spawnSync(process.execPath, ['.house/enter.mjs', 'test', 'nonsense'], {
      cwd: root,
      encoding: 'utf8',
    });
    expect(stdout.trimEnd().split('\n').at(-1)).toBe('0 passed, 1 failed, 0 skipped');
    expect(status).toBe(1);
  });
});

describe('a tool from outside', () => {
  const tool = {
    name: 'Loom',
    variables: ['LOOM'],
    programs: ['loom', 'loom-stable'],
    places: [],
    debian: 'loom',
    advice: 'install loom',
  };

  test('is found by its variable before the path, and on the path by any of its names', () => {
    const onPath = program('bin', 'loom-stable');
    const named = program('elsewhere', 'my-loom');
    expect(findTool(tool, { PATH: join(folder, 'bin') })).toBe(onPath);
    expect(findTool(tool, { PATH: join(folder, 'bin'), LOOM: named })).toBe(named);
  });

  test('is not replaced by another where its variable names nothing', () => {
    program('bin', 'loom');
    expect(findTool(tool, { PATH: join(folder, 'bin'), LOOM: join(folder, 'gone') })).toBeUndefined();
  });

  test('is not taken for found where only a folder or a plain file has its name', () => {
    mkdirSync(join(folder, 'bin', 'loom'), { recursive: true });
    writeFileSync(join(folder, 'bin', 'loom-stable'), '');
    expect(findTool(tool, { PATH: join(folder, 'bin') })).toBeUndefined();
  });

  test('that is missing is named in one sentence', () => {
    expect(missing([tool])).toBe('The tests need Loom, not found here: please install loom.');
  });

  function program(place: string, name: string): string {
    const file = join(folder, place, name);
    mkdirSync(join(folder, place), { recursive: true });
    writeFileSync(file, '#!/bin/sh\n');
    chmodSync(file, 0o755);
    return file;
  }
});
