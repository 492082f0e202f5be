import type { LayAnswer } from '../../cloth';
import type { Mm, Units } from '../../length';
import {
  clothOf,
  clothWidthsOf,
  type Draft,
  garmentOf,
  oneWayClothOf,
  pictureOf,
  sewingOf,
  shoppingOf,
} from '../../project';
import {
  keyPicture,
  layPicture,
  type SewingPart,
  type SewingStep,
  type StepPicture,
  sewingTime,
  stepPicture,
  TIME_SOURCE,
} from '../../sewing';
import { amount, inTurn, mm, number, own, type Phrase, printPhrase, said, say, UNSAID, words } from '../../words';
import { clothRows, layRows } from '../content/cloth-rows';
import { bothUnits, choiceSentences, cutRows, finishedRows, type Row } from '../content/rows';
import { numberedCautions } from '../content/sources';

/** One step of the guide, in words. */
export interface GuideStep {
  readonly number: number;
  readonly title: string;
  readonly tasks: readonly string[];
  readonly why: string;
  readonly settings: readonly Row[];
  readonly check: string;
  readonly care: string;
  readonly picture: StepPicture;
}

/** The print pack in words and pictures: the same for paper and for the web page. */
export interface Guide {
  readonly title: string;
  readonly under: string;
  readonly units: Units;
  /** The finished pair. */
  readonly pair: StepPicture;
  readonly chosen: readonly string[];
  /** Each behind it with the number of its source in brackets, where it has one. */
  readonly safety: readonly string[];
  /** Where cautions come from, by their numbers, and where time and settings do. */
  readonly sources: readonly string[];
  readonly finished: readonly Row[];
  readonly cut: readonly Row[];
  readonly shopping: readonly { readonly name: string; readonly value: string; readonly note: string }[];
  readonly widths: readonly Row[];
  readonly lay: StepPicture | undefined;
  /** Where each piece lies on it. */
  readonly laid: readonly Row[];
  /** Why there is no lay on this width, and what would do; empty where there is one. */
  readonly noLay: string;
  readonly time: string;
  /** What the signs in the pictures mean; printed once, where the pictures begin. */
  readonly key: StepPicture;
  readonly parts: readonly { readonly name: string; readonly steps: readonly GuideStep[] }[];
}

const PART_NAMES: Readonly<Record<SewingPart, Phrase>> = {
  prepare: say`Before sewing`,
  flat: say`While the legs lie flat`,
  seams: say`The two main seams`,
  waist: say`The waist`,
  hems: say`The hems`,
  finish: say`Last of all`,
};

/** @param draft the finished draft */
export function guideContent(draft: Draft): Guide {
  const { project } = draft;
  const { units } = project;
  const steps = sewingOf(draft);
  const { answer, working } = clothOf(draft);
  const parts = [...new Set(steps.map((step) => step.part))];
  const safety = numberedCautions(draft.cautions, units);
  const told = (step: SewingStep): GuideStep => ({
    number: steps.indexOf(step) + 1,
    title: printPhrase(step.title, units),
    tasks: step.tasks.map((phrase) => printPhrase(phrase, units)),
    why: printPhrase(step.why, units),
    settings: step.settings.map(({ name, value }) => ({
      name: printPhrase(name, units),
      value: printPhrase(value, units),
    })),
    check: printPhrase(step.check, units),
    care: printPhrase(step.care, units),
    picture: pictureOf(draft, step),
  });
  return {
    title: project.name,
    under: words`Legwork · how to sew it, with cloth and shopping list · ${own(project.body.label)}`,
    units,
    pair: stepPicture(garmentOf(draft), { view: 'finished' }),
    chosen: [...choiceSentences(draft), machineSentence(draft)],
    safety: safety.sentences,
    sources: [
      ...safety.sources,
      printPhrase(inTurn([TIME_SOURCE, say`Stitch settings come from practice, too.`]), units),
    ],
    finished: finishedRows(draft),
    cut: [...clothRows(draft), ...cutRows(draft)],
    shopping: shoppingOf(draft).map(({ name, howMuch, note }) => ({
      name: printPhrase(name, units),
      value: bothUnits(howMuch, units),
      note: printPhrase(note, units),
    })),
    widths: [
      ...clothWidthsOf(draft).map(({ answer: other }) => takenRow(say`${mm(widthOf(other))} wide`, other, units)),
      ...(project.cloth.oneWay ? [] : [oneWayRow(oneWayClothOf(draft), units)]),
    ],
    lay: answer.fits ? layPicture(answer.lay, draft.pieces, project.cloth.oneWay) : undefined,
    laid: layRows(draft),
    noLay: answer.fits ? '' : printPhrase(working.at(-1)?.sentence ?? UNSAID, units),
    time: printPhrase(sewingTime(steps), units),
    key: keyPicture(),
    parts: parts.map((part) => ({
      name: said(PART_NAMES[part]),
      steps: steps.filter((step) => step.part === part).map(told),
    })),
  };
}

const widthOf = (answer: LayAnswer): Mm => (answer.fits ? answer.lay.width : answer.width);

/** What the same width takes of cloth whose pieces all lie one way up. */
const oneWayRow = (answer: LayAnswer, units: Units): Row =>
  takenRow(say`${mm(widthOf(answer))} wide, one-way cloth`, answer, units);

/** How much cloth a lay takes. */
const takenRow = (name: Phrase, answer: LayAnswer, units: Units): Row => ({
  name: printPhrase(name, units),
  value: answer.fits
    ? printPhrase(say`${amount(answer.lay.toBuy)}, ${number(100 * answer.lay.waste, 0)} % waste`, units)
    : words`does not fit`,
});

const machineSentence = ({ project }: Draft): string =>
  project.sewing.machine === 'serger'
    ? words`Machines: an overlocker, and a plain machine beside it.`
    : words`Machine: a plain machine with zigzag.`;
