import { MM_PER_INCH, type Mm, type Units } from '../length';
import { layAnswer } from './answer';
import type { LayPiece } from './lay-piece';
import type { LayAnswer, LayCloth, Layout } from './types';

/**
 * Widths in which cloth is sold: 36, 45 and 60 in; in metres with the 112 cm in which 44 in is sold there.
 *
 * @source widths published in inches, 35/36 … 66; in metres memory
 */
const COMMON_WIDTHS: Readonly<Record<Units, readonly Mm[]>> = {
  cm: [900, 1120, 1150, 1400, 1500],
  inch: [36, 45, 60].map((inches) => inches * MM_PER_INCH),
};

/** The same width as the project's own, for people. */
const SAME: Mm = 5;

/** The same pieces on one of several widths. */
export interface WidthAnswer {
  readonly width: Mm;
  /** Whether it is the project's own. */
  readonly own: boolean;
  readonly answer: LayAnswer;
}

/**
 * The widths in which cloth is sold, and the project's own, side by side, the narrowest first.
 *
 * @param pieces made ready to be laid
 * @param cloth everything but the width counts
 * @param chosen the layout
 * @param units decide which widths are usual
 */
export function widthAnswers(
  pieces: readonly LayPiece[],
  cloth: LayCloth,
  chosen: Layout | 'best',
  units: Units,
): readonly WidthAnswer[] {
  const usual = COMMON_WIDTHS[units].filter((width) => Math.abs(width - cloth.width) > SAME);
  return [...usual, cloth.width]
    .sort((a, b) => a - b)
    .map((width) => ({
      width,
      own: width === cloth.width,
      answer: layAnswer(pieces, { ...cloth, width }, chosen),
    }));
}
