import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { rooms } from '../rooms.cjs';
import { openedBy } from './harness.mjs';

/** Where the tests stand that concern the rooms whose mutants are tried. */
const TESTS = ['plane', 'edges', 'project', 'block', 'leg', 'check', 'properties'];
/** And those against other libraries and published figures that are quick. */
const OUTSIDE = [
  'allowances-hollows',
  'drafting-figures',
  'drafting-reference-geometry',
  'printed-beside',
  'printed-drafts',
].map((name) => `tests/outside/${name}.test.ts`);
/**
 * One reads the open surveys beside the checkout, which the copy that is run doesn't have beside it; the other goes through
 * texts of millions of signs, which takes minutes where each step of it is counted.
 */
const LEFT_OUT = ['tests/properties/every-body.test.ts', 'tests/project/slow-texts.test.ts'];
/** What these do at all is done in a test, or in a browser. */
const NOT_LOADED = ['files', 'workbench', 'command'];

/** The test files to run. */
export const testFiles = () =>
  [
    ...TESTS.flatMap((room) =>
      readdirSync(join('tests', room))
        .filter((name) => name.endsWith('.test.ts'))
        .map((name) => `tests/${room}/${name}`),
    ),
    ...OUTSIDE,
  ].filter((file) => !LEFT_OUT.includes(file));

/**
 * Loads the rooms themselves, before any test does.
 *
 * @param {number} world another number loads them anew
 */
export async function loadRooms(world) {
  const wanted = rooms.filter((one) => !NOT_LOADED.includes(one));
  for (const room of wanted) await import(`${here(`src/${room}/index.ts`)}?world=${world}`);
}

/**
 * What a test file holds, its own preparations made.
 *
 * @param {string} file
 * @param {number} world whose rooms it gets
 * @param {number} nth another number opens the file and its helpers anew
 */
export async function openTests(file, world, nth) {
  const { tests, before } = await openedBy(() => import(`${here(file)}?world=${world}&opened=${nth}`));
  for (const prepare of before) await prepare();
  return tests;
}

/** @param {string} file */
const here = (file) => pathToFileURL(join(process.cwd(), file)).href;
