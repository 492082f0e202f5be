import type { Mm } from '../length';
import { words } from '../words';
import type { EdgeChoices } from './finish';
import type { Notions } from './notions';
import type { Piece } from './piece';
import { countedWords, KIND_NAMES, type StraightKind } from './piece-names';
import { rectanglePiece } from './rectangle';

/** A narrow seam fills the tube that it is turned into; a thin cord has no room for more than its own width. @source practice */
const SEAM: Mm = 6;
/** The halves of a waist cord are joined with this, and the ends turned in. @source practice */
const ENDS: Mm = 10;

/**
 * Cords that are sewn from the cloth: a strip twice as wide as the cord, folded lengthwise, sewn and turned. A waist
 * cord is cut in two halves, which need less cloth in one length and are joined at centre back, where it is tacked.
 *
 * @param choices about the edges
 * @param notions lengths of the cords, ready to tie
 */
export function cordPieces({ waist, hem }: EdgeChoices, { cordLength, hemCordLength }: Notions): readonly Piece[] {
  return [
    ...(waist.cord === 'ofCloth' && cordLength !== undefined
      ? [cordPiece('waistCord', cordLength / 2, waist.cordWidth, words`joined at centre back`)]
      : []),
    ...(hem.cord === 'ofCloth' && hemCordLength !== undefined
      ? [cordPiece('hemCord', hemCordLength, hem.cordWidth, words`one for each hem`)]
      : []),
  ];
}

const cordPiece = (kind: StraightKind, length: Mm, width: Mm, note: string): Piece =>
  rectanglePiece({
    kind,
    cut: 2,
    length,
    height: 2 * width,
    folded: true,
    allowance: (edge) => (edge === 'upper' || edge === 'lower' ? Math.min(SEAM, width) : ENDS),
    marks: [],
    grain: 'along',
    words: [countedWords(KIND_NAMES[kind], 2), note],
  });
