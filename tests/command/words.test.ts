import { EventEmitter } from 'node:events';
import { describe, expect, test } from 'vitest';
import { baseName, sameName } from '../../src/command/names';
import { faultSentence } from '../../src/command/outcome';
import { progressLine } from '../../src/command/progress-line';
import { systemReason } from '../../src/command/reasons';
import { stopOnSignals } from '../../src/command/stop';
import { spelledOut } from '../../src/length';
import { said, UNSAID } from '../../src/words';

describe('the name of a project file', () => {
  test.each([
    ['/x/First pair.legwork.json', 'First pair'],
    ['a.JSON', 'a'],
    ['größe (2).legwork.json', 'größe (2)'],
    ['.legwork.json', 'pattern'],
    ['...legwork.json', 'pattern'],
    ['..\\..\\b.legwork.json', '-..-b'],
    ['a:b|c?.json', 'a-b-c-'],
    ['con.legwork.json', 'pattern-con'],
    ['LPT1.old.json', 'pattern-LPT1.old'],
    ['console.json', 'console'],
    ['a\u001b[2J\u202eb. .json', 'a-[2J-b'],
    [`${'裤'.repeat(80)}.legwork.json`, '裤'.repeat(66)],
  ])('%j is safe on every system: %j', (path, name) => {
    expect(baseName(path)).toBe(name);
  });

  test('is compared as the least careful system does', () => {
    expect(sameName('A', 'a') && sameName('\u00e9', 'e\u0301')).toBe(true);
    expect(sameName('a', 'b')).toBe(false);
  });
});

test('what is printed can’t steer a terminal', () => {
  expect(spelledOut('a\u001b]0;x\u0007\u009b2J\r\nb\u202e — ß 裤')).toBe(
    'a\\u001b]0;x\\u0007\\u009b2J\\u000d\\u000ab\\u202e — ß 裤',
  );
  const shown: string[] = [];
  let now = 0;
  const line = progressLine({ isTTY: true, write: (text) => shown.push(text) }, () => now);
  now = 1000;
  line.show({ share: 0, doing: 'Ada\u001b[2J' });
  expect(shown[0]).toContain('Ada\\u001b[2J');
});

describe('a fault of the program', () => {
  test('is one sentence that says what to do, with its places in our own files and no other', () => {
    const error = new TypeError('x is not\n a function');
    error.stack = 'TypeError: x\n    at f (file:///home/me/legwork/src/plane/area.ts:12:3)\n    at node:internal/x:1:2';
    expect(faultSentence(error)).toBe(
      'program: an error in Legwork, not in your files; nothing was written. Please report it with the project file: ' +
        'x is not a function (src/plane/area.ts:12)',
    );
    expect(faultSentence('odd')).toMatch(/^program: .*: odd/);
  });

  test('is no answer of the system', () => {
    expect(systemReason(Object.assign(new Error(), { code: 'ERR_INVALID_ARG_TYPE' }))).toBeUndefined();
    const toldOf = (code: string) => said(systemReason(Object.assign(new Error(), { code, syscall: 'x' })) ?? UNSAID);
    expect(toldOf('EIO')).toBe('the disk failed (EIO)');
    expect(toldOf('EODD')).toBe('the system says EODD');
  });
});

test('each signal says farewell first, then ends with 128 and its number', () => {
  const done: (string | number)[] = [];
  const program = new EventEmitter();
  stopOnSignals(Object.assign(program, { exit: (code: number) => done.push(code) }), () => done.push('farewell'));
  for (const signal of ['SIGHUP', 'SIGINT', 'SIGTERM']) program.emit(signal);
  expect(done).toEqual(['farewell', 129, 'farewell', 130, 'farewell', 143]);
});
