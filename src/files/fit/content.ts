import type { Verdict } from '../../check';
import { formatLength, type Mm } from '../../length';
import { checksOf, type Draft, type DraftLeg, type Measures, sheetsOf, shoppingOf } from '../../project';
import { printPhrase } from '../../words';
import { clothRows } from '../content/cloth-rows';
import { bodyRows, bothUnits, cautionSentences, checkSentences, choiceSentences } from '../content/rows';
import type { Section } from '../pen/text-flow';

/** One line of the comparison of body and garment; a cell that says nothing is empty. */
export interface FitLine {
  readonly name: string;
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
export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  good: 'All checks are good.',
  mind: 'Something to mind: see below.',
  wrong: 'Something is wrong: look before you cut.',
};

/** A value that nobody measured is marked by this. */
const ESTIMATED = '*';

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
  const given = (key: 'thighGirth' | 'footEntryGirth') => `${l(body[key])}${estimated.has(key) ? ESTIMATED : ''}`;
  const room = (finished: Mm, own: Mm) => `${finished >= own ? '+' : ''}${l(finished - own)}`;
  const elastic = draft.notions.elasticLength ?? draft.notions.bandLength;
  const lines: readonly FitLine[] = [
    {
      name: 'Waist opening',
      body: l(body.waistGirth),
      finished: l(measures.waistOpening),
      room: room(measures.waistOpening, body.waistGirth),
    },
    ...(elastic === undefined
      ? []
      : [{ name: 'drawn in to', body: '', finished: l(elastic), room: room(elastic, body.waistGirth) }]),
    { name: 'needed to pull on', body: '', finished: l(measures.pullOnNeeded), room: '' },
    {
      name: 'Hip',
      body: l(body.hipGirth),
      finished: l(measures.hipGirthFinished),
      room: room(measures.hipGirthFinished, body.hipGirth),
    },
    ...eachLeg(draft, 'Thigh', 'thighGirthFinished', (value) => ({
      body: given('thighGirth'),
      finished: l(value),
      room: room(value, body.thighGirth),
    })),
    ...eachLeg(draft, 'Hem, over the foot', 'hemGirthFinished', (value) => ({
      body: given('footEntryGirth'),
      finished: l(value),
      room: room(value, body.footEntryGirth),
    })),
    {
      name: 'Crotch length',
      body: body.crotchLength === undefined ? '' : l(body.crotchLength),
      finished: l(measures.crotchLengthFinished),
      room: body.crotchLength === undefined ? '' : room(measures.crotchLengthFinished, body.crotchLength),
    },
    {
      name: 'Rise, from the body’s waist',
      body: l(body.bodyRise),
      finished: l(body.bodyRise + measures.riseEase),
      room: room(body.bodyRise + measures.riseEase, body.bodyRise),
    },
    ...eachLeg(draft, 'Inseam', 'inseamFront', (value, leg) => ({
      body: l(leg.body.insideLeg),
      finished: l(value),
      room: '',
    })),
  ];
  const verdict = (['wrong', 'mind'] as const).find((one) => checks.some((check) => check.verdict === one)) ?? 'good';
  const remarks = body.remarks.map(({ phrase }) => `Measure again: ${printPhrase(phrase, units)}`);
  const listed = (all: readonly string[]) => all.map((sentence) => `• ${sentence}`);
  return {
    title: project.body.label,
    under: `Legwork · fit sheet · ${project.name}`,
    verdict,
    says: VERDICT_WORDS[verdict],
    lines,
    estimated: lines.some((line) => line.body.endsWith(ESTIMATED)),
    sections: [
      { title: 'Look at', sentences: listed([...checkSentences(checks, units), ...remarks]) },
      { title: 'Body', rows: bodyRows(project) },
      {
        title: 'Cloth',
        rows: [
          ...clothRows(draft),
          { name: 'Sheets', value: `${sheetsOf(draft).sheets.length} ${sheetsOf(draft).paper.name}` },
        ],
      },
      {
        title: 'To buy',
        sentences: listed(
          shoppingOf(draft).map(({ name, howMuch }) => `${printPhrase(name, units)}: ${bothUnits(howMuch, units)}`),
        ),
      },
      { title: 'Chosen', sentences: choiceSentences(draft) },
      { title: 'Safety', sentences: listed(cautionSentences(cautions, units)) },
    ],
  };
}

/** One line for both legs, or one for each where they differ. */
function eachLeg(
  { legs }: Draft,
  name: string,
  key: keyof Measures,
  line: (value: Mm, leg: DraftLeg) => Omit<FitLine, 'name'>,
): readonly FitLine[] {
  return legs.map((leg) => ({
    name: leg.side === undefined ? name : `${name}, ${leg.side} leg`,
    ...line(leg.measures[key], leg),
  }));
}

/** The note below the comparison. */
export const estimatedNote = `${ESTIMATED} Not measured: estimated from the others, from open surveys of people.`;
