import type { PiecePlace, Wanted } from '../../drawing';
import { blockOf, halvesOf, lineWords, type SaidOfAll } from '../content/piece-words';
import { type NestedPiece, sharedLines } from './pieces';

/**
 * What is said of all bodies together: each piece's name, which half is which, and what the shared lines are. Whose a
 * line is says its number.
 */
export function nestedWords(pieces: readonly NestedPiece[], places: readonly PiecePlace[], of: SaidOfAll): Wanted {
  const all = pieces.map(({ whole, members }, i) => {
    const { texts, ...shared } = sharedLines(members);
    return { whole: { ...whole, texts }, shared: { ...shared, texts, cutLine: [] }, place: places[i] as PiecePlace };
  });
  return {
    once: [
      ...all.map(({ whole, place }) => blockOf(whole, place, [])),
      ...all.flatMap(({ whole, place }) => halvesOf(whole, place)),
    ],
    along: all.flatMap(({ shared, place }) => lineWords(shared, place, of)),
  };
}
