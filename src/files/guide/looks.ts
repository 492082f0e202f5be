import { INK } from '../../drawing';
import type { Face, PictureLine } from '../../sewing';

/** How a line of a step's picture is drawn; widths and dashes in hundredths of the picture's longer side. */
export interface PictureLook {
  readonly width: number;
  readonly colour: string;
  readonly dash: readonly number[];
}

/** A line type for each meaning; what the step sews, folds or finishes is indigo, and nothing else is. */
export const PICTURE_LOOKS: Readonly<Record<PictureLine, PictureLook>> = {
  edge: { width: 0.3, colour: INK.cut, dash: [] },
  fold: { width: 0.22, colour: INK.level, dash: [2.2, 0.6, 0.3, 0.6] },
  litFold: { width: 0.75, colour: INK.mark, dash: [2.6, 0.7, 0.4, 0.7] },
  side: { width: 0.22, colour: INK.level, dash: [3.4, 0.9] },
  stitch: { width: 0.22, colour: INK.sewn, dash: [1, 0.6] },
  lit: { width: 0.75, colour: INK.mark, dash: [1.8, 0.7] },
  hidden: { width: 0.22, colour: INK.level, dash: [0.3, 0.6] },
  overlock: { width: 0.4, colour: INK.mark, dash: [] },
  mark: { width: 0.35, colour: INK.cut, dash: [] },
  notch: { width: 0.75, colour: INK.cut, dash: [] },
  pin: { width: 0.28, colour: INK.cut, dash: [] },
  gather: { width: 0.3, colour: INK.level, dash: [] },
  thin: { width: 0.16, colour: INK.sign, dash: [] },
  cord: { width: 1.3, colour: INK.level, dash: [] },
};

/** Width of the strokes that tell a face, in hundredths of the picture's longer side. */
const HATCH = 0.13;

/** What lies with its face up: the right side tinted and plain, the wrong side pale and hatched, and so on. */
export const FACE_LOOKS: Readonly<
  Record<Face, { readonly fill: string; readonly hatch: string; readonly width: number }>
> = {
  right: { fill: '#DCE3EE', hatch: '#DCE3EE', width: HATCH },
  wrong: { fill: '#FBF8F1', hatch: '#C9BFAF', width: HATCH },
  elastic: { fill: '#FFFFFF', hatch: '#8A8175', width: HATCH },
  paper: { fill: '#FFFFFF', hatch: '#FFFFFF', width: HATCH },
  printedDown: { fill: '#FFFFFF', hatch: INK.level, width: 2.5 * HATCH },
};
