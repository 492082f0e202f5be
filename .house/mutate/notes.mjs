import { appendFileSync } from 'node:fs';
import { relative, sep } from 'node:path';
import { tokens } from '@stryker-mutator/api/plugin';
import { root } from '../paths.mjs';
import { notesFile, placeOf, readDrawn } from './draw.mjs';

/** Writes down how each drawn mutant fared as soon as it is known, so that a run that is cut short was not for nothing. */
export class Notes {
  static inject = tokens();
  drawn = new Map(readDrawn().map((mutant) => [mutant.place, mutant]));

  /** @param {import('@stryker-mutator/api/core').MutantResult} result */
  onMutantTested({ fileName, location, replacement, status, killedBy }) {
    const { start, end } = location;
    const file = relative(root, fileName).split(sep).join('/');
    // Results count lines and columns from 1.
    const fromZero = (/** @type {{ line: number, column: number }} */ { line, column }) => ({
      line: line - 1,
      column: column - 1,
    });
    const mutant = this.drawn.get(placeOf(file, { start: fromZero(start), end: fromZero(end) }, replacement ?? ''));
    if (mutant) appendFileSync(notesFile, `${JSON.stringify({ ...mutant, status, killedBy: killedBy?.[0] })}\n`);
  }
}
