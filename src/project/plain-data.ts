import { type Problem, say } from '../words';
import type { RawProject } from './migrate';

/** Names that mean something to the language itself: as names in a file they could only do harm. */
const NO_NAMES: ReadonlySet<string> = new Set(['__proto__', 'prototype', 'constructor']);

/** A parsed file without what no project may hold, and what that was. */
export interface PlainData {
  readonly raw: RawProject;
  readonly problems: readonly Problem[];
}

/**
 * Takes out of a parsed JSON file what JSON can say and a project can't hold: names of the language's own, which would be lost on
 * the way, and numbers too large to be numbers, which would be written back as nothing.
 *
 * @param raw parsed, no deeper than a file may be
 */
export function plainData(raw: RawProject): PlainData {
  const problems: Problem[] = [];
  const plain = (here: unknown, path: readonly string[]): unknown => {
    if (typeof here !== 'object' || here === null) return here;
    if (Array.isArray(here)) return changedOnly(here, (one, i) => valueAfter(one, [...path, String(i)]));
    const entries = Object.entries(here);
    const kept = entries.flatMap(([key, value]): [string, unknown][] => {
      const own = [...path, key];
      if (NO_NAMES.has(key)) {
        problems.push(problem(own, value, say`is a name that can’t be used in a file.`));
        return [];
      }
      const after = valueAfter(value, own);
      return after === undefined ? [] : [[key, after]];
    });
    const same = kept.length === entries.length && kept.every(([, value], i) => value === entries[i]?.[1]);
    return same ? here : Object.fromEntries(kept);
  };
  const valueAfter = (value: unknown, path: readonly string[]): unknown => {
    if (typeof value === 'number' && !Number.isFinite(value)) {
      problems.push(problem(path, value, say`is too large for a number.`));
      return undefined;
    }
    return plain(value, path);
  };
  return { raw: plain(raw, []) as RawProject, problems };
}

/** The list with its values mapped; itself where none changed. What is taken out of a list leaves its place empty. */
function changedOnly(list: readonly unknown[], map: (one: unknown, i: number) => unknown): readonly unknown[] {
  let changed: unknown[] | undefined;
  for (let i = 0; i < list.length; i += 1) {
    const one = list[i];
    if (typeof one !== 'object' && typeof one !== 'number') continue;
    const after = map(one, i) ?? null;
    if (after === one) continue;
    changed ??= [...list];
    changed[i] = after;
  }
  return changed ?? list;
}

const problem = (path: readonly string[], value: unknown, phrase: Problem['phrase']): Problem => ({
  field: path.join('.'),
  value,
  phrase,
});
