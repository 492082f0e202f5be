import { draft, type Project, valueAt, withValue } from '../../src/project';
import type { Phrase, Problem } from '../../src/words';
import { type Find, find, USELESS } from './find';

/** What came of doing as a refusal says: drafted, refused again for something else, or it says no value that would do. */
export type Followed = 'drafted' | 'refused again' | 'no value told';

/** What a refusal is worth. */
export interface Advice {
  readonly finds: readonly Find[];
  readonly followed: Followed;
}

/** A limit is tried this far within: it is printed to half a millimetre, and nobody goes to the very end. */
const WITHIN = 1;
/** … but never farther than this share of the range. */
const MOST_WITHIN = 0.02;

/**
 * Does as the refusal of a project says, all at once: whatever value it tells must do for its field.
 *
 * @param project that was refused
 * @param problems why
 */
export function adviceOf(project: Project, problems: readonly Problem[]): Advice {
  const told = problems.map((problem) => ({ problem, value: advised(problem, valueAt(project, problem.field)) }));
  const known = told.filter(({ value }) => value !== undefined);
  if (known.length === 0) return { finds: [], followed: 'no value told' };
  const changed = known.reduce((kept, { problem, value }) => withValue(kept, problem.field, value?.is), project);
  const result = draft(changed);
  if (result.ok) return { finds: [], followed: 'drafted' };
  const still = result.problems.filter(({ field }) => known.some(({ problem }) => problem.field === field));
  return {
    finds: still.map(({ field }) =>
      find(`${USELESS}: ${field}`, `${JSON.stringify(valueAt(changed, field))} is refused as well`),
    ),
    followed: known.length < told.length ? 'no value told' : 'refused again',
  };
}

/** What a sentence says to put in the place of a value; undefined where it tells none. */
function advised({ phrase }: Problem, held: unknown): { readonly is: unknown } | undefined {
  const { words, numbers } = withoutNumbers(phrase);
  const first = (pattern: RegExp): number | undefined => {
    const before = words.slice(0, words.search(pattern));
    return numbers[[...before].filter((sign) => sign === '#').length];
  };
  if (/# would do\.$/.test(words)) return { is: numbers.at(-1) };
  const word = /“([^”]+)” would do/.exec(words)?.[1];
  if (word !== undefined) return { is: word };
  if (/leave it (out|empty)/.test(words)) return { is: undefined };
  if (/lowered by # at most/.test(words)) return { is: Math.min(0, WITHIN - (numbers.at(-1) ?? 0)) };
  if (/can’t be lowered/.test(words)) return { is: 0 };
  const range = /(between|can be|lies between) # (and|to) #/;
  if (range.test(words) && typeof held === 'number') {
    const at = first(range) ?? Number.NaN;
    const low = numbers.indexOf(at);
    const [least, most] = [at, numbers[low + 1] ?? Number.NaN];
    const within = Math.min(WITHIN, MOST_WITHIN * (most - least));
    return { is: Math.min(most - within, Math.max(least + within, held)) };
  }
  return undefined;
}

/** The words of a phrase with `#` for every figure in it, and the figures. */
function withoutNumbers({ template, values }: Phrase): { readonly words: string; readonly numbers: readonly number[] } {
  const numbers: number[] = [];
  const words = template.replace(/\{(\d+)\}/g, (_, index) => {
    const value = values[Number(index)] ?? '';
    if (typeof value === 'string') return value;
    const inner = 'template' in value ? [value] : 'list' in value ? value.list : undefined;
    if (!inner) {
      numbers.push(Object.values(value)[0] as number);
      return '#';
    }
    return inner
      .map((one) => {
        const found = withoutNumbers(one);
        numbers.push(...found.numbers);
        return found.words;
      })
      .join(', ');
  });
  return { words, numbers };
}
