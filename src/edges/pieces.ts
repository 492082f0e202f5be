import { limbGirth, passedBelow } from '../body';
import type { Leg } from '../leg';
import type { Mm } from '../length';
import { distance } from '../plane';
import { say, words } from '../words';
import { type CasingLines, waistOpening } from './casing';
import { cordPieces } from './cords';
import { hemFacing, waistFacing } from './facings';
import type { EdgeChoices, FinishedLeg } from './finish';
import { pocketGrown } from './growth';
import { ribCuffGirth } from './hem';
import { type BodyGirths, bandRound, hemHeight, notionsOf } from './notions';
import type { Piece } from './piece';
import { countedWords, KIND_NAMES } from './piece-names';
import { patchPocket } from './pocket';
import { rectanglePiece } from './rectangle';
import { seamAllowance } from './seams';

/** Bands and casings meet the legs at the centre seams and halfway between them. */
const QUARTERS = [0.25, 0.5, 0.75] as const;

/**
 * The pieces beside the leg: separate casing, knit band, facings, bands, cuffs, pocket, cords sewn of the cloth. Each with its own allowances,
 * grain and count.
 *
 * @param leg the leg
 * @param finished the finished leg
 * @param choices about the edges
 * @param body girths for bands and cuffs
 * @param both the left and the right one, finished, where they differ
 */
export function otherPieces(
  leg: Leg,
  finished: FinishedLeg,
  choices: EdgeChoices,
  body: BodyGirths,
  both: readonly FinishedLeg[] = [finished],
): readonly Piece[] {
  const { waist, hem, allowances, pocket, growth } = choices;
  // What is sewn to the leg is as long as the leg's edge is when it is sewn.
  const { cut } = finished;
  const { heights } = cut;
  const opening = waistRound(both.map(({ casing }) => casing));
  const pieces: Piece[] = [];
  if (waist.finish === 'facedCasing') pieces.push(waistFacing(cut, allowances));
  if (heights.kind === 'seamed') {
    const knit = waist.finish === 'knitBand';
    const kind = knit ? 'waistBand' : 'casing';
    pieces.push(
      rectanglePiece({
        kind,
        cut: 1,
        length: knit ? bandRound(choices, body, opening) : waistRound(both.map(({ cut: one }) => one.casing)),
        height: heights.height,
        folded: true,
        allowance: seamAllowance(allowances, kind),
        marks: quartersOf(both),
        grain: knit ? 'across' : 'along',
        words: [
          countedWords(knit ? say`waist band, of knit` : KIND_NAMES.casing, 1),
          words`ends meet at centre back`,
          ...(both.length > 1 ? [words`this half to the left leg`] : []),
        ],
      }),
    );
  }
  if (hem.finish === 'facedHem') pieces.push(hemFacing(cut, allowances));
  if (finished.hemPlan.kind === 'seamed') {
    const rib = hem.finish === 'ribCuff';
    const kind = rib ? 'cuff' : 'hemBand';
    const height = hemHeight(leg, finished.hemPlan, body);
    pieces.push(
      rectanglePiece({
        kind,
        cut: 2,
        length: rib
          ? ribCuffGirth(
              limbGirth(body, height),
              Math.max(...passedBelow(body, height).map(({ girth }) => girth)),
              hem.ribStretch,
            )
          : distance(...cut.hem.raw),
        height: 2 * hem.bandHeight * (rib ? 1 : growth.crosswise),
        folded: true,
        allowance: seamAllowance(allowances, kind),
        marks: QUARTERS,
        grain: rib ? 'across' : 'along',
        words: [countedWords(rib ? say`cuff, of rib` : KIND_NAMES.hemBand, 2), words`ends meet at the inseam`],
      }),
    );
  }
  if (pocket) pieces.push(patchPocket(pocketGrown(pocket, growth), allowances.inseam));
  return [...pieces, ...cordPieces(choices, notionsOf(leg, finished, choices, body, opening))];
}

/** The waist all round, of a left and a right casing, or of one for both legs. */
export const waistRound = (casings: readonly CasingLines[]): Mm =>
  casings.reduce((sum, casing) => sum + waistOpening(casing), 0) / casings.length;

/** Where a band meets the centre front seam and the quarters of both legs, the left one first. */
function quartersOf([left, right]: readonly FinishedLeg[]): readonly number[] {
  if (!left || !right) return QUARTERS;
  const front = waistOpening(left.cut.casing) / (waistOpening(left.cut.casing) + waistOpening(right.cut.casing));
  return [front / 2, front, (front + 1) / 2];
}
