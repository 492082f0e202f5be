import { VERDICT_NAMES, type Verdict } from '../../check';
import { formatAmount, formatParts, type Mm, type Units } from '../../length';
import { amount, mm, number, own, type Phrase, printPhrase, said, say, words } from '../../words';
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
  /** Sentences to look at, or the names of what is doubtful. */
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
const MOST_NAMED = 80;

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
      made.length === 1 ? words`1 pattern made` : words`${number(made.length)} patterns made`,
      ...(unmade > 0 ? [words`${number(unmade)} not made`] : []),
      look.length === 0
        ? words`none to look at`
        : look.length === 1
          ? words`1 to look at`
          : words`${number(look.length)} to look at`,
    ].join(' · '),
    totals: [
      ...classTotals(members).map(({ kind, width, length, learners }) => {
        const whole = kind === 'cloth' ? say`Cloth ${mm(width)} wide` : say`${NEED_NAMES[kind]}, ${mm(width)} wide`;
        const told =
          learners === 1
            ? say`${whole}: ${amount(length)} for 1 learner`
            : say`${whole}: ${amount(length)} for ${number(learners)} learners`;
        return printPhrase(told, units);
      }),
      sheets === 1 ? words`Paper: 1 sheet` : words`Paper: ${number(sheets)} sheets`,
    ],
    look: [
      ...look
        .slice(0, MOST_NAMED)
        .map(({ row, name, figures }) =>
          figures ? words`${own(name)} (row ${number(row)})` : words`${own(name)} (row ${number(row)}, not made)`,
        ),
      ...(look.length > MOST_NAMED
        ? [words`and ${number(look.length - MOST_NAMED)} more, marked ${own(LOOK_SIGN)} below`]
        : []),
    ],
    notes,
    columns: COLUMNS.map((column) => ({ ...column, head: said(column.head) })),
    lines: members.map((member) => summaryLine(member, units)),
  };
}

/** A length without its unit, as it stands below others: each with a decimal, or in eighths. */
const bareLength = (value: Mm, units: Units): string =>
  units === 'inch' ? formatParts(value, units).value : (value / 10).toFixed(1);

const COLUMNS: readonly (Omit<SummaryColumn, 'head'> & { readonly head: Phrase })[] = [
  { head: say`Row`, share: 9, align: 'right' },
  { head: say`Name`, share: 38, align: 'left' },
  { head: say`Waist`, share: 13, align: 'right' },
  { head: say`Hip`, share: 13, align: 'right' },
  { head: say`Inside leg`, share: 16, align: 'right' },
  { head: say`Hip, finished`, share: 19, align: 'right' },
  { head: say`Inseam`, share: 15, align: 'right' },
  { head: say`Cloth`, share: 16, align: 'right' },
  { head: say`Wide`, share: 13, align: 'right' },
  { head: say`Elastic`, share: 16, align: 'right' },
  { head: say`Sheets`, share: 13, align: 'right' },
  { head: say`Verdict`, share: 20, align: 'left', judges: true },
  { head: say`Look at`, share: 77, align: 'left' },
];

function summaryLine(member: MadeMember, units: Units): SummaryLine {
  const { row, name, figures, look, doubtful, needs, sheets } = member;
  const l = (value: number | 'estimated' | undefined) => {
    if (value === undefined) return '';
    return value === 'estimated' ? words`estimated` : bareLength(value, units);
  };
  const why = [...look, ...(doubtful.length > 0 ? [words`Doubtful: ${own(doubtful.join(', '))}.`] : [])].join(' ');
  const taken = figures?.body;
  const cloth = needs.find(({ kind }) => kind === 'cloth');
  return {
    cells: [
      `${row}`,
      name,
      l(taken?.waistGirth),
      l(taken?.hipGirth),
      l(taken?.insideLeg),
      l(figures?.hipFinished),
      l(figures?.inseam),
      cloth ? (cloth.length === undefined ? words`none fits` : formatAmount(cloth.length, units)) : '',
      l(cloth?.width),
      l(elasticLength(needs)),
      figures ? `${sheets}` : '',
      figures ? said(VERDICT_NAMES[figures.verdict]) : words`not made`,
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
