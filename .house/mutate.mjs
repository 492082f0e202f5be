// Changes one expression of the drafting at a time, and sees whether a test tells: `npm run mutate -- plane edges`.
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { parseArgs } from 'node:util';
import { Stryker } from '@stryker-mutator/core';
import { allMutants, drawn, drawnFile, notesFile } from './mutate/draw.mjs';
import { root } from './paths.mjs';

/** Chance draws so many from each group of three rooms, so that one room alone is a part of the same sample. */
const GROUPS = [
  ['plane', 'edges', 'project'],
  ['block', 'leg', 'check'],
];
/** A mutant that a test tells of, or that never ends. */
const CAUGHT = ['Killed', 'Timeout'];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    count: { type: 'string', default: '1500' },
    seed: { type: 'string', default: '20261129' },
    // Those of the sample alone that lived before, or were not reached.
    again: { type: 'boolean', default: false },
  },
});
const rooms = positionals.length > 0 ? positionals : GROUPS.flat();
/** @type {import('./mutate/draw.mjs').Drawn[]} */
const sample = [];
for (const group of GROUPS.filter((group) => group.some((room) => rooms.includes(room)))) {
  const some = drawn(await allMutants(group), Number(values.count), values.seed);
  sample.push(...some.filter(({ file }) => rooms.some((room) => file.startsWith(`src/${room}/`))));
}

process.chdir(root);
mkdirSync(dirname(notesFile), { recursive: true });
if (!values.again) rmSync(notesFile, { force: true });
const known = notes();
const wanted = sample.filter(({ key }) => !CAUGHT.includes(known.get(key)?.status ?? ''));
writeFileSync(drawnFile, JSON.stringify(wanted));
console.log(`Seed ${values.seed}: ${sample.length} mutants, ${wanted.length} to try.`);
if (wanted.length > 0) {
  await new Stryker({
    mutate: wanted.map(({ range }) => range),
    plugins: ['./.house/mutate/plugin.mjs'],
    testRunner: 'rooms',
    coverageAnalysis: 'perTest',
    concurrency: 1,
    reporters: ['notes'],
    tempDirName: '.cache/mutate',
    ignorePatterns: ['/public', '/dist', '/out', '/docs/plates', '/tests/browser'],
    timeoutMS: 20_000,
    dryRunTimeoutMinutes: 60,
    allowConsoleColors: false,
  }).runMutationTest();
}
tell(notes());

/** @returns {Map<string, import('./mutate/draw.mjs').Drawn & { status: string }>} the last word on each mutant */
function notes() {
  const lines = existsSync(notesFile) ? readFileSync(notesFile, 'utf8').split('\n').filter(Boolean) : [];
  return new Map(lines.map((line) => JSON.parse(line)).map((note) => [note.key, note]));
}

/** @param {ReturnType<typeof notes>} noted */
function tell(noted) {
  for (const { file, line, mutator, original, replacement, status } of [...noted.values()].filter(
    ({ status }) => !CAUGHT.includes(status),
  )) {
    console.log(`${status} ${file}:${line} ${mutator}\n  - ${original}\n  + ${replacement}`);
  }
  for (const room of rooms) {
    const here = sample.filter(({ file }) => file.startsWith(`src/${room}/`)).map(({ key }) => noted.get(key)?.status);
    const caught = here.filter((status) => CAUGHT.includes(status ?? '')).length;
    const tried = here.filter((status) => status !== undefined).length;
    console.log(`${room}: ${caught} of ${tried} caught, ${((100 * caught) / tried).toFixed(1)} %`);
  }
}
