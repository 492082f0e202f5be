import type { Check } from '../../src/check';
import { checksOf, type Draft } from '../../src/project';

/** Something that must not be: what kind, and what was seen. */
export interface Find {
  /** Stable, for counting; e.g. `inseams apart`. */
  readonly kind: string;
  readonly seen: string;
}

export const find = (kind: string, seen: string): Find => ({ kind, seen });

/** Lengths in what is told of a find: enough figures to see how bad it is. */
export const told = (value: number): string =>
  Number.isFinite(value) ? String(Number(value.toPrecision(5))) : String(value);

/** Whether one of these checks says that something isn't as it should be. */
export const warned = (draft: Draft, ids: readonly string[], verdicts: readonly Check['verdict'][]): boolean =>
  checksOf(draft).some((check) => ids.includes(check.id) && verdicts.includes(check.verdict));

/** Paths of all numbers in plain data that aren't finite. */
export function notFinite(value: unknown, path: string, deep = 0): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} = ${value}`];
  if (typeof value !== 'object' || value === null || deep > 12) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`, deep + 1));
}

/**
 * Finds that `npm run draws` tells and the test leaves alone: how long a draft takes depends on the machine, and a limit that
 * is told may still move with what else was chosen.
 */
export const onDemand = ({ kind }: Find): boolean => kind === 'slow' || kind.startsWith(USELESS);

/** How the kind of a find begins where a refusal says what would do, and it doesn't. */
export const USELESS = "what is told doesn't do";
