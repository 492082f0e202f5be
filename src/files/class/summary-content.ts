import type { Verdict } from '../../check';
import { formatAmount, formatLength, formatParts, type Mm, type Units } from '../../length';
import { classTotals, type MadeMember, NEED_NAMES, type Need, needsLook } from './member';

/** A column of the summary's table. */
export interface SummaryColumn {
  readonly head: string;
  /** Of the page's width, in parts. */
  readonly share: number;
  readonly align: 'left' | 'right';
  /** Whether it says how a learner's checks came out: so it is coloured. */
  readonly judges?: true;
}

/** One learner's line. */
export interface SummaryLine {
  readonly cells: readonly string[];
  readonly look: boolean;
  /** Undefined where nothing was made. */
  readonly verdict: Verdict | undefined;
  /** Sentences to look at, or the names of what is to be minded. */
  readonly why: string;
}

/** What the teacher's page says. */
export interface SummaryContent {
  readonly title: string;
  readonly says: string;
  readonly totals: readonly string[];
  readonly look: readonly string[];
  readonly notes: readonly string[];
  readonly columns: readonly SummaryColumn[];
  readonly lines: readonly SummaryLine[];
}

/** Stands before who needs a look. */
export const LOOK_SIGN = '▲';
/** More names than these are not read in a list; the table has them all. */
const MOST_NAMED = 24;

const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`;

/**
 * The summary of a class for its teacher: a line for each learner, who needs a look, and what to buy for all together.
 *
 * @param title of the design
 * @param notes said below the totals, e.g. what of the project was left out
 */
export function summaryContent(
  title: string,
  members: readonly MadeMember[],
  units: Units,
  notes: readonly string[],
): SummaryContent {
  const made = members.filter(({ figures }) => figures !== undefined);
  const look = members.filter(needsLook);
  const unmade = members.length - made.length;
  const sheets = made.reduce((sum, one) => sum + one.sheets, 0);
  return {
    title,
    says: [
      `${count(made.length, 'pattern', 'patterns')} made`,
      ...(unmade > 0 ? [`${unmade} not made`] : []),
      look.length === 0 ? 'nobody needs a look' : `${count(look.length, 'needs', 'need')} a look`,
    ].join(' · '),
    totals: [
      ...classTotals(members).map(({ kind, width, length, learners }) => {
        const whole =
          kind === 'cloth'
            ? `Cloth ${formatLength(width, units)} wide`
            : `${capital(NEED_NAMES[kind])}, ${formatLength(width, units)} wide`;
        return `${whole}: ${formatAmount(length, units)} for ${count(learners, 'learner', 'learners')}`;
      }),
      `Paper: ${count(sheets, 'sheet', 'sheets')}`,
    ],
    look: [
      ...look
        .slice(0, MOST_NAMED)
        .map(({ row, name, figures }) => `${name} (row ${row}${figures ? '' : ', not made'})`),
      ...(look.length > MOST_NAMED ? [`and ${look.length - MOST_NAMED} more, marked ${LOOK_SIGN} below`] : []),
    ],
    notes,
    columns: COLUMNS,
    lines: members.map((member) => summaryLine(member, units)),
  };
}

/** A length without its unit, as it stands below others: each with a decimal, or in eighths. */
const bareLength = (value: Mm, units: Units): string =>
  units === 'inch' ? formatParts(value, units).value : (value / 10).toFixed(1);

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const COLUMNS: readonly SummaryColumn[] = [
  { head: 'Row', share: 9, align: 'right' },
  { head: 'Name', share: 38, align: 'left' },
  { head: 'Waist', share: 13, align: 'right' },
  { head: 'Hip', share: 13, align: 'right' },
  { head: 'Inside leg', share: 16, align: 'right' },
  { head: 'Hip, finished', share: 19, align: 'right' },
  { head: 'Inseam', share: 15, align: 'right' },
  { head: 'Cloth', share: 16, align: 'right' },
  { head: 'Wide', share: 13, align: 'right' },
  { head: 'Elastic', share: 16, align: 'right' },
  { head: 'Sheets', share: 13, align: 'right' },
  { head: 'Verdict', share: 20, align: 'left', judges: true },
  { head: 'Look at', share: 77, align: 'left' },
];

function summaryLine(member: MadeMember, units: Units): SummaryLine {
  const { row, name, figures, look, mind, needs, sheets } = member;
  const l = (value: number | undefined) => (value === undefined ? '' : bareLength(value, units));
  const why = [...look, ...(mind.length > 0 ? [`Mind: ${mind.join(', ')}.`] : [])].join(' ');
  const own = figures?.body;
  const cloth = needs.find(({ kind }) => kind === 'cloth');
  return {
    cells: [
      `${row}`,
      name,
      l(own?.waistGirth),
      l(own?.hipGirth),
      l(own?.insideLeg),
      l(figures?.hipFinished),
      l(figures?.inseam),
      cloth ? (cloth.length === undefined ? 'none fits' : formatAmount(cloth.length, units)) : '',
      l(cloth?.width),
      l(elasticLength(needs)),
      figures ? `${sheets}` : '',
      figures?.verdict ?? 'not made',
    ],
    look: look.length > 0,
    verdict: figures?.verdict,
    why,
  };
}

/** All elastics of one learner; undefined where there are none. */
export function elasticLength(needs: readonly Need[]): number | undefined {
  const lengths = needs.flatMap(({ kind, length }) =>
    kind === 'waistElastic' || kind === 'hemElastic' ? (length ?? []) : [],
  );
  return lengths.length === 0 ? undefined : lengths.reduce((sum, length) => sum + length, 0);
}
