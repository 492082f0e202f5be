import type { LayAnswer } from '../../../cloth';
import { pieceBounds } from '../../../drawing';
import { isSamePiece, type Piece } from '../../../edges';
import type { Mm } from '../../../length';
import type { Box } from '../../../plane';
import { clothOf, type Draft } from '../../../project';

/** What the drawing of the lay shows: apart from it, since the table asks for it before that is loaded. */
export function layBox(draft: Draft): Box {
  const { answer } = clothOf(draft);
  if (answer.fits) return groundBox(answer.lay.table);
  const { width, height } = widestOf(draft, answer);
  return { left: 0, top: 0, right: Math.max(width, answer.room) + 40, bottom: height + 40 };
}

/** A cloth into which the widest piece doesn't go. */
export type NoFit = Extract<LayAnswer, { fits: false }>;

/** The widest piece, and the room that it takes. */
export function widestOf({ pieces }: Draft, { widest }: NoFit) {
  const piece = pieces.find((one) => isSamePiece(one, widest.piece)) ?? (pieces[0] as Piece);
  const box = pieceBounds(piece);
  return { piece, box, width: box.right - box.left, height: box.bottom - box.top };
}

/** From the cloth to the nap's arrow beside it, as a share of the cloth's longer side. */
export const NAP_SHARE = 0.12;

/** The cloth with everything that is said beside it. */
function groundBox({ width, length }: { readonly width: Mm; readonly length: Mm }): Box {
  const longer = Math.max(width, length);
  return {
    left: -0.04 * longer,
    top: -0.06 * longer,
    right: width + (NAP_SHARE + 0.03) * longer,
    bottom: length + 0.08 * longer,
  };
}
