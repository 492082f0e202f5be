import type { Piece } from '../edges';
import type { Mm } from '../length';
import { point } from '../plane';
import { pieceBounds } from './bounds';
import { type PieceDrawing, pieceDrawing } from './drawing';
import type { PiecePlace } from './types';

/** Between two pieces on the paper: room to cut each without touching the other. */
const GAP: Mm = 10;

/** Pieces beside each other, tops level; the first stays where it was drafted. */
export function placePieces(pieces: readonly Piece[]): readonly PiecePlace[] {
  const places: PiecePlace[] = [];
  let edge = Number.NaN;
  let level = Number.NaN;
  for (const piece of pieces) {
    const box = pieceBounds(piece);
    const shift = places.length === 0 ? point(0, 0) : point(edge + GAP - box.left, level - box.top);
    if (places.length === 0) level = box.top;
    edge = box.right + shift.x;
    places.push({ piece: piece.name, shift });
  }
  return places;
}

/** The pieces' drawings, each where the plan puts it. */
export function placedDrawings(pieces: readonly Piece[], places: readonly PiecePlace[]): readonly PieceDrawing[] {
  return pieces.map((piece, i) => pieceDrawing(piece, places[i]?.shift));
}
