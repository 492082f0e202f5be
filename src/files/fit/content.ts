import type { Verdict } from '../../check';
import { formatLength, type Mm, roundingOf } from '../../length';
import { checksOf, type Draft, type DraftLeg, hemEnds, type Measures, sheetsOf } from '../../project';
import { paperName } from '../../sheets';
import { number, own, type Phrase, printPhrase, said, say, words } from '../../words';
import { clothRows, shoppingRows } from '../content/cloth-rows';
import { bodyRows, cautionSentences, checkSentences, choiceSentences } from '../content/rows';
import { bullets, headed, type Passage, pairs } from '../pen/passage';

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
  readonly passages: readonly Passage[];
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
const GUESSED = ['thighGirth', 'footEntryGirth', 'bodyRise'] as const;

/** Whether a measurement was estimated. */
const isEstimated = ({ body }: Draft, key: string): boolean => body.estimates.some((one) => one.key === key);

/**
 * The comparison: what body, finished garment and room come to, as they are printed.
 *
 * @param draft the finished draft
 */
export function fitLines(draft: Draft): readonly FitLine[] {
  const { project, body, measures } = draft;
  const { units } = project;
  const l = (value: Mm) => formatLength(value, units);
  const star = (key: string) => (isEstimated(draft, key) ? ESTIMATED : '');
  const given = (key: (typeof GUESSED)[number]) => `${l(body[key])}${star(key)}`;
  const signed = (value: Mm) => l(value).replace(/^(?!−)/, '+');
  const room = (finished: Mm, bare: Mm) => signed(finished - bare);
  // Where body and room, as they are printed, miss the finished measure, a line of its own says by how much.
  const left = (finished: Mm, bare: Mm): readonly FitLine[] => {
    const by = roundingOf(finished, [{ mm: bare }, { mm: finished - bare }], units);
    return by === 0 ? [] : [{ name: words`rounding`, part: true, body: '', finished: '', room: signed(by) }];
  };
  const elastic = draft.notions.elasticLength ?? draft.notions.bandLength;
  return [
    {
      name: words`Waist opening`,
      body: l(body.waistGirth),
      finished: l(measures.waistOpening),
      room: room(measures.waistOpening, body.waistGirth),
    },
    ...left(measures.waistOpening, body.waistGirth),
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
          ...left(elastic, body.waistGirth),
        ]),
    { name: words`must open to at least`, part: true, body: '', finished: l(measures.pullOnNeeded), room: '' },
    {
      name: words`Hip`,
      body: l(body.hipGirth),
      finished: l(measures.hipGirthFinished),
      room: room(measures.hipGirthFinished, body.hipGirth),
    },
    ...left(measures.hipGirthFinished, body.hipGirth),
    ...eachLeg(
      draft,
      say`Thigh`,
      'thighGirthFinished',
      (value) => ({ body: given('thighGirth'), finished: l(value), room: room(value, body.thighGirth) }),
      (value) => left(value, body.thighGirth),
    ),
    ...eachLeg(
      draft,
      say`Hem, over the foot`,
      'hemGirthFinished',
      (value) => ({ body: given('footEntryGirth'), finished: l(value), room: room(value, body.footEntryGirth) }),
      (value) => left(value, body.footEntryGirth),
    ),
    {
      name: words`Crotch length`,
      body: body.crotchLength === undefined ? '' : l(body.crotchLength),
      finished: l(measures.crotchLengthFinished),
      room: body.crotchLength === undefined ? '' : room(measures.crotchLengthFinished, body.crotchLength),
    },
    ...(body.crotchLength === undefined ? [] : left(measures.crotchLengthFinished, body.crotchLength)),
    {
      name: words`Rise, from the body’s waist`,
      body: given('bodyRise'),
      finished: l(body.bodyRise + measures.riseEase),
      room: room(body.bodyRise + measures.riseEase, body.bodyRise),
    },
    ...left(body.bodyRise + measures.riseEase, body.bodyRise),
    ...eachLeg(draft, say`Inside leg and inseam`, 'inseamFront', (value, leg) => ({
      body: `${l(leg.body.insideLeg)}${star('insideLeg')}`,
      finished: l(value),
      room: '',
    })),
    { name: printPhrase(say`the hem ${hemEnds(draft)}`, units), part: true, body: '', finished: '', room: '' },
  ];
}

/**
 * How one body's garment fits it: body and finished measures beside each other, what to look at, what to buy.
 *
 * @param draft the finished draft
 */
export function fitContent(draft: Draft): FitContent {
  const { project, body, cautions } = draft;
  const checks = checksOf(draft);
  const { units } = project;
  const verdict =
    (['wrong', 'doubtful'] as const).find((one) => checks.some((check) => check.verdict === one)) ?? 'good';
  const remarks = body.remarks.map(({ phrase }) => printPhrase(say`Measure again: ${phrase}`, units));
  return {
    title: project.body.label,
    under: words`Legwork · fit sheet · ${own(project.name)}`,
    verdict,
    says: said(VERDICT_WORDS[verdict]),
    lines: fitLines(draft),
    estimated: [...GUESSED, 'insideLeg'].some((key) => isEstimated(draft, key)),
    passages: [
      ...headed(words`Look at`, bullets([...checkSentences(checks, units), ...remarks])),
      ...headed(words`Body`, pairs(bodyRows(draft))),
      ...headed(
        words`Cloth`,
        pairs([
          ...clothRows(draft),
          {
            name: words`Sheets`,
            value: words`${number(sheetsOf(draft).sheets.length)} ${paperName(sheetsOf(draft).paper.name)}`,
          },
        ]),
      ),
      ...headed(words`To buy`, pairs(shoppingRows(draft))),
      ...headed(words`Your choices`, bullets(choiceSentences(draft))),
      ...headed(words`Safety`, bullets(cautionSentences(cautions, units))),
    ],
  };
}

/** One line for both legs, or one for each where they differ. */
function eachLeg(
  { legs }: Draft,
  name: Phrase,
  key: keyof Measures,
  line: (value: Mm, leg: DraftLeg) => Omit<FitLine, 'name'>,
  under: (value: Mm) => readonly FitLine[] = () => [],
): readonly FitLine[] {
  const nameOf = ({ side }: DraftLeg): string =>
    side === undefined ? said(name) : side === 'left' ? words`${name}, left leg` : words`${name}, right leg`;
  return legs.flatMap((leg) => {
    const value = leg.measures[key];
    return [{ name: nameOf(leg), ...line(value, leg) }, ...under(value)];
  });
}

/** The note below the comparison. */
export const estimatedNote = say`${own(ESTIMATED)} Not measured: estimated from what was measured.`;
