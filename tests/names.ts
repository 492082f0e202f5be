import { pieceName as named, type PieceRef } from '../src/edges';
import { words } from '../src/words';

/** What a piece is called in English. */
export const pieceName = (piece: PieceRef): string => words`${named(piece)}`;
