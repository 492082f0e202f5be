import type { Layer, Layout } from './types';

export const LAYOUT_WORDS: Readonly<Record<Layout, string>> = {
  single: 'in a single layer',
  foldedLengthwise: 'folded lengthwise',
  foldedCrosswise: 'folded crosswise',
};

/** Through what a piece is cut, in words; nothing where there is one layer. */
export const LAYER_WORDS: Readonly<Record<Layer, string>> = {
  single: '',
  both: 'through both layers',
  upper: 'upper layer only',
  fold: 'its middle on the fold',
};
