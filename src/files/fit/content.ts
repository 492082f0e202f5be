import type { Verdict } from '../../check';
import { formatLength, type Mm } from '../../length';
import { checksOf, type Draft, type DraftLeg, hemEnds, type Measures, sheetsOf, shoppingOf } from '../../project';
import { paperName } from '../../sheets';
import { number, own, type Phrase, printPhrase, said, say, words } from '../../words';
import { clothRows } from '../content/cloth-rows';
import { bodyRows, bothUnits, cautionSentences, checkSentences, choiceSentences } from '../content/rows';
import type { Section } from '../pen/text-flow';

/** One line of the comparison of body and garment; a cell that says nothing is empty. */
export interface FitLine {
  readonly name: string;
  /** It is of the line above it. */
  readonly part?: boolean | undefined;
  readonly body: string;
  readonly finished: string;
  readonly room: string;
}

/** What a fit sheet says. */
export interface FitContent {
  readonly title: string;
  readonly under: string;
  readonly verdict: Verdict;
  readonly says: string;
  readonly lines: readonly FitLine[];
  readonly estimated: boolean;
  readonly sections: readonly Section[];
}

/** What the checks come to, in a few words. */
const VERDICT_WORDS: Readonly<Record<Verdict, Phrase>> = {
  good: say`All checks are good.`,
  doubtful: say`Something is doubtful: see below.`,
  wrong: say`Something is wrong: look before you cut.`,
};

/** A value that nobody measured is marked by this. */
const ESTIMATED = '*';
/** Those of the comparison that may be. */
const GUESSED = ['thighGirth', 'footEntryGirth'] as const;

/**
 * How one body's garment fits it: body and finished measures beside each other, what to look at, what to buy.
 *
 * @param draft the finished draft
 */
export function fitContent(draft: Draft): FitContent {
  const { project, body, measures, cautions } = draft;
  const checks = checksOf(draft);
  const { units } = project;
  const l = (value: Mm) => formatLength(value, units);
  const estimated = new Set<string>(body.estimates.map(({ key }) => key));
  const given = (key: (typeof GUESSED)[number]) => `${l(body[key])}${estimated.has(key) ? ESTIMATED : ''}`;
  const room = (finished: Mm, bare: Mm) => `${finished >= bare ? '+' : ''}${l(finished - bare)}`;
  const elastic = draft.notions.elasticLength ?? draft.notions.bandLength;
  const lines: readonly FitLine[] = [
    {
      name: words`Waist opening`,
      body: l(body.waistGirth),
      finished: l(measures.waistOpening),
      room: room(measures.waistOpening, body.waistGirth),
    },
    ...(elastic === undefined
      ? []
      : [
          {
            name: words`drawn in to`,
            part: true,
            body: '',
            finished: l(elastic),
            room: room(elastic, body.waistGirth),
          },
        ]),
    { name: words`needed to pull on`, part: true, body: '', finished: l(measures.pullOnNeeded), room: '' },
    {
      name: words`Hip`,
      body: l(body.hipGirth),
      finished: l(measures.hipGirthFinished),
      room: room(measures.hipGirthFinished, body.hipGirth),
    },
    ...eachLeg(draft, say`Thigh`, 'thighGirthFinished', (value) => ({
      body: given('thighGirth'),
      finished: l(value),
      room: room(value, body.thighGirth),
    })),
    ...eachLeg(draft, say`Hem, over the foot`, 'hemGirthFinished', (value) => ({
      body: given('footEntryGirth'),
      finished: l(value),
      room: room(value, body.footEntryGirth),
    })),
    {
      name: words`Crotch length`,
      body: body.crotchLength === undefined ? '' : l(body.crotchLength),
      finished: l(measures.crotchLengthFinished),
      room: body.crotchLength === undefined ? '' : room(measures.crotchLengthFinished, body.crotchLength),
    },
    {
      name: words`Rise, from the body’s waist`,
      body: l(body.bodyRise),
      finished: l(body.bodyRise + measures.riseEase),
      room: room(body.bodyRise + measures.riseEase, body.bodyRise),
    },
    ...eachLeg(draft, say`Inside leg and inseam`, 'inseamFront', (value, leg) => ({
      body: `${l(leg.body.insideLeg)}${estimated.has('insideLeg') ? ESTIMATED : ''}`,
      finished: l(value),
      room: '',
    })),
    { name: printPhrase(say`the hem ${hemEnds(draft)}`, units), part: true, body: '', finished: '', room: '' },
  ];
  const verdict =
    (['wrong', 'doubtful'] as const).find((one) => checks.some((check) => check.verdict === one)) ?? 'good';
  const remarks = body.remarks.map(({ phrase }) => printPhrase(say`Measure again: ${phrase}`, units));
  const listed = (all: readonly string[]) => all.map((sentence) => `• ${sentence}`);
  return {
    title: project.body.label,
    under: words`Legwork · fit sheet · ${own(project.name)}`,
    verdict,
    says: said(VERDICT_WORDS[verdict]),
    lines,
    estimated: [...GUESSED, 'insideLeg'].some((key) => estimated.has(key)),
    sections: [
      { title: words`Look at`, sentences: listed([...checkSentences(checks, units), ...remarks]) },
      { title: words`Body`, rows: bodyRows(project) },
      {
        title: words`Cloth`,
        rows: [
          ...clothRows(draft),
          {
            name: words`Sheets`,
            value: words`${number(sheetsOf(draft).sheets.length)} ${paperName(sheetsOf(draft).paper.name)}`,
          },
        ],
      },
      {
        title: words`To buy`,
        sentences: listed(
          shoppingOf(draft).map(({ name, howMuch }) => `${printPhrase(name, units)}: ${bothUnits(howMuch, units)}`),
        ),
      },
      { title: words`Chosen`, sentences: choiceSentences(draft) },
      { title: words`Safety`, sentences: listed(cautionSentences(cautions, units)) },
    ],
  };
}

/** One line for both legs, or one for each where they differ. */
function eachLeg(
  { legs }: Draft,
  name: Phrase,
  key: keyof Measures,
  line: (value: Mm, leg: DraftLeg) => Omit<FitLine, 'name'>,
): readonly FitLine[] {
  return legs.map((leg) => ({
    name:
      leg.side === undefined ? said(name) : leg.side === 'left' ? words`${name}, left leg` : words`${name}, right leg`,
    ...line(leg.measures[key], leg),
  }));
}

/** The note below the comparison. */
export const estimatedNote = say`${own(ESTIMATED)} Not measured: estimated from the others, from open surveys of people.`;
