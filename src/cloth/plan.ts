import type { Piece, PieceRef } from '../edges';
import type { Mm, Units } from '../length';
import type { WorkingStep } from '../plane';
import { layAnswer } from './answer';
import { type ClothKind, clothOfPiece, widthOfKind } from './kinds';
import { type LayPiece, layPiece } from './lay-piece';
import type { LayAnswer, LayCloth, Layout } from './types';
import { type WidthAnswer, widthAnswers } from './widths';
import { layWorking } from './working';

/** What is chosen about the cloth and its lay. */
export interface ClothChoices extends LayCloth {
  readonly kind: 'woven' | 'knit';
  readonly layout: Layout | 'best';
}

/** A cloth that is bought beside the legs' own: for bands and cuffs. */
export interface OtherCloth {
  readonly kind: Exclude<ClothKind, 'own'>;
  readonly width: Mm;
  readonly pieces: readonly PieceRef[];
  readonly answer: LayAnswer;
}

/** How the cloth is laid, and how much of it that takes. */
export interface ClothPlan {
  /** The lay of the project's own cloth. */
  readonly answer: LayAnswer;
  readonly others: readonly OtherCloth[];
  readonly working: readonly WorkingStep[];
}

/**
 * Lays the pieces on the project's cloth, and bands and cuffs of other cloths on theirs.
 *
 * @param pieces finished pieces, allowances included; the leg among them
 * @param choices the cloth and how it lies
 */
export function clothPlan(pieces: readonly Piece[], choices: ClothChoices): ClothPlan {
  const answer = layAnswer(piecesOf(pieces, choices, 'own'), choices, choices.layout);
  const others = (['contrast', 'knit', 'rib'] as const).flatMap((kind): readonly OtherCloth[] => {
    const own = piecesOf(pieces, choices, kind);
    if (own.length === 0) return [];
    const width = widthOfKind(kind, choices.width);
    const cloth: LayCloth = { ...choices, width, repeat: 0, repeatAcross: 0 };
    return [{ kind, width, pieces: own.map(({ ref }) => ref), answer: layAnswer(own, cloth, 'single') }];
  });
  const oneHanded = piecesOf(pieces, choices, 'own').some((piece) => piece.oneHanded);
  return { answer, others, working: layWorking(answer, choices, oneHanded) };
}

/**
 * The same pieces on the widths in which cloth is sold, side by side.
 *
 * @param pieces finished pieces
 * @param choices the cloth and how it lies
 * @param units decide which widths are usual
 */
export const clothWidths = (pieces: readonly Piece[], choices: ClothChoices, units: Units): readonly WidthAnswer[] =>
  widthAnswers(piecesOf(pieces, choices, 'own'), choices, choices.layout, units);

const made = new WeakMap<Piece, LayPiece>();

/** A finished piece never changes, so neither does what the lay makes of it. */
function piecesOf(pieces: readonly Piece[], { kind }: ClothChoices, cloth: ClothKind): readonly LayPiece[] {
  return pieces
    .filter((piece) => clothOfPiece(piece, kind) === cloth)
    .map((piece) => {
      const ready = made.get(piece) ?? layPiece(piece);
      made.set(piece, ready);
      return ready;
    });
}
