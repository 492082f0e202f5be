import type { Check } from '../../check';
import type { Mm, Units } from '../../length';
import { checksOf, type Draft, sheetsOf } from '../../project';
import { correctionRemarks, paperName, partsInOrder, type Reprint, type SheetPart, type SheetPlan } from '../../sheets';
import { all, dated, inTurn, mm, number, own, printPhrase, said, say, UNSAID, words } from '../../words';
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
import { headed, headedWhole, type Passage, pairs, sentences } from '../pen/passage';
import { exchangePassages } from './exchange-words';
import { firstPage } from './first-paper';

/** What is said under one of the pictures of joining. */
export interface JoiningWords {
  readonly title: string;
  readonly text: string;
}

/** What found room on the map: the figures of the order of taping, and all labels. */
export interface MapShown {
  readonly ordered: boolean;
  readonly whole: boolean;
}

/** The first pages' words, by the place where they stand. */
export interface FirstWords {
  readonly title: string;
  readonly under: string;
  /** How to print: beside the squares. */
  readonly print: readonly Passage[];
  /** What to exchange in an earlier print: below it where there is room; nothing where all sheets are printed. */
  readonly exchange: readonly Passage[];
  readonly mapTitle: string;
  /** Below it; whether the map shows the order of taping, and all labels, is known once it is laid out. */
  readonly mapNote: (shown: MapShown) => string;
  /** In its place where the map beside the squares is too small for its labels. */
  readonly mapFurtherOn: string;
  /** Cutting, laying, taping; nothing where there is one sheet. */
  readonly joining: readonly JoiningWords[];
  /** Which small pieces are cut out of other sheets, and what is measured once all is joined. */
  readonly afterwards: readonly string[];
  /** Stands on the second page: it may have come out on the back of the first. Nothing where there is one sheet. */
  readonly twoSided: string;
  /** What else belongs to the pattern, most needed first. */
  readonly others: readonly Passage[];
}

/**
 * What the first pages say: how to print, how to join, what to cut, what is doubtful, whose it is, what was chosen, what
 * comes out.
 *
 * @param date printed in the reader's own calendar day
 * @param fileName the file that the pages belong to
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
  const controls = controlRows(draft).map(({ name, value }) => `${name} ${value}`);
  return {
    title: project.name,
    under: words`Legwork · lounge pant, each leg one piece · ${own(dated(date))} · ${own(fileName)}`,
    print: headed(
      words`Print at 100 %`,
      { kind: 'list', sign: 'numbers', items: printSentences(plan, units) },
      ...sentences(scale === '' ? [] : [scale]),
    ),
    exchange: again ? exchangePassages(draft, again) : [],
    mapTitle: count === 1 ? words`The sheet` : words`Where each sheet goes`,
    mapNote: (shown) => mapNote(plan, again !== undefined, shown),
    mapFurtherOn: words`${number(count)} sheets ${paperName(plan.paper.name)}. Further on the map is larger and has their labels.`,
    joining: count > 1 ? joiningWords(plan.overlap) : [],
    afterwards: [
      ...tipsTold(plan),
      ...(controls.length === 0
        ? []
        : [
            count > 1
              ? words`Measure, to check the joins: ${own(controls.join(', '))}.`
              : words`Measure, to check the print: ${own(controls.join(', '))}.`,
          ]),
    ],
    twoSided:
      count > 1
        ? words`Is anything printed on the back of this page? Then switch off two-sided printing before you print the sheets: one that is on the back of another can’t be laid beside it.`
        : '',
    others: [
      ...(count > 1 ? orderPassages(plan) : []),
      ...(paper.scale === 1 ? cuttingPassages(count) : []),
      ...headedWhole(words`To cut and to buy`, pairs([...clothRows(draft), ...cutRows(draft)])),
      ...headedWhole(
        words`Checks`,
        ...sentences([
          ...correctionRemarks(paper).map((remark) => printPhrase(say`Doubtful – printer: ${remark}`, units)),
          ...draft.body.remarks.map(({ phrase }) => printPhrase(say`Look at this before cutting: ${phrase}`, units)),
          ...checkSentences(checks, units),
        ]),
      ),
      ...headedWhole(words`Safety`, ...sentences(cautionSentences(draft.cautions, units))),
      ...headedWhole(words`Body: ${own(project.body.label)}`, pairs(bodyRows(draft))),
      ...headedWhole(words`Finished measures`, pairs(finishedRows(draft))),
      ...headedWhole(words`Your choices`, ...sentences(choiceSentences(draft))),
    ],
  };
}

/** The strips by their letters, each with its sheets in order; a comma where two of them don't touch. */
function orderPassages({ sheets }: SheetPlan): readonly Passage[] {
  const parts = partsInOrder({ sheets });
  const letterOf = ({ label }: SheetPart) => label.replace(/\d+$/, '');
  const letters = [...new Set(parts.map(letterOf))];
  const rows = letters.map((letter) => ({
    name: words`Strip ${own(letter)}`,
    value: parts
      .filter((part) => letterOf(part) === letter)
      .map((part, i) => `${i === 0 ? '' : isApart(part) ? ', ' : ' + '}${part.label}`)
      .join(''),
  }));
  const strips = { name: words`Then the strips`, value: letters.join(' + ') };
  const apart = rows.some(({ value }) => value.includes(','));
  return headedWhole(
    words`Order of taping`,
    pairs(letters.length > 1 ? [...rows, strips] : rows),
    ...sentences(
      apart ? [words`Where a comma stands, the two do not touch: the strips above and below hold them in place.`] : [],
    ),
  );
}

/** Whether a part joins nothing on its left. */
const isApart = ({ joins }: SheetPart): boolean => !joins.some(({ side }) => side === 'left');

/** Which parts of the plan are printed in empty corners of other sheets; nothing where none is. */
function tipsTold({ sheets }: SheetPlan): readonly string[] {
  const tips = sheets.flatMap(({ label, tips }) => tips.map((tip) => say`${own(tip.label)} out of ${own(label)}`));
  const [first] = tips;
  if (!first) return [];
  return tips.length === 1
    ? [words`Cut one small piece out along its frame and join it like a sheet: ${first}.`]
    : [words`Cut the small pieces out along their frames and join them like sheets: ${all(tips)}.`];
}

/** From the joined paper to the cloth. */
const cuttingPassages = (sheets: number): readonly Passage[] =>
  headedWhole(sheets > 1 ? words`When the sheets are one` : words`When the sheet is printed`, {
    kind: 'list',
    sign: 'numbers',
    items: [
      words`Cut the paper along the thick line, and mark the notches.`,
      words`Lay it on the cloth so that the arrow of its grainline runs along the selvedge. The sewing guide shows how all pieces lie.`,
      words`Cut as many as the list says; mirrored means that one half of them is cut with the printed side down.`,
    ],
  });

function printSentences(plan: SheetPlan, units: Units): readonly string[] {
  const { name } = firstPage(plan, units === 'inch');
  const { margin } = plan;
  return [
    name === plan.paper.name
      ? words`Print this page first, alone, and on the paper of the sheets.`
      : words`Print this page first, alone, on ${paperName(name)}; the pattern itself is printed on paper of its own size.`,
    words`Choose true size, 100 %, and one side of the paper only; switch off everything like fit to page or shrink.`,
    words`Measure both squares along all sides. If one is wrong, set the printer right before you print the rest.`,
    printPhrase(
      say`The drawing keeps ${mm(margin)} from the edges of the paper. If your printer cuts some of it off, choose a wider margin: the printer’s test page shows how wide.`,
      units,
    ),
  ];
}

function mapNote(plan: SheetPlan, again: boolean, { ordered, whole }: MapShown): string {
  const count = plan.sheets.length;
  const paper = paperName(plan.paper.name);
  const bears = plan.sheets.some(({ tips }) => tips.length > 0);
  const sheets =
    count === 1
      ? say`One sheet ${paper}.`
      : ordered
        ? say`${number(count)} sheets ${paper}; the small figures are the order of taping.`
        : say`${number(count)} sheets ${paper}; the order of taping is in the list.`;
  return said(
    inTurn([
      sheets,
      whole ? UNSAID : say`Labels that find no room here are in the list, row by row.`,
      bears ? say`Dashed: a small piece, where it is printed and where it belongs.` : UNSAID,
      again ? say`Grey: in this file.` : UNSAID,
    ]),
  );
}

function joiningWords(overlap: Mm): readonly JoiningWords[] {
  const [cut, lay, tape] = [words`1 Cut`, words`2 Lay`, words`3 Tape`];
  const strips = words`First tape each row into a strip, from the left; then the strips to each other, from the top.`;
  return overlap > 0
    ? [
        {
          title: cut,
          text: words`Cut off the white margin along the thin line where a sheet has a neighbour on its left or above it.`,
        },
        {
          title: lay,
          text: words`Lay the cut edge on the thin line of that neighbour, so that half-diamonds of one number make a whole one.`,
        },
        { title: tape, text: strips },
      ]
    : [
        { title: cut, text: words`Cut off the white margins along the thin lines where a sheet has a neighbour.` },
        { title: lay, text: words`Butt the cut edges, so that half-diamonds of one number make a whole one.` },
        { title: tape, text: strips },
      ];
}
