import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { FILE_KINDS, SINGLE_FILES } from '../../../src/files';

const readme = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8');

test('the README tells every kind of file that can be asked for, in order, and how its name ends', () => {
  expect(/--files ([\w,-]+)/.exec(readme)?.[1]?.split(',')).toEqual(FILE_KINDS);
  const endings = [...readme.matchAll(/`NAME(\.[\w.-]+)`/g)].map(([, ending]) => ending);
  expect(endings.filter((ending) => SINGLE_FILES.some((file) => file.ending === ending))).toEqual(
    SINGLE_FILES.map(({ ending }) => ending),
  );
});
