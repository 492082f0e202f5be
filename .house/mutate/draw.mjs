import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { root } from '../paths.mjs';

/**
 * One small change to one expression of the source.
 *
 * @typedef {object} Drawn
 * @property {string} key the same wherever the expression stands in its file
 * @property {string} place what the tool calls it by: file, line, columns and replacement
 * @property {string} file
 * @property {number} line
 * @property {string} range as the tool takes it
 * @property {string} mutator
 * @property {string} original
 * @property {string} replacement
 */

const quiet = () => {};
const logger = /** @type {any} */ ({
  isDebugEnabled: () => false,
  debug: quiet,
  info: quiet,
  warn: console.warn,
  error: console.error,
});

/**
 * How the tool names a mutant, in the runs of a test and in its results: lines and columns from 0.
 *
 * @param {string} file
 * @param {{ start: { line: number, column: number }, end: { line: number, column: number } }} location
 * @param {string} replacement
 */
export const placeOf = (file, { start, end }, replacement) =>
  [file, start.line, start.column, end.line, end.column, replacement].join('|');

/**
 * Every mutant of some rooms.
 *
 * @param {readonly string[]} rooms
 * @returns {Promise<Drawn[]>}
 */
export async function allMutants(rooms) {
  const files = rooms.flatMap((room) =>
    readdirSync(join(root, 'src', room))
      .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
      .map((name) => `src/${room}/${name}`)
      .map((name) => ({ name, mutate: true, content: readFileSync(join(root, name), 'utf8') })),
  );
  const { mutants } = await new Instrumenter(logger).instrument(files, {
    ignorers: [],
    excludedMutations: [],
    plugins: null,
  });
  const texts = new Map(files.map(({ name, content }) => [name, content.split('\n')]));
  /** @type {Map<string, number>} */
  const seen = new Map();
  return mutants.map(({ fileName, location, mutatorName, replacement }) => {
    const { start, end } = location;
    const original = textBetween(texts.get(fileName) ?? [], start, end);
    const same = [fileName, mutatorName, original, replacement].join('|');
    const nth = (seen.get(same) ?? 0) + 1;
    seen.set(same, nth);
    return {
      key: `${same}|${nth}`,
      place: placeOf(fileName, location, replacement),
      file: fileName,
      line: start.line + 1,
      range: `${fileName}:${start.line + 1}:${start.column}-${end.line + 1}:${end.column}`,
      mutator: mutatorName,
      original,
      replacement,
    };
  });
}

/**
 * So many of them by chance: the same seed draws the same ones, and a mutant stays drawn when others come or go.
 *
 * @param {readonly Drawn[]} mutants
 * @param {number} count
 * @param {string} seed
 */
export function drawn(mutants, count, seed) {
  const lot = (/** @type {Drawn} */ { key }) => createHash('sha1').update(`${seed}|${key}`).digest('hex');
  return mutants
    .map((mutant) => ({ mutant, lot: lot(mutant) }))
    .sort((a, b) => (a.lot < b.lot ? -1 : 1))
    .slice(0, count)
    .map(({ mutant }) => mutant);
}

/**
 * @param {readonly string[]} lines
 * @param {{ line: number, column: number }} start
 * @param {{ line: number, column: number }} end
 */
function textBetween(lines, start, end) {
  const of = lines.slice(start.line, end.line + 1);
  if (of.length === 1) return of[0]?.slice(start.column, end.column) ?? '';
  return [of[0]?.slice(start.column), ...of.slice(1, -1), of.at(-1)?.slice(0, end.column)].join('\n');
}

/** Where a run writes what it drew, and how each mutant fared. */
export const drawnFile = join(root, 'out', 'mutate', 'drawn.json');
export const notesFile = join(root, 'out', 'mutate', 'notes.jsonl');

/** @returns {Drawn[]} what this run drew */
export const readDrawn = () => JSON.parse(readFileSync(drawnFile, 'utf8'));
