import { FIGURES, type FigureName } from './figures';
import type { Measured } from './measured';
import { inOrder, percentile } from './statistics';
import { limitsHeld } from './wanted';

const SHARES = [0, 0.05, 0.5, 0.95, 1] as const;
const NAMES = Object.keys(FIGURES) as readonly FigureName[];

/** A figure at five percentiles, and who has the least and the most. */
interface Spread {
  readonly figure: FigureName;
  readonly count: number;
  readonly at: readonly number[];
  readonly least: string;
  readonly most: string;
}

/** What of a misfit is asked for: the share of people within so many millimetres. */
const WITHIN: readonly (readonly [FigureName, number])[] = [
  ['crotchMiss', 1],
  ['crotchMiss', 15],
  ['frontMiss', 15],
  ['hipLineOff', 5],
  ['hipLineOff', 30],
  ['slantsApart', 3],
  ['slantsApart', 6],
];

/** All figures of a group that somebody has. */
export function spreadsOf({ rows }: Measured): readonly Spread[] {
  return NAMES.flatMap((figure) => {
    const found = rows.flatMap(({ id, figures }) => {
      const value = figures[figure];
      return value === undefined ? [] : [{ id, value }];
    });
    if (found.length === 0) return [];
    const ordered = inOrder(found.map(({ value }) => value));
    const who = (value: number | undefined) => found.find((one) => one.value === value)?.id ?? '';
    return [
      {
        figure,
        count: found.length,
        at: SHARES.map((share) => percentile(ordered, share)),
        least: who(ordered[0]),
        most: who(ordered.at(-1)),
      },
    ];
  });
}

/** How many drafts each check calls good, doubtful and wrong; those that find something, and `whole` for the worst of each draft. */
export function verdictsOf({ rows }: Measured): Readonly<Record<string, readonly [number, number, number]>> {
  const of = (verdicts: readonly (string | undefined)[]): readonly [number, number, number] => {
    const count = (verdict: string) => verdicts.filter((one) => one === verdict).length;
    return [count('good'), count('doubtful'), count('wrong')];
  };
  const ids = [...new Set(rows.flatMap(({ verdicts }) => Object.keys(verdicts)))];
  const worst = rows.map(({ verdicts }) => {
    const all = Object.values(verdicts);
    return all.includes('wrong') ? 'wrong' : all.includes('doubtful') ? 'doubtful' : 'good';
  });
  const each = ids.map((id) => [id, of(rows.map(({ verdicts }) => verdicts[id]))] as const);
  return Object.fromEntries([['whole', of(worst)], ...each.filter(([, [, doubtful, wrong]]) => doubtful + wrong > 0)]);
}

const short = (value: number): string => (Math.abs(value) < 0.005 ? '0' : value.toFixed(Math.abs(value) < 10 ? 2 : 1));
const line = (cells: readonly (string | number)[]): string => `| ${cells.join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]): string =>
  [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');

/** The whole table as Markdown. */
export function tableText(all: readonly Measured[], title: string): string {
  const limits = limitsHeld(all).map(({ what, group, measured, holds, worst }) => [
    what,
    group,
    short(measured),
    holds ? 'holds' : '**does not hold**',
    worst,
  ]);
  const parts = all.map((one) =>
    [
      `## ${one.name}: ${one.rows.length} drafted, ${one.refused.length} refused`,
      one.refused.slice(0, 20).join('; '),
      table(
        ['figure', 'people', 'min', '5 %', '50 %', '95 %', 'max', 'least', 'most'],
        spreadsOf(one).map(({ figure, count, at, least, most }) => [
          FIGURES[figure],
          count,
          ...at.map(short),
          least,
          most,
        ]),
      ),
      withinText(one),
      table(
        ['check', 'good', 'doubtful', 'wrong'],
        Object.entries(verdictsOf(one)).map(([id, counts]) => [id, ...counts]),
      ),
    ]
      .filter(Boolean)
      .join('\n\n'),
  );
  const head = table(['limit', 'of', '% within, or figure', '', 'worst'], limits);
  return `# ${title}\n\n## Limits\n\n${head}\n\n${parts.join('\n\n')}\n`;
}

function withinText({ rows }: Measured): string {
  const rates = WITHIN.flatMap(([figure, most]) => {
    const values = rows.flatMap(({ figures }) => figures[figure] ?? []);
    if (values.length === 0) return [];
    const inside = values.filter((value) => Math.abs(value) <= most).length;
    return [`${FIGURES[figure]} within ${most}: ${((100 * inside) / values.length).toFixed(2)} %`];
  });
  return rates.join(' · ');
}
