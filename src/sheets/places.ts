import type { Piece } from '../edges';
import type { Mm } from '../length';
import { point } from '../plane';
import { pieceBounds } from './bounds';
import { type PieceDrawing, pieceDrawing } from './drawing';
import type { PiecePlace } from './types';

/** Between two pieces on the paper: room to cut each without touching the other. */
const GAP: Mm = 10;

/**
 * The first piece stays where it was drafted; the others stand in columns on its right, below one another as far down
 * as the first one reaches.
 */
export function placePieces(pieces: readonly Piece[]): readonly PiecePlace[] {
  const [first, ...others] = pieces;
  if (!first) return [];
  const main = pieceBounds(first);
  let left = main.right + GAP;
  let right = left;
  let top = main.top;
  const places: PiecePlace[] = [{ piece: first.name, shift: point(0, 0) }];
  for (const piece of others) {
    const box = pieceBounds(piece);
    const height = box.bottom - box.top;
    if (top > main.top && top + height > main.bottom) {
      left = right + GAP;
      top = main.top;
    }
    places.push({ piece: piece.name, shift: point(left - box.left, top - box.top) });
    right = Math.max(right, left + box.right - box.left);
    top += height + GAP;
  }
  return places;
}

/** The pieces' drawings, each where the plan puts it. */
export function placedDrawings(pieces: readonly Piece[], places: readonly PiecePlace[]): readonly PieceDrawing[] {
  return pieces.map((piece, i) => pieceDrawing(piece, places[i]?.shift));
}
