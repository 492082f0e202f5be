import type { Units } from '../length';
import { own, printPhrase, say } from './phrase';
import type { Phrase } from './types';

/** What is wrong with one value that came in: data, made a sentence only at the edge. */
export interface Problem {
  /** Where: the path in the project file, e.g. `body.hipGirth`, or the head of a column. */
  readonly field: string;
  /** How people call that where it is no path: a row or a column of a table. */
  readonly place?: Phrase;
  /** What stood there. */
  readonly value: unknown;
  /** What is wrong and what would be right. */
  readonly phrase: Phrase;
}

/** A finished value, or why there is none. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Thrown inside the drafting rooms where a body or a choice can't be drafted; `draft` turns it into a result. */
export class Refusal extends Error {
  constructor(readonly problems: readonly Problem[]) {
    super(problems.map((p) => printProblem(p, 'cm')).join('\n'));
  }
}

/** Values, and the names in a field's path, are what somebody else wrote: no more of them is shown. */
const LONGEST_SHOWN = 60;

/**
 * One line for one problem: field, value, and what would be right.
 *
 * @param problem what is wrong
 * @param units the display units
 */
export function printProblem(problem: Problem, units: Units): string {
  const { field, value, phrase } = problem;
  const whole = WHOLES.get(field);
  const place = own(cut(printPhrase(problem.place ?? whole ?? say`${own(field)}`, units)));
  if (value !== undefined) return printPhrase(say`${place}: ${own(shortened(value))}: ${phrase}`, units);
  // What is said of a whole file or table needs no value; a field without one is missing.
  return printPhrase(whole ? say`${place}: ${phrase}` : say`${place}: missing: ${phrase}`, units);
}

/** What comes in as a whole. */
const WHOLES: ReadonlyMap<string, Phrase> = new Map([
  ['file', say`file`],
  ['table', say`table`],
]);

function shortened(value: unknown): string {
  // JSON has no word for a number that is none.
  const text = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? String(value));
  return cut(text);
}

const cut = (text: string): string => (text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN - 3)}…` : text);
