import { number, words } from '../../words';

/** The good checks in a line, beside what wants a look. */
export function goodChecks(good: number, all: number): string {
  if (good === all) return words`All ${number(all, 0)} checks are good`;
  return good === 1 ? words`1 check is good` : words`${number(good, 0)} checks are good`;
}
