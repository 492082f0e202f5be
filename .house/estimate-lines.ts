// Computes the lines by which heights are estimated alone, from the open surveys.
import type { SurveyLine, SurveyLines } from '../src/body/survey-line';
import type { MeasurementKey } from '../src/body/types';
import { ADULTS, CHILDREN, type Column, CROTCH_ABOVE_FURROW, column, less, type Person, people } from './surveys';

/** A survey's columns by the measurements that they are. */
type Columns = Partial<Readonly<Record<MeasurementKey | 'waistHeight', Column>>>;

const OF_ADULTS: Columns = {
  waistGirth: column('waist_girth'),
  hipGirth: column('hip_girth'),
  height: column('stature'),
  insideLeg: column('crotch_height'),
  bodyRise: less(column('waist_height'), column('crotch_height')),
  hipDepth: less(column('waist_height'), column('hip_height')),
  crotchLength: column('crotch_length_total'),
};

const OF_CHILDREN: Columns = {
  waistGirth: column('waist_girth'),
  hipGirth: column('hip_girth'),
  height: column('stature'),
  ageYears: column('age_years'),
  waistHeight: column('waist_height'),
  insideLeg: (person) => {
    const [furrow, stature] = [column('gluteal_furrow_height')(person), column('stature')(person)];
    return furrow === undefined || stature === undefined ? undefined : furrow + CROTCH_ABOVE_FURROW * stature;
  },
};

/** What every estimate leans on, and what else it may. */
const ALWAYS = ['waistGirth', 'hipGirth'] as const;
const GROWN_UP = 18;

/** All lines as they stand in `src/body/estimate-lines.ts`; the surveys must be here. */
export function estimateLines(): SurveyLines {
  const adults = people(ADULTS);
  const women = adults.filter(({ sex }) => sex === 'f').length;
  // Two of three soldiers are men: women and men count alike.
  const weight = ({ sex }: Person) => adults.length / 2 / (sex === 'f' ? women : adults.length - women);
  const young = people(CHILDREN).filter(({ age_years }) => Number(age_years || GROWN_UP) < GROWN_UP);
  const adult = (of: MeasurementKey, more: readonly MeasurementKey[]) =>
    subsets(more).map((keys) => line(adults, OF_ADULTS, of, [...ALWAYS, ...keys], weight));
  const child = (of: keyof Columns, more: readonly MeasurementKey[]) =>
    line(young, OF_CHILDREN, of, [...ALWAYS, ...more], () => 1);
  return {
    adults: {
      bodyRise: surest(adult('bodyRise', ['height', 'insideLeg', 'crotchLength'])),
      insideLeg: surest(adult('insideLeg', ['height', 'bodyRise'])),
      hipDepth: surest(adult('hipDepth', ['height', 'insideLeg', 'crotchLength'])),
      crotchLength: surest(adult('crotchLength', ['height', 'insideLeg'])),
    },
    children: {
      height: surest([child('height', ['insideLeg']), child('height', ['ageYears']), child('height', [])]),
      waistHeight: [child('waistHeight', ['height'])],
      insideLeg: [child('insideLeg', ['height'])],
    },
  };
}

/** Every choice among some items, none of them too. */
const subsets = <Item>(items: readonly Item[]): readonly (readonly Item[])[] =>
  Array.from({ length: 2 ** items.length }, (_, bits) => items.filter((_item, i) => (bits >> i) % 2 === 1));

const surest = (lines: readonly SurveyLine[]): readonly SurveyLine[] => lines.toSorted((a, b) => a.spread - b.spread);

/** Least squares over everybody of whom all was measured. */
function line(
  all: readonly Person[],
  columns: Columns,
  of: keyof Columns,
  keys: readonly MeasurementKey[],
  weight: (person: Person) => number,
): SurveyLine {
  const rows = all.flatMap((person) => {
    const y = columns[of]?.(person);
    const x = keys.map((key) => columns[key]?.(person));
    return y === undefined || x.includes(undefined) ? [] : [{ y, x: [1, ...(x as number[])], w: weight(person) }];
  });
  const size = keys.length + 1;
  const sums = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size + 1 }, (_unused, j) =>
      rows.reduce((sum, { x, y, w }) => sum + w * (x[i] ?? 0) * (j === size ? y : (x[j] ?? 0)), 0),
    ),
  );
  const [intercept = 0, ...by] = solved(sums).map((value) => Number(value.toPrecision(5)));
  const told = (x: readonly number[]) => by.reduce((sum, one, i) => sum + one * (x[i + 1] ?? 0), intercept);
  const total = rows.reduce((sum, { w }) => sum + w, 0);
  const squares = rows.reduce((sum, { x, y, w }) => sum + w * (y - told(x)) ** 2, 0);
  return {
    intercept,
    by: Object.fromEntries(keys.map((key, i) => [key, by[i] ?? 0])),
    spread: Number(Math.sqrt(squares / total).toFixed(1)),
    people: rows.length,
  };
}

/** The solution of a small system of equations, each row with its right side last; Gauss, the largest pivot first. */
function solved(rows: readonly (readonly number[])[]): readonly number[] {
  const m = rows.map((row) => [...row]);
  const at = (i: number, j: number): number => m[i]?.[j] ?? 0;
  for (let i = 0; i < m.length; i += 1) {
    const best = m.findIndex(
      (_, k) => k >= i && m.every((_row, l) => l < i || Math.abs(at(k, i)) >= Math.abs(at(l, i))),
    );
    [m[i], m[best]] = [m[best] as number[], m[i] as number[]];
    for (let k = 0; k < m.length; k += 1) {
      if (k === i) continue;
      const part = at(k, i) / at(i, i);
      m[k] = (m[k] as number[]).map((value, j) => value - part * at(i, j));
    }
  }
  return m.map((row, i) => (row.at(-1) ?? 0) / at(i, i));
}
