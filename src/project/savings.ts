import type { Fix } from '../check';
import { type ClothPlan, clothPlan, type Lay, type LayAnswer } from '../cloth';
import { amountUp, type Mm } from '../length';
import { amount, inTurn, mm, type Phrase, Refusal, say, UNSAID } from '../words';
import { checksOf } from './checks';
import { clothOf, clothWidthsOf } from './cloth';
import { cutOut } from './cut-out';
import { draft } from './draft';
import type { Draft } from './draft-types';
import { applyRemedy } from './remedy';
import { remembered } from './remembered';

/** One change of the project by which less cloth is bought. */
export interface ClothSaving {
  /** Stable, e.g. `pieced-tip-50`. */
  readonly id: string;
  /** The change, with the words on its button. */
  readonly fix: Fix;
  /** What to buy then, to the millimetre; and how much less that is than now, where now anything fits. */
  readonly toBuy: Mm;
  readonly saved: Mm | undefined;
  /** Whether both legs lie on one length then: beside each other, or one fork above the other's knee. */
  readonly oneLength: boolean;
  /** What to buy then instead of now, and what it asks for, in whole sentences. */
  readonly says: Phrase;
}

/** A saving, found when it is asked for; undefined where there is none. */
export type SavingQuestion = () => ClothSaving | undefined;

/** What is less is not worth a change. @source practice */
export const WORTH_SAVING: Mm = 100;
/** A fork's tip as it is usually pieced, and a narrower one that saves about half. @source practice */
const TIPS = [50, 30] as const;
/** By how much a hem may be narrower: more is another leg. The least of them that saves is offered. */
const HEMS = [20, 40, 60] as const;
/** Widths that take as much cloth but for this: then the narrower one will do, which costs less. */
const AS_MUCH: Mm = 50;
/** Legs that lie on one length are longer together than one of them by no more: a fork above the other's knee. */
const ONE_LENGTH: Mm = 150;

/**
 * All that would save cloth, each by the real lay, the most first.
 *
 * @param draft the finished draft; asked twice, it is answered at once
 */
export const clothSavingsOf: (draft: Draft) => readonly ClothSaving[] = remembered((draft) =>
  inOrder(savingQuestions(draft).flatMap((question) => question() ?? [])),
);

/** What saves most stands first. */
export const inOrder = (savings: readonly ClothSaving[]): readonly ClothSaving[] =>
  savings.toSorted((a, b) => a.toBuy - b.toBuy);

/**
 * The same one by one, for a screen that has other things to do between them: each takes as long as a lay or two.
 *
 * @param draft the finished draft
 */
export const savingQuestions = (draft: Draft): readonly SavingQuestion[] => [
  ...TIPS.map((tip) => () => piecedTip(draft, tip)),
  () => narrowerHem(draft),
  () => otherWidth(draft),
  () => endForEnd(draft),
  () => shortestLay(draft),
];

/** The fork's tip, pieced, where nothing has to match across its seam. */
function piecedTip(draft: Draft, tip: Mm): ClothSaving | undefined {
  const { cloth } = draft.project;
  if (tip <= cloth.piecedTip || cloth.repeat > 0 || cloth.repeatAcross > 0) return undefined;
  return recut(draft, {
    id: `pieced-tip-${tip}`,
    fix: { label: say`Piece the fork’s tip, ${mm(tip)}`, changes: [{ path: 'cloth.piecedTip', value: tip }] },
    asks: say`It takes a short seam on each leg, along the grain.`,
  });
}

/** A hem that is a little narrower, where no check comes out worse for it. */
function narrowerHem(draft: Draft): ClothSaving | undefined {
  const now = draft.measures.hemGirthFinished;
  for (const less of HEMS) {
    const hemGirth = 5 * Math.round((now - less) / 5);
    const fix: Fix = {
      label: say`Make the hem ${mm(hemGirth)} round`,
      changes: [{ path: 'leg.shape', value: { hemGirth } }],
    };
    const offered = recut(draft, { id: 'narrower-hem', fix, asks: say`It is ${mm(now)} now.` });
    if (offered) return noWorse(draft, fix) ? offered : undefined;
  }
  return undefined;
}

const BADNESS = { good: 0, doubtful: 1, wrong: 2 } as const;

/** Whether no check comes out worse than it did. */
function noWorse(now: Draft, fix: Fix): boolean {
  const changed = draft(applyRemedy(now.project, { fix }));
  if (!changed.ok) return false;
  return checksOf(changed.value).every(({ id, verdict }) => {
    const before = checksOf(now).find((check) => check.id === id);
    return BADNESS[verdict] <= BADNESS[before?.verdict ?? 'good'];
  });
}

/** The narrowest of the usual widths on which next to nothing more is needed than on the best of them. */
function otherWidth(draft: Draft): ClothSaving | undefined {
  const widths = clothWidthsOf(draft).flatMap(({ own, answer }) => (answer.fits && !own ? [answer] : []));
  const least = Math.min(...widths.map(({ lay }) => lay.toBuy));
  const answer = widths.find(({ lay }) => lay.toBuy <= least + AS_MUCH);
  if (!answer) return undefined;
  const { width } = answer.lay;
  return saving(draft, answer, {
    id: 'other-width',
    fix: { label: say`Use a cloth ${mm(width)} wide`, changes: [{ path: 'cloth.width', value: width }] },
    asks: say`A wider cloth costs more by the length.`,
  });
}

/** Pieces end for end, where the cloth was said to have one way. */
function endForEnd(draft: Draft): ClothSaving | undefined {
  const { cloth } = draft.project;
  if (!cloth.oneWay) return undefined;
  return saving(draft, clothPlan(draft.pieces, { ...cloth, oneWay: false }).answer, {
    id: 'either-way',
    fix: { label: say`Turn pieces end for end`, changes: [{ path: 'cloth.oneWay', value: false }] },
    asks: say`Only in cloth without a nap, and with a print that has no upper end.`,
  });
}

/** The layout that takes least, where another one was chosen. */
function shortestLay(draft: Draft): ClothSaving | undefined {
  const { cloth } = draft.project;
  if (cloth.layout === 'best') return undefined;
  return saving(draft, clothPlan(draft.pieces, { ...cloth, layout: 'best' }).answer, {
    id: 'shortest-lay',
    fix: { label: say`Lay it the way that takes least cloth`, changes: [{ path: 'cloth.layout', value: 'best' }] },
    asks: UNSAID,
  });
}

/** What is asked for, beside what it gives. */
interface Offer extends Pick<ClothSaving, 'id' | 'fix'> {
  readonly asks: Phrase;
}

/** The same where the pieces change: they are cut anew, and laid. */
function recut(draft: Draft, offer: Offer): ClothSaving | undefined {
  const project = applyRemedy(draft.project, offer);
  const pieces = unlessRefused(() => cutOut(project).pieces);
  return pieces && saving(draft, clothPlan(pieces, project.cloth).answer, offer);
}

/** @returns undefined where it isn't worth it, or wouldn't be seen in what the shop cuts */
function saving(draft: Draft, answer: LayAnswer, { id, fix, asks }: Offer): ClothSaving | undefined {
  if (!answer.fits) return undefined;
  const { answer: now }: ClothPlan = clothOf(draft);
  const { toBuy } = answer.lay;
  const saved = now.fits ? now.lay.toBuy - toBuy : undefined;
  if (saved !== undefined && saved < WORTH_SAVING) return undefined;
  const { units } = draft.project;
  if (now.fits && amountUp(toBuy, units) >= amountUp(now.lay.toBuy, units)) return undefined;
  const oneLength = onOneLength(answer.lay, draft);
  const together = oneLength ? say`Both legs lie on one length then.` : UNSAID;
  const buy = now.fits
    ? say`Buy ${amount(toBuy)} instead of ${amount(now.lay.toBuy)}.`
    : say`Buy ${amount(toBuy)}, where nothing fits now.`;
  return {
    id,
    fix,
    toBuy,
    saved,
    oneLength,
    says: inTurn([buy, together, asks]),
  };
}

function onOneLength({ lengthNeeded, layout }: Lay, { finished }: Draft): boolean {
  const ys = finished.cut.piece.cutLine.flatMap(({ curves }) => curves.flatMap(([a, , , d]) => [a.y, d.y]));
  return layout !== 'foldedCrosswise' && lengthNeeded <= Math.max(...ys) - Math.min(...ys) + ONE_LENGTH;
}

/** What a change would give; undefined where it is refused. */
function unlessRefused<Made>(make: () => Made): Made | undefined {
  try {
    return make();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
