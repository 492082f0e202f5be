import { INK, type PlacedWord } from '../../drawing';
import type { PageFrame } from './page-frame';
import type { Pen } from './pen';

/**
 * A drawing's words, on their own layer.
 *
 * @param also.turn by how many degrees the drawing lies turned on the page
 */
export function drawWords(
  pen: Pen,
  words: readonly PlacedWord[],
  { map }: Pick<PageFrame, 'map'>,
  { colour = INK.words, turn: by = 0 }: { readonly colour?: string; readonly turn?: number } = {},
): void {
  if (words.length === 0) return;
  pen.onLayer('text', () => {
    for (const { text, at, pt, turn } of words)
      pen.words(text, map(at), { pt, colour, align: 'middle', turn: turn + by });
  });
}
