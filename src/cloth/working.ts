import { SELVEDGE } from '../check';
import { pieceName } from '../edges';
import { type Edge, pathThrough, point, type WorkingStep } from '../plane';
import { amount, inTurn, isSaid, mm, type Phrase, part, rounding, say, share, UNSAID } from '../words';
import { LAYOUT_WORDS } from './layout-words';
import { ENDS, tableFor } from './table';
import type { Lay, LayAnswer, LayCloth } from './types';

/**
 * How the lay and the amount came about, step by step. The lines are on the table on which the cloth lies.
 *
 * @param answer the lay, or why there is none
 * @param cloth as it is bought
 * @param oneHanded whether pieces are cut for one side only
 */
export function layWorking(answer: LayAnswer, cloth: LayCloth, oneHanded = false): readonly WorkingStep[] {
  const { layout } = answer.fits ? answer.lay : answer;
  const table = tableFor(cloth, layout);
  const across = lineAcross(table.left, table.left + table.room);
  const width = step(
    'width',
    inTurn([
      washWords(cloth),
      layout === 'foldedLengthwise'
        ? say`The cloth lies ${LAYOUT_WORDS[layout]}; nothing is cut within ${mm(SELVEDGE)} of a selvedge, nor in the bend of the fold.`
        : say`The cloth lies ${LAYOUT_WORDS[layout]}; nothing is cut within ${mm(SELVEDGE)} of a selvedge.`,
    ]),
    say`width that can be cut = ${part(table.width)} − ${part(table.width - table.room)}${rounding(table.room, table.width, table.room - table.width)} = ${part(table.room)}`,
    [across],
  );
  const sides = oneHanded
    ? [
        step(
          'sides',
          say`The left and the right leg differ, so each is cut once: the cloth lies in a single layer, right side up, and every piece printed side up. Two layers would give mirrored pairs.`,
          UNSAID,
          [],
        ),
      ]
    : [];
  return [width, ...sides, ...(answer.fits ? lengthSteps(answer.lay, cloth) : [noFit(answer)])];
}

const step = (id: string, sentence: Phrase, formula: Phrase, lines: readonly Edge[]): WorkingStep => ({
  id: `cloth.${id}`,
  station: 'cloth',
  sentence,
  formula,
  lines,
});

function washWords(cloth: LayCloth): Phrase {
  const { width, washFirst, shrinkWidth } = cloth;
  if (!washFirst)
    return say`The cloth is ${mm(width)} wide and is not washed first: the pieces themselves are drawn larger.`;
  return say`The cloth is ${mm(width)} wide; its wash takes ${share(shrinkWidth)} of that and leaves ${mm(width * (1 - shrinkWidth))}.`;
}

function lengthSteps(lay: Lay, cloth: LayCloth): readonly WorkingStep[] {
  const { layout, table, lengthNeeded, lowerBound, waste } = lay;
  const twice = layout === 'foldedCrosswise';
  const losing = cloth.washFirst && cloth.shrinkLength > 0;
  const lies = lengthNeeded + cloth.repeat + ENDS;
  const reckoned = say`${part(lengthNeeded)}${repeatWords(cloth)} + ${part(ENDS)}${rounding(lies, lengthNeeded, cloth.repeat, ENDS)} = ${part(lies)}`;
  return [
    step(
      'lay',
      inTurn([
        cloth.oneWay
          ? say`The pieces are laid on their grain, all the same way up, as close as their cut lines let them; their height or their area alone would take ${mm(lowerBound)}.`
          : say`The pieces are laid on their grain, end for end where that is shorter, as close as their cut lines let them; their height or their area alone would take ${mm(lowerBound)}.`,
        say`${share(Math.round(waste * 1000) / 1000)} of this cloth is left over.`,
      ]),
      twice
        ? say`length = 2 × ${part(table.length)}${rounding(lengthNeeded, { mm: table.length, times: 2 })} = ${part(lengthNeeded)}`
        : say`length = ${mm(lengthNeeded)}`,
      [{ name: 'length', curves: pathThrough(point(0, 0), point(0, table.length)) }],
    ),
    ...repeatSteps(cloth, layout),
    step(
      'buy',
      losing
        ? say`Both ends are straightened along a thread, and the first wash takes its share of the length: buy ${amount(lay.toBuy)}.`
        : say`Both ends are straightened along a thread: buy ${amount(lay.toBuy)}.`,
      losing
        ? say`${reckoned}; to buy = ${part(lies)} ÷ (1 − ${share(cloth.shrinkLength)})${rounding(lay.toBuy, { mm: lies, times: 1 / (1 - shownShare(cloth.shrinkLength)) })} = ${part(lay.toBuy)}`
        : say`to buy = ${reckoned}`,
      [],
    ),
  ];
}

const repeatWords = ({ repeat }: LayCloth): Phrase => (repeat > 0 ? say` + ${part(repeat)}` : UNSAID);

/** A share as it is printed, in tenths of a percent. */
const shownShare = (value: number): number => Math.round(value * 1000) / 1000;

/** What a repeat asks of the lay. */
function repeatSteps({ repeat, repeatAcross }: LayCloth, layout: Lay['layout']): readonly WorkingStep[] {
  const across =
    repeatAcross === 0
      ? UNSAID
      : layout === 'foldedLengthwise'
        ? say`The fold lies on the middle of a stripe or between two, so that stripes mirror about centre front and back: a quarter of a repeat of ${mm(repeatAcross)} is kept free for it.`
        : say`The side lines of both legs lie on the same place of the stripe, so that stripes mirror about centre front and back: half a repeat of ${mm(repeatAcross)} is kept free for it.`;
  const along =
    repeat === 0
      ? UNSAID
      : say`The hems lie on the same place of the check, so that checks meet up both inseams and at the centres from the hem: one repeat of ${mm(repeat)} more is bought, so that you can choose where it begins.`;
  const sentence = inTurn([across, along]);
  return isSaid(sentence) ? [step('repeat', sentence, UNSAID, [])] : [];
}

function noFit({ widest, room, layout, instead }: Extract<LayAnswer, { fits: false }>): WorkingStep {
  return step(
    'no-fit',
    say`The ${pieceName(widest.piece)} is ${mm(widest.width)} wide, and ${LAYOUT_WORDS[layout]} only ${mm(room)} can be cut. What would fit: ${inTurn(instead, '; ')}.`,
    UNSAID,
    [lineAcross(0, widest.width)],
  );
}

const lineAcross = (from: number, to: number): Edge => ({
  name: 'width',
  curves: pathThrough(point(from, 0), point(to, 0)),
});
