import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { rooms } from '../rooms.cjs';
import { openedBy } from './harness.mjs';

/** Where the tests stand that concern the rooms whose mutants are tried. */
const TESTS = ['plane', 'edges', 'project', 'leg', 'check', 'properties'];
/** It reads the open surveys beside the checkout, which the copy that is run doesn't have beside it. */
const LEFT_OUT = 'tests/properties/every-body.test.ts';
/** What these do at all is done in a test, or in a browser. */
const NOT_LOADED = ['files', 'workbench', 'command'];

/** The test files to run. */
export const testFiles = () =>
  TESTS.flatMap((room) =>
    readdirSync(join('tests', room))
      .filter((name) => name.endsWith('.test.ts'))
      .map((name) => `tests/${room}/${name}`),
  ).filter((file) => file !== LEFT_OUT);

/** Loads the rooms themselves, before any test does. */
export async function loadRooms() {
  for (const room of rooms.filter((one) => !NOT_LOADED.includes(one))) await import(here(`src/${room}/index.ts`));
}

/**
 * What a test file holds, its own preparations made.
 *
 * @param {string} file
 * @param {number} nth another number opens the file and its helpers anew
 */
export async function openTests(file, nth) {
  const { tests, before } = await openedBy(() => import(`${here(file)}?opened=${nth}`));
  for (const prepare of before) await prepare();
  return tests;
}

/** @param {string} file */
const here = (file) => pathToFileURL(join(process.cwd(), file)).href;
