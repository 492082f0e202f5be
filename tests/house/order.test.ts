import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../.house/paths.mjs';

const TOP = [
  'DEVELOPERS.md',
  'README.md',
  'docs',
  'index.html',
  'package-lock.json',
  'package.json',
  'public',
  'src',
  'tests',
  'tsconfig.json',
  'vite.config.ts',
];

/** What the tools make, and .gitignore keeps out. */
const MADE = readFileSync(join(root, '.gitignore'), 'utf8')
  .split('\n')
  .map((line) => line.replace('/', ''));

const MOST_LINES = 400;

test('the top level holds only what belongs there', () => {
  const strange = readdirSync(root).filter(
    (name) => !name.startsWith('.') && !TOP.includes(name) && !MADE.includes(name),
  );
  expect(strange).toEqual([]);
});

test(`no source file has more than ${MOST_LINES} lines`, () => {
  const long = filesIn('src').filter((name) => read(name).split('\n').length - 1 > MOST_LINES);
  expect(long).toEqual([]);
});

test('no room claims that a value is what the compiler knows it is not', () => {
  const rooms = filesIn('src');
  expect(rooms.length).toBeGreaterThan(300);
  expect(rooms.filter((name) => read(name).includes('as unknown as'))).toEqual([]);
});

test('no file names a folder of one particular machine, or the address of a package registry', () => {
  const told = [...filesIn('.'), 'package.json']
    .filter((name) => /\.(tsx?|[mc]?js|json|md|css|html|svg|txt)$|\/run$/.test(name))
    .filter((name) => namesAPlace(read(name)));
  expect(told).toEqual([]);
});

test('a machine path and a registry address are recognised', () => {
  for (const folder of ['work', 'root', 'tmp', 'home', 'Users']) {
    expect(namesAPlace(`see /${folder}/somebody/x.ts`), folder).toBe(true);
  }
  expect(namesAPlace(['C:', 'Users', 'somebody'].join('\\'))).toBe(true);
  expect(namesAPlace(`https://registry.${'npmjs'}.org/x`)).toBe(true);
  expect(namesAPlace('src/home/page.ts and a/b, ../tmp, 1/root')).toBe(false);
});

test('the changelog has an entry for the version of package.json', () => {
  const { version } = JSON.parse(read('package.json')) as { version: string };
  expect(read('docs/CHANGELOG.md')).toContain(`\n## ${version} `);
});

test('every command that the guides name is there', () => {
  const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
  const guides = read('README.md') + read('DEVELOPERS.md');
  const named = [...guides.matchAll(/npm (?:run )?(?:--silent )?([a-z-]+)/g)].map((match) => match[1] ?? '');
  expect(named).toContain('draft');
  expect(named.filter((name) => name !== 'ci' && !(name in scripts))).toEqual([]);
});

function namesAPlace(text: string): boolean {
  return (
    /(?<![\w.\-/])\/(?:work|root|tmp|home|Users)\//.test(text) ||
    /\b[A-Z]:[\\]+Users\b/.test(text) ||
    /registry\.[a-z]+\.(?:org|com)/.test(text)
  );
}

function read(name: string): string {
  return readFileSync(join(root, name), 'utf8');
}

/** Every file in a folder of the repository that is neither made by a tool nor git's own. */
function filesIn(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    if (MADE.includes(entry.name) || entry.name === '.git') return [];
    const name = folder === '.' ? entry.name : `${folder}/${entry.name}`;
    return entry.isDirectory() ? filesIn(name) : [name];
  });
}
