import {
  type Ink,
  inkGrid,
  type PaperScale,
  type PlacedWord,
  placeWords,
  type Wanted,
  type WidthOf,
  type WordSetting,
} from '../../drawing';
import type { Mm } from '../../length';
import type { Box } from '../../plane';

/** A long line says again what it is after so much of it, on the drawing. */
const EVERY: Mm = 600;

/** The words of a drawing that lies on one sheet. */
export const wholeWords = (
  wanted: Wanted,
  drawn: Omit<WordSetting, 'every'> & {
    readonly box: Box;
    readonly scale: PaperScale;
    readonly ink: Ink;
    readonly widthOf: WidthOf;
  },
): readonly PlacedWord[] => {
  const { box, scale, ink, widthOf, ...setting } = drawn;
  return placeWords(wanted, [{ box, scale, crosses: inkGrid(ink, scale), taken: [] }], widthOf, {
    ...setting,
    every: EVERY,
  }).flat();
};
