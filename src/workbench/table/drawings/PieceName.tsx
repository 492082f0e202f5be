import { pieceBounds, uprightPlaces } from '../../../drawing';
import { type Piece, pieceName } from '../../../edges';
import type { Draft } from '../../../project';
import { number, words } from '../../../words';
import { Word } from '../Word';

/** A small piece's name and how many to cut, inside it: along an upright piece, across any other. */
export function PieceName({ piece }: { readonly piece: Piece }) {
  const box = pieceBounds(piece);
  const upright = box.bottom - box.top > 2 * (box.right - box.left);
  const at = upright
    ? { x: box.left + 0.3 * (box.right - box.left), y: box.top + 0.3 * (box.bottom - box.top) }
    : { x: (box.left + box.right) / 2, y: box.top + 0.42 * (box.bottom - box.top) };
  return (
    <Word at={at} turn={upright ? -90 : 0} className="word-note word-bare">
      {words`${pieceName(piece)} · cut ${number(piece.cut, 0)}`}
    </Word>
  );
}

/** Where a piece lies among the others, as an SVG transform; on paper it may lie elsewhere. */
export function placeOf({ pieces }: Draft, index: number): string | undefined {
  const shift = uprightPlaces(pieces)[index]?.shift;
  return shift && (shift.x !== 0 || shift.y !== 0) ? `translate(${shift.x} ${shift.y})` : undefined;
}
