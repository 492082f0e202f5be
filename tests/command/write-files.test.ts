import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { NotWritten } from '../../src/command/places';
import { startWriting, writeFiles } from '../../src/command/write-files';
import { brokenDisk, folderContent } from './broken-disk';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'write-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const out = () => join(folder, 'out');
const put = (name: string, text: string) => {
  mkdirSync(out(), { recursive: true });
  writeFileSync(join(out(), name), text);
};
const NEW = [
  { name: 'a.svg', content: 'new a' },
  { name: 'b.svg', content: new Uint8Array([1, 2, 3]) },
  { name: 'c.svg', content: 'new c' },
];
const NEW_CONTENT = { 'a.svg': 'new a', 'b.svg': '\x01\x02\x03', 'c.svg': 'new c' };

/** What is said where files can't be written. */
function sentence(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (error instanceof NotWritten) return error.message;
    throw error;
  }
  return '';
}

/** What lay there before: nothing, some of the files, all of them. */
const BEFORE: Readonly<Record<string, () => void>> = {
  'no folder': () => {},
  'some of them': () => {
    put('b.svg', 'old b');
    put('mine.txt', 'kept');
  },
  'all of them': () => {
    for (const { name } of NEW) put(name, `old ${name}`);
  },
};
const CODES = ['ENOSPC', 'EROFS', 'EACCES', 'EMFILE', 'EIO', 'EDQUOT', 'EBUSY'];
/** What may fail without harm: a way back is copied then, the next run sweeps. */
const HARMLESS = ['linkSync', 'readdirSync', 'unlinkSync'];

test.each(Object.entries(BEFORE))(
  'a disk that fails at any call, over %s: all or none, nothing left, one sentence',
  (_, prepare) => {
    const failed = new Set<string>();
    for (let n = 1; ; n += 1) {
      rmSync(out(), { recursive: true, force: true });
      prepare();
      const before = folderContent(folder);
      const code = CODES[n % CODES.length] ?? '';
      const { disk, calls } = brokenDisk((number) => number === n, code);
      const said = sentence(() => writeFiles({ folder: out(), inputs: [], disk }, NEW));
      if (calls.length < n) break;
      const call = calls[n - 1] ?? '';
      const what = `${code} at call ${n}, ${call}`;
      if (said === '') expect(HARMLESS, what).toContain(call);
      else {
        failed.add(call);
        expect(said, what).toMatch(
          /^--out: "[^"]*": (\w\.svg )?can’t be written to: [a-z][^;]*\(E\w+\); .*(nothing|put back).*\.$/,
        );
        expect(folderContent(folder), what).toEqual(before);
      }
    }
    expect([...failed]).toEqual(
      expect.arrayContaining(['openSync', 'writeSync', 'fsyncSync', 'closeSync', 'renameSync']),
    );
  },
);

test('a disk that fails for good leaves each file whole, and says what could not be put back', () => {
  const said = new Set<string>();
  for (let n = 1; n < 60; n += 1) {
    rmSync(out(), { recursive: true, force: true });
    BEFORE['all of them']?.();
    const { disk } = brokenDisk((number) => number >= n, 'EIO');
    const words = sentence(() => writeFiles({ folder: out(), inputs: [], disk }, NEW));
    const after = folderContent(out());
    for (const { name } of NEW)
      expect([`old ${name}`, NEW_CONTENT[name as keyof typeof NEW_CONTENT]], `${n}`).toContain(after[name]);
    const [, kept] = /a\.svg as it was is now ([^,;]*)/.exec(words) ?? [];
    if (kept) expect(readFileSync(kept, 'utf8')).toBe('old a.svg');
    said.add(words.replace(/.*; |[^ ]*\.old/g, ''));
    writeFiles({ folder: out(), inputs: [] }, NEW);
    expect(folderContent(out())).toEqual(NEW_CONTENT);
  }
  expect([...said]).toEqual(expect.arrayContaining([expect.stringMatching(/before the next run/)]));
});

test('a rename that fails midway puts back those before it, and says so', () => {
  BEFORE['some of them']?.();
  const before = folderContent(folder);
  let renamed = 0;
  const { disk } = brokenDisk((_, call) => call === 'renameSync' && ++renamed === 3, 'EBUSY');
  expect(sentence(() => writeFiles({ folder: out(), inputs: [], disk }, NEW))).toMatch(
    /: c\.svg can’t be written to: it is in use \(EBUSY\); what had been renamed was put back, nothing is changed\.$/,
  );
  expect(folderContent(folder)).toEqual(before);
});

test('a disk without second names keeps the way back as copies', () => {
  BEFORE['all of them']?.();
  const before = folderContent(folder);
  let renamed = 0;
  const { disk } = brokenDisk((_, call) => call === 'linkSync' || (call === 'renameSync' && ++renamed === 3), 'EPERM');
  expect(sentence(() => writeFiles({ folder: out(), inputs: [], disk }, NEW))).toContain('was put back');
  expect(folderContent(folder)).toEqual(before);
});

test('a disk that takes few bytes at once gets all of them, one that takes none is refused', () => {
  const { disk } = brokenDisk(() => false, '');
  const sip = {
    ...disk,
    writeSync: (...[file, bytes, at]: [number, Uint8Array, number]) => disk.writeSync(file, bytes, at, 1),
  };
  writeFiles({ folder: out(), inputs: [], disk: sip as typeof disk }, NEW);
  expect(folderContent(out())).toEqual(NEW_CONTENT);
  const full = { ...disk, writeSync: () => 0 };
  expect(sentence(() => writeFiles({ folder: out(), inputs: [], disk: full }, NEW))).toContain('the disk failed');
});

test('a disk that can’t be told to finish is written to all the same', () => {
  const { disk } = brokenDisk((_, call) => call === 'fsyncSync', 'EINVAL');
  writeFiles({ folder: out(), inputs: [], disk }, NEW);
  expect(folderContent(out())).toEqual(NEW_CONTENT);
});

describe('what is there already and no plain file, or may not be lost', () => {
  test.each<[string, () => void, RegExp]>([
    ['a folder', () => mkdirSync(join(out(), 'b.svg')), /b\.svg .*there is a folder of that name/],
    ['a link', () => symlinkSync('x', join(out(), 'b.svg')), /b\.svg .*there is a link of that name/],
    ['a read-only file', () => writeFileSync(join(out(), 'b.svg'), '', { mode: 0o444 }), /b\.svg .*only be read/],
    ['an input', () => put('b.svg', 'blocks'), /b\.svg .*one of the files that were read/],
  ])('%s: refused, and stays', (what, prepare, words) => {
    mkdirSync(out());
    prepare();
    const inputs = what === 'an input' ? [join(out(), 'b.svg')] : [];
    const before = folderContent(folder);
    expect(sentence(() => writeFiles({ folder: out(), inputs }, NEW))).toMatch(words);
    expect(folderContent(folder)).toEqual(before);
  });

  test('an --out that is a file, and one beneath a file', () => {
    writeFileSync(out(), 'mine');
    const place = (path: string) => sentence(() => writeFiles({ folder: path, inputs: [] }, NEW));
    expect(place(out())).toContain('there is a file of that name; name a folder');
    expect(place(join(out(), 'in'))).toContain('there is a file where a folder should be');
    expect(folderContent(folder)).toEqual({ out: 'mine' });
  });

  test('two files of one name, also where only capitals or the writing of an accent differ', () => {
    for (const other of ['A.svg', 'a.svg'])
      expect(
        sentence(() => writeFiles({ folder: out(), inputs: [] }, [...NEW, { name: other, content: '' }])),
      ).toContain('would be written twice');
    const accents = ['\u00e9.svg', 'e\u0301.svg'].map((name) => ({ name, content: '' }));
    expect(sentence(() => writeFiles({ folder: out(), inputs: [] }, accents))).toContain('would be written twice');
    expect(folderContent(folder)).toEqual({});
  });
});

describe('stopped or given up', () => {
  test('leaves nothing, neither file nor folder, and is written to no more', () => {
    const stop = new AbortController();
    const writing = startWriting({ folder: join(out(), 'deep', 'er'), inputs: [], signal: stop.signal });
    const write = writing.begin('a.zip');
    write(Buffer.from('half'));
    expect(Object.keys(folderContent(folder))).toHaveLength(4);
    stop.abort();
    expect(folderContent(folder)).toEqual({});
    expect(() => write(Buffer.from('more'))).toThrow('after its end');
  });

  test('keeps a folder that it did not make, or in which something else lies now', () => {
    put('mine.txt', 'kept');
    for (const path of [out(), join(folder, 'new')]) {
      const writing = startWriting({ folder: path, inputs: [] });
      writing.begin('a.zip');
      if (path !== out()) writeFileSync(join(path, 'yours.txt'), 'kept');
      writing.abandon();
    }
    expect(folderContent(folder)).toEqual({
      new: 'a folder',
      'new/yours.txt': 'kept',
      out: 'a folder',
      'out/mine.txt': 'kept',
    });
  });
});

describe('killed between any two calls', () => {
  const STRANGERS = {
    '.legwork-mine.part': 'kept',
    'a.svg.part': 'kept',
    [`.legwork-${process.ppid}-0123abcd-0.part`]: 'kept',
  };

  test('each file is the old or the new one, whole; the next run removes what is left, and only that', async () => {
    const built = join(folder, 'built');
    await build({
      configFile: false,
      logLevel: 'silent',
      build: {
        ssr: 'src/command/write-files.ts',
        outDir: built,
        rollupOptions: { output: { entryFileNames: 'write.mjs' } },
      },
    });
    const script = `
      import fs from 'node:fs';
      import { writeFiles } from ${JSON.stringify(join(built, 'write.mjs'))};
      let left = Number(process.argv[1]);
      const disk = new Proxy(fs, { get: (all, name) => (...given) => {
        left -= 1;
        if (left === 0) process.kill(process.pid, 'SIGKILL');
        return name === 'fsyncSync' ? undefined : all[name](...given);
      } });
      writeFiles({ folder: ${JSON.stringify(out())}, inputs: [], disk }, [
        { name: 'a.svg', content: 'new a' }, { name: 'b.svg', content: new Uint8Array([1, 2, 3]) }]);`;
    let killed = 0;
    let left = 0;
    for (let n = 1; ; n += 1) {
      rmSync(out(), { recursive: true, force: true });
      for (const name of ['a.svg', 'b.svg']) put(name, `old ${name}`);
      for (const [name, text] of Object.entries(STRANGERS)) put(name, text);
      const { signal, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script, `${n}`], {
        encoding: 'utf8',
      });
      const { 'a.svg': a, 'b.svg': b, ...rest } = folderContent(out());
      expect(['old a.svg', 'new a'], `${n} ${stderr}`).toContain(a);
      expect(['old b.svg', '\x01\x02\x03']).toContain(b);
      expect(rest).toMatchObject(STRANGERS);
      if (signal !== 'SIGKILL') break;
      killed += 1;
      left += Object.keys(rest).length - Object.keys(STRANGERS).length;
      writeFiles({ folder: out(), inputs: [] }, [{ name: 'c.svg', content: 'new c' }]);
      expect(folderContent(out()), `${n}`).toEqual({ 'a.svg': a, 'b.svg': b, 'c.svg': 'new c', ...STRANGERS });
    }
    expect(killed).toBeGreaterThan(15);
    expect(left).toBeGreaterThan(15);
  });
});
