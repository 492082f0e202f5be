// Computes the starting bodies from the open surveys.
import type { StartingRow } from '../src/body/starting-rows';
import { ADULTS, CHILDREN, type Column, CROTCH_ABOVE_FURROW, column, less, type Person, people } from './surveys';

const HIPS = Array.from({ length: 17 }, (_, i) => 850 + 25 * i);
const AGES = Array.from({ length: 16 }, (_, i) => 2 + i);
/** People whose hip lies within this of the row's stand behind it, millimetres. */
const BAND = 25;
/** A median of fewer people says little about anybody. */
const FEWEST = 10;
const over =
  (part: Column, whole: Column): Column =>
  (person) => {
    const [a, b] = [part(person), whole(person)];
    return a === undefined || b === undefined ? undefined : a / b;
  };

const stature = column('stature');
const waist = column('waist_girth');
const hip = column('hip_girth');
const waistHeight = column('waist_height');
const hipHeight = column('hip_height');
const crotchHeight = column('crotch_height');

/** The rows of both tables, as they stand in `src/body/starting-rows.ts`; the surveys must be here. */
export function startingRows(): Readonly<Record<'women' | 'men' | 'children', readonly StartingRow[]>> {
  const adults = people(ADULTS);
  return {
    women: adultRows(adults.filter((person) => person.sex === 'f')),
    men: adultRows(adults.filter((person) => person.sex === 'm')),
    children: childRows(people(CHILDREN)),
  };
}

function adultRows(all: readonly Person[]): readonly StartingRow[] {
  return HIPS.flatMap((wanted) => {
    const near = all.filter((person) => Math.abs((hip(person) ?? 0) - wanted) <= BAND);
    if (near.length < FEWEST) return [];
    const of = (what: Column) => Math.round(median(near, what));
    const [rise, depth] = [of(less(waistHeight, crotchHeight)), of(less(waistHeight, hipHeight))];
    return [[wanted, near.length, of(waist), wanted, rise, depth, of(crotchHeight), of(stature)]];
  });
}

/** Every figure is a median share of the stature, for not every child had every measurement taken. */
function childRows(all: readonly Person[]): readonly StartingRow[] {
  return AGES.map((age) => {
    const same = all.filter((person) => Math.floor(Number(person.age_years || -1)) === age);
    const tall = median(same, stature);
    const share = (what: Column) => median(same, over(what, stature));
    const crotch = share(column('gluteal_furrow_height')) + CROTCH_ABOVE_FURROW;
    const mm = (of: number) => Math.round(of * tall);
    const [top, seat] = [share(waistHeight), share(hipHeight)];
    const girths = [mm(share(waist)), mm(share(hip))] as const;
    return [age, same.length, ...girths, mm(top - crotch), mm(top - seat), mm(crotch), Math.round(tall)];
  });
}

function median(persons: readonly Person[], what: Column): number {
  const values = persons.flatMap((person) => what(person) ?? []).sort((a, b) => a - b);
  const [low, high] = [values[Math.ceil(values.length / 2) - 1], values[Math.floor(values.length / 2)]];
  if (low === undefined || high === undefined) throw new Error('nobody to take a median of');
  return (low + high) / 2;
}
