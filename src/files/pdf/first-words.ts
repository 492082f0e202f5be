import type { Check } from '../../check';
import type { Mm, Units } from '../../length';
import { checksOf, type Draft, sheetsOf } from '../../project';
import { correctionRemarks, paperName, type Reprint } from '../../sheets';
import { dated, mm, number, own, printPhrase, say, words } from '../../words';
import { clothRows } from '../content/cloth-rows';
import {
  bodyRows,
  cautionSentences,
  checkSentences,
  choiceSentences,
  controlRows,
  cutRows,
  finishedRows,
  scaleSentence,
} from '../content/rows';
import type { Section } from '../pen/text-flow';
import { exchangeSection } from './exchange-words';

/** The first sheet's words, by the place where they stand. */
export interface FirstWords {
  readonly title: string;
  readonly under: string;
  /** Set inside the first square; what finds no room there is set before the other parts. */
  readonly inSquare: readonly Section[];
  readonly mapTitle: string;
  /** Parts in the order in which they are set; the last ones go on to a further page where there is no room. */
  readonly sections: readonly Section[];
}

/**
 * What the first sheet says: how to print, whose it is, what was chosen, what comes out, what to cut, what is doubtful, how
 * to join.
 *
 * @param date printed in the reader's own calendar day
 * @param fileName the file that the sheet belongs to
 * @param also.checks those of the draft
 * @param also.again where only the changed sheets of a pattern are in the file that was printed before
 */
export function firstWords(
  draft: Draft,
  date: Date,
  fileName: string,
  {
    checks = checksOf(draft),
    again,
  }: { readonly checks?: readonly Check[]; readonly again?: Reprint | undefined } = {},
): FirstWords {
  const { project } = draft;
  const plan = sheetsOf(draft);
  const { paper, units } = project;
  const count = plan.sheets.length;
  const scale = scaleSentence(paper);
  return {
    title: project.name,
    under: words`Legwork · lounge pant, each leg one piece · ${own(dated(date))} · ${own(fileName)}`,
    inSquare: [
      {
        title: words`Print at 100 %`,
        sentences: [...printSentences(plan.margin, units), ...(scale === '' ? [] : [scale])],
      },
      ...(again ? [exchangeSection(draft, again)] : []),
      ...(count > 1 ? [joinSection(draft)] : []),
    ],
    mapTitle: again
      ? words`Grey: in this file. ${number(count, 0)} sheets ${paperName(plan.paper.name)} in all`
      : words`${count === 1 ? say`1 sheet` : say`${number(count)} sheets`} ${paperName(plan.paper.name)} (by area no fewer than ${number(plan.lowerBound)})`,
    sections: [
      { title: words`Body: ${own(project.body.label)}`, rows: bodyRows(draft) },
      { title: words`Chosen`, sentences: choiceSentences(draft) },
      { title: words`Finished measures`, rows: finishedRows(draft) },
      { title: words`Cut`, rows: [...clothRows(draft), ...cutRows(draft)] },
      {
        title: words`Checks`,
        sentences: [
          ...correctionRemarks(paper).map((remark) => printPhrase(say`Doubtful – printer: ${remark}`, units)),
          ...draft.body.remarks.map(({ phrase }) => printPhrase(say`Look at this before cutting: ${phrase}`, units)),
          ...checkSentences(checks, units),
        ],
      },
      { title: words`Safety`, sentences: cautionSentences(draft.cautions, units) },
    ],
  };
}

function printSentences(margin: Mm, units: Units): readonly string[] {
  return [
    words`Choose true size, 100 %; switch off everything like fit to page or shrink. Print this sheet alone first and measure both squares along all sides, from the middle of a line to the middle of the other. If one is wrong, set the printer right before you print the rest.`,
    printPhrase(
      say`The drawing keeps ${mm(margin)} from the edges of the paper. If your printer cuts some of it off, choose a wider margin.`,
      units,
    ),
  ];
}

const cutOutOf = (sheet: string, tips: readonly string[]): string =>
  tips.length === 1
    ? words`Cut the small piece ${own(tips.join())} out of ${own(sheet)} along its frame, and join it like a sheet.`
    : words`Cut the small pieces ${own(tips.join(', '))} out of ${own(sheet)} along their frames, and join them like sheets.`;

function joinSection(draft: Draft): Section {
  const plan = sheetsOf(draft);
  const { overlap } = plan;
  const controls = controlRows(draft).map(({ name, value }) => `${name} ${value}`);
  const trim =
    overlap > 0
      ? [
          words`Lay the sheets out as on the map. Where a sheet has a neighbour on its left or above it, cut off its white margin along the thin line on that side.`,
          words`Lay the cut edge on the thin line of that neighbour, so that the half-diamonds of one number make a whole diamond and the lines meet. Glue or tape.`,
        ]
      : [
          words`Lay the sheets out as on the map. Cut off the margins along the thin lines on all sides that have a neighbour.`,
          words`Butt the cut edges, so that the half-diamonds of one number make a whole diamond and the lines meet. Tape.`,
        ];
  const steps = [
    ...trim,
    ...plan.sheets
      .filter(({ tips }) => tips.length > 0)
      .map(({ label, tips }) =>
        cutOutOf(
          label,
          tips.map((tip) => tip.label),
        ),
      ),
    words`Join the rows first, then the rows to each other.`,
    ...(controls.length > 0 ? [words`Measure, to check the joins: ${own(controls.join(', '))}.`] : []),
  ];
  return {
    title: words`Join the sheets`,
    sentences: steps.map((step, i) => `${i + 1}. ${step}`),
  };
}
