import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../.house/paths.mjs';

/** What opens a connection, in Node or in a browser. */
const ASKS =
  /from '(?:node:)?(?:http|https|http2|net|tls|dgram|dns|undici)'|\bfetch\(|\b(?:WebSocket|EventSource|XMLHttpRequest|sendBeacon)\b/;

/** The page asks for its own print font, and for itself, where a part of it did not come. */
const MAY_ASK = ['src/workbench/faults/newer.ts', 'src/workbench/take/take.ts'];

test('nothing opens a connection but the page for its own files; the command line never does', () => {
  const files = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\.tsx?$/.test(name),
  );
  const asking = files
    .map((name) => `src/${name.replaceAll('\\', '/')}`)
    .filter((name) => ASKS.test(readFileSync(join(root, name), 'utf8')));
  expect(asking.sort()).toEqual(MAY_ASK);
});
