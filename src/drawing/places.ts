import { cutCurves, type Piece, pieceRef } from '../edges';
import type { Mm } from '../length';
import { type Box, curvesBounds, point } from '../plane';
import { type PieceDrawing, pieceDrawing } from './drawing';
import type { PiecePlace } from './types';

/** Between two pieces on the paper: room to cut each without touching the other. */
export const PIECE_GAP: Mm = 10;

/** The least box round a piece's cut line. */
export const pieceBounds = (piece: Piece): Box => curvesBounds(cutCurves(piece));

/**
 * Places in which every grainline runs as it was drafted: the first piece stays where it is; the others stand in columns
 * on its right, below one another as far down as the first one reaches. For the screen, and for files that are not
 * spread over sheets.
 */
export function uprightPlaces(pieces: readonly Piece[]): readonly PiecePlace[] {
  const [first, ...others] = pieces;
  if (!first) return [];
  const main = pieceBounds(first);
  let left = main.right + PIECE_GAP;
  let right = left;
  let top = main.top;
  const places: PiecePlace[] = [{ piece: pieceRef(first), turn: 0, shift: point(0, 0) }];
  for (const piece of others) {
    const box = pieceBounds(piece);
    const height = box.bottom - box.top;
    if (top > main.top && top + height > main.bottom) {
      left = right + PIECE_GAP;
      top = main.top;
    }
    places.push({ piece: pieceRef(piece), turn: 0, shift: point(left - box.left, top - box.top) });
    right = Math.max(right, left + box.right - box.left);
    top += height + PIECE_GAP;
  }
  return places;
}

/** The pieces' drawings, each at its place. */
export function placedDrawings(pieces: readonly Piece[], places: readonly PiecePlace[]): readonly PieceDrawing[] {
  return pieces.map((piece, i) => pieceDrawing(piece, places[i]?.shift, places[i]?.turn));
}
