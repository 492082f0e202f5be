import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { type AddressInfo, connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type PreviewServer, preview } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { insideOnly } from '../../.house/inside-only';

const SECRET = 'nobody else may read this';

let folder: string;
let server: PreviewServer;
let at: AddressInfo;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'legwork-served-'));
  const root = join(folder, 'house');
  mkdirSync(join(root, 'dist'), { recursive: true });
  writeFileSync(join(root, 'dist', 'index.html'), '<title>the page</title>');
  writeFileSync(join(root, 'package.json'), JSON.stringify({ name: SECRET }));
  writeFileSync(join(folder, 'secret.txt'), SECRET);
  symlinkSync(join(folder, 'secret.txt'), join(root, 'dist', 'link.txt'));
  // As `npm start` does, at any free port.
  server = await preview({
    root,
    configFile: false,
    plugins: [insideOnly()],
    logLevel: 'silent',
    preview: { port: 4573 },
  });
  at = server.httpServer.address() as AddressInfo;
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

/** What the server answers to bytes that no browser would send. */
function answerTo(lines: readonly string[]): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(at.port, at.address, () => socket.write(`${lines.join('\r\n')}\r\n\r\n`, 'latin1'));
    let answer = '';
    socket.setEncoding('latin1');
    socket.on('data', (part) => {
      answer += part;
    });
    socket.on('end', () => resolve(answer));
    socket.on('error', reject);
    socket.setTimeout(10_000, () => socket.destroy(new Error('no answer')));
  });
}

const get = (path: string, host = 'localhost', method = 'GET') =>
  answerTo([`${method} ${path} HTTP/1.1`, `Host: ${host}`, 'Connection: close']);

test('it answers at this computer’s own address only', () => {
  expect(['127.0.0.1', '::1']).toContain(at.address);
});

test('it serves the page: the tests below can fail', async () => {
  expect(await get('/')).toContain('the page');
});

test.each([
  '/../secret.txt',
  '/../package.json',
  '/../../secret.txt',
  '/..%2f..%2fsecret.txt',
  '/%2e%2e/%2e%2e/secret.txt',
  '/%2e%2e%2f%2e%2e%2fsecret.txt',
  '/%252e%252e/%252e%252e/secret.txt',
  '/..\\..\\secret.txt',
  '/..%5c..%5csecret.txt',
  '/assets/../../../secret.txt',
  '//../../secret.txt',
  '/./.././../secret.txt',
  '/%c0%ae%c0%ae/%c0%ae%c0%ae/secret.txt',
  '/secret.txt%00.html',
  '/..%00/..%00/secret.txt',
  '/%',
  'http://localhost/../../secret.txt',
  'file:///etc/passwd',
  '/@fs/etc/passwd',
  '/package.json',
])('nothing outside of its folder is served for %s', async (path) => {
  const answer = await get(path);
  expect(answer).not.toContain(SECRET);
  expect(answer).not.toContain('root:');
});

test.each(['evil.example', 'evil.example:4573', 'localhost.evil.example'])(
  'a page of another name that leads here, %s, is refused',
  async (host) => {
    const answer = await get('/', host);
    expect(answer).toMatch(/^HTTP\/1\.1 403 /);
    expect(answer).not.toContain('the page');
  },
);

test.each(['PUT', 'POST', 'DELETE', 'PATCH'])('nothing is written by %s', async (method) => {
  await get('/index.html', 'localhost', method);
  expect(await get('/')).toContain('<title>the page</title>');
});

test('it goes on after a request that is none', async () => {
  await answerTo(['\u0000\u0001 nonsense']);
  expect(await get('/')).toContain('the page');
});

test('a link within its folder that leads out of it is not followed', async () => {
  expect(await get('/link.txt')).not.toContain(SECRET);
});
