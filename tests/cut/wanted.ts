import type { FigureName } from './figures';
import type { Measured } from './measured';
import { correlation, inOrder, percentile } from './statistics';

/** One limit that the cut keeps on measured people, and how it came out. */
export interface Held {
  readonly what: string;
  readonly group: string;
  readonly measured: number;
  readonly holds: boolean;
  /** Who is farthest off. */
  readonly worst: string;
}

type Rows = Measured['rows'];
type Row = Rows[number];

/** A share of people within a limit that must be reached. */
interface Limit {
  readonly what: string;
  readonly figure: FigureName;
  readonly within: readonly [number, number];
  readonly share: number;
  /** The share is that of the middle: as many may lie below as above. */
  readonly span?: true;
  readonly of?: (row: Row) => boolean;
  readonly groups: RegExp;
}

const UNLIMITED = Number.POSITIVE_INFINITY;
/** What is drawn to a limit may miss it by this much of rounding, mm (tolerance). */
const HAIR = 0.01;

/** Neither waist nor high hip is fuller than the hip. */
const hipIsFullest = ({ body }: Row): boolean =>
  Math.max(body.waistGirth ?? 0, body.highHipGirth ?? 0) <= (body.hipGirth ?? 0);

const LIMITS: readonly Limit[] = [
  {
    what: 'tilt ≥ 34.5 × k where the hip is the fullest part, no crotch length',
    figure: 'tilt',
    within: [34.5, UNLIMITED],
    share: 1,
    of: hipIsFullest,
    groups: /^(adults|children)$/,
  },
  {
    what: 'hem 430–520 from 5 to 95 %',
    figure: 'hem',
    within: [430, 520],
    share: 0.9,
    span: true,
    groups: /^adults/,
  },
  {
    what: 'crotch length within 15 on 98.5 %',
    figure: 'crotchMiss',
    within: [-15, 15],
    share: 0.985,
    groups: /crotch length/,
  },
  {
    what: 'its front part within 15 on 80 %',
    figure: 'frontMiss',
    within: [-15, 15],
    share: 0.8,
    groups: /front part/,
  },
  { what: 'forks ≤ 21 % of hip + ease', figure: 'forkSumOfSeat', within: [0, 21], share: 1, groups: /./ },
  { what: 'hip line within 30 on 99.5 %', figure: 'hipLineOff', within: [-30, 30], share: 0.995, groups: /./ },
  { what: 'opening ≥ needed', figure: 'openingRoom', within: [0, UNLIMITED], share: 1, groups: /./ },
];

/** What small bodies have less of, as the draft scales its own figures (hip 900). */
const scaled = (row: Row, value: number): number => value / Math.min(1, (row.body.hipGirth ?? 900) / 900);

function limitHeld(limit: Limit, { name, rows }: Measured): Held | undefined {
  const [low, high] = limit.within;
  const valued = rows.flatMap((row) => {
    const value = row.figures[limit.figure];
    if (value === undefined || limit.of?.(row) === false) return [];
    return [{ row, value: limit.figure === 'tilt' ? scaled(row, value) : value }];
  });
  if (valued.length === 0) return undefined;
  const beyond = (value: number) => Math.max(low - value, value - high);
  const inside = valued.filter(({ value }) => beyond(value) <= HAIR).length;
  const worst = valued.reduce((a, b) => (beyond(b.value) > beyond(a.value) ? b : a));
  // A span of percentiles may leave out as many below as above: both ends are looked at.
  const ordered = inOrder(valued.map(({ value }) => value));
  const ends = [(1 - limit.share) / 2, (1 + limit.share) / 2].map((share) => percentile(ordered, share));
  return {
    what: limit.what,
    group: name,
    measured: (100 * inside) / valued.length,
    holds: limit.span ? ends.every((value) => beyond(value) <= HAIR) : inside / valued.length >= limit.share,
    worst: `${worst.row.id}: ${worst.value.toFixed(2)}${limit.span ? `; span ${ends.map((end) => end.toFixed(1)).join('–')}` : ''}`,
  };
}

const tiltFollows = ({ name, rows }: Measured): Held => {
  const pairs = rows.flatMap(({ figures: { tilt, hipLessWaist } }) =>
    tilt === undefined || hipLessWaist === undefined ? [] : [[hipLessWaist, tilt] as const],
  );
  const r = correlation(pairs);
  return { what: 'tilt’s correlation with hip − waist ≥ 0', group: name, measured: r, holds: r >= 0, worst: '' };
};

const nobodyRefused = ({ name, refused }: Measured): Held => ({
  what: 'nobody refused',
  group: name,
  measured: refused.length,
  holds: refused.length === 0,
  worst: refused[0] ?? '',
});

/** Every limit on every group that it is meant for. */
export const limitsHeld = (all: readonly Measured[]): readonly Held[] =>
  all.flatMap((one) => [
    nobodyRefused(one),
    ...(one.name === 'children' ? [] : [tiltFollows(one)]),
    ...LIMITS.filter(({ groups }) => groups.test(one.name)).flatMap((limit) => limitHeld(limit, one) ?? []),
  ]);
