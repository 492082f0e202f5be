import { type Phrase, say, UNSAID } from '../words';
import type { Layer, Layout } from './types';

export const LAYOUT_WORDS: Readonly<Record<Layout, Phrase>> = {
  single: say`in a single layer`,
  foldedLengthwise: say`folded lengthwise`,
  foldedCrosswise: say`folded crosswise`,
};

/** Through what a piece is cut, in words; nothing where there is one layer. */
export const LAYER_WORDS: Readonly<Record<Layer, Phrase>> = {
  single: UNSAID,
  both: say`through both layers`,
  upper: say`upper layer only`,
  fold: say`its middle on the fold`,
};
