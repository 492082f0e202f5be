import type { PieceRef } from '../edges';
import type { Mm } from '../length';

/** Which cloth a piece is cut from: the cloth of the legs, or another one that is bought beside it. */
export type ClothKind = 'own' | 'knit' | 'rib' | 'contrast';

/** The width in which another cloth is usually sold: a contrast like the cloth itself, the others so. @source practice */
const OTHER_WIDTHS: Readonly<Record<'knit' | 'rib', Mm>> = { knit: 1500, rib: 700 };

/**
 * A band of knit is cut from the cloth itself where that is a knit; cuffs are of rib, hem bands of a contrasting cloth.
 *
 * @param piece the piece
 * @param kind of the project's cloth
 */
export function clothOfPiece({ kind: piece }: PieceRef, kind: 'woven' | 'knit'): ClothKind {
  if (piece === 'waistBand') return kind === 'knit' ? 'own' : 'knit';
  if (piece === 'cuff') return 'rib';
  return piece === 'hemBand' ? 'contrast' : 'own';
}

/** @param own the width of the project's cloth */
export const widthOfKind = (kind: ClothKind, own: Mm): Mm =>
  kind === 'knit' || kind === 'rib' ? OTHER_WIDTHS[kind] : own;
