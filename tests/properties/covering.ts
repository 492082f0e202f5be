import { every } from '../outside/every';

/**
 * A few of many that show every company of choices which all of them show: every pair, or every three together. A fault
 * comes of one choice or of a company of two or three, hardly ever of more; `npm run survey` takes all of them.
 *
 * The one that shows most of what is missing is taken next: nearly the fewest that will do.
 *
 * @param all in their order, which is kept
 * @param choicesOf what one of them shows, e.g. `hem=turned`
 * @param together how many choices make a company
 */
export function covering<T>(
  all: readonly T[],
  choicesOf: (one: T) => readonly string[],
  together: 2 | 3,
): readonly T[] {
  if (every) return all;
  const numbers = new Map<string, number>();
  const numberOf = (choice: string) => numbers.get(choice) ?? numbers.set(choice, numbers.size).size - 1;
  const shown = all.map((one) =>
    choicesOf(one)
      .map(numberOf)
      .toSorted((a, b) => a - b),
  );
  const companies = shown.map((choices) => Int32Array.from(companiesOf(choices, together, numbers.size)));
  const missing = new Uint8Array(numbers.size ** together);
  for (const one of companies) for (const company of one) missing[company] = 1;
  const missingIn = (one: Int32Array): number => one.reduce((sum, company) => sum + (missing[company] ?? 0), 0);
  // What one shows that is missing only becomes less: who shows most is counted anew until it stays the first.
  const most = companies.map(({ length }) => length);
  const taken = new Set<number>();
  for (;;) {
    const next = most.indexOf(Math.max(...most));
    const before = most[next];
    if (before === 0) return all.filter((_, i) => taken.has(i));
    const one = companies[next] as Int32Array;
    most[next] = missingIn(one);
    if (most[next] !== before) continue;
    taken.add(next);
    for (const company of one) missing[company] = 0;
  }
}

/** Every two or three of these numbers below `base`, each as one number. */
function companiesOf(choices: readonly number[], together: number, base: number): readonly number[] {
  const found: number[] = [];
  const join = (from: number, joined: number, left: number) => {
    if (left === 0) found.push(joined);
    else for (let i = from; i < choices.length; i += 1) join(i + 1, joined * base + (choices[i] as number), left - 1);
  };
  join(0, 0, together);
  return found;
}

/** Each choice of each of these with each of all others. */
export const combinations = <T extends Readonly<Record<string, readonly unknown[]>>>(
  choices: T,
): readonly { readonly [K in keyof T]: T[K][number] }[] =>
  Object.entries(choices).reduce<readonly Readonly<Record<string, unknown>>[]>(
    (all, [key, values]) => all.flatMap((one) => values.map((value) => ({ ...one, [key]: value }))),
    [{}],
  ) as readonly { readonly [K in keyof T]: T[K][number] }[];
