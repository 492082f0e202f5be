import type { RawDraw } from './projects';

/** A field of a draw and what stands in it. */
type Entry = readonly [path: string, value: unknown];

/**
 * What each of these draws chose, field by field, for {@link covering}: a word as it is, a number as none, low or high
 * among the others, a text or a list as one. What was left out is no choice: it is as it always is.
 */
export function choicesOf(draws: readonly RawDraw[]): (draw: RawDraw) => readonly string[] {
  const all = draws.flatMap((draw) => entries(draw));
  const paths = [...new Set(all.map(([path]) => path))];
  const middles = new Map(paths.map((path) => [path, middle(all.filter((entry) => entry[0] === path).map(numberIn))]));
  const said = ([path, value]: Entry): string => {
    if (typeof value === 'number') return value === 0 ? '0' : value < (middles.get(path) ?? 0) ? 'low' : 'high';
    return typeof value === 'string' && value.length > LONGEST_WORD ? 'a text' : String(value);
  };
  return (draw) => entries(draw).map((entry) => `${entry[0]}=${said(entry)}`);
}

const LONGEST_WORD = 20;

const numberIn = ([, value]: Entry): number => (typeof value === 'number' ? value : 0);

function middle(numbers: readonly number[]): number {
  const others = numbers.filter((number) => number !== 0).toSorted((a, b) => a - b);
  return others[others.length >> 1] ?? 0;
}

/** The lines or numbers of a block that was brought along are one choice, however many they are. */
const BROUGHT = /^block\.(front|back)$/;

const entries = (value: unknown, path = ''): readonly Entry[] =>
  BROUGHT.test(path)
    ? [[path, 'a block']]
    : typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.entries(value).flatMap(([key, inner]) => entries(inner, path === '' ? key : `${path}.${key}`))
      : [[path, Array.isArray(value) ? 'a list' : value]];
