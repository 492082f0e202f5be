import type { Homography, Point } from '../../plane';
import { type Flat, type Lens, straightPixels, TRUE_LENS, viewToPicture, viewToPlane } from '../../trace';
import type { Picture } from './picture';
import type { MarkId } from './work';

/** A mark on the board that is shown: the picture as it is, in pixels, or flattened, in millimetres. */
export interface Mark {
  readonly id: MarkId;
  readonly at: Point;
  readonly name: string;
  /** One or two letters beside it. */
  readonly letter?: string;
}

/** The way between a board and the picture, in its pixels; undefined where one doesn't show the other. */
export interface Board {
  /** From the board to the pixels of a true lens, and how the lens bends those round the picture's middle. */
  readonly straight: Homography;
  readonly lens: Lens;
  readonly toPicture: (onBoard: Point) => Point | undefined;
  readonly fromPicture: (onPicture: Point) => Point | undefined;
}

/** The picture as it is. */
export const AS_IT_IS: Board = {
  straight: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  lens: TRUE_LENS,
  toPicture: (p) => p,
  fromPicture: (p) => p,
};

/** Whether a mark is shown on the flattened paper, and not on the picture as it is. */
export const isOnPaper = ({ kind }: MarkId): boolean => kind === 'landmark' || kind === 'point';

/** Whether a mark can be taken away: the rectangle and the fifth length keep theirs. */
export const isRemovable = ({ kind }: MarkId): boolean => kind !== 'corner' && kind !== 'check';

/** The flattened paper. */
export const boardOf = ({ view }: Flat): Board => ({
  straight: straightPixels(view),
  lens: view.lens,
  toPicture: (p) => viewToPicture(view, p),
  fromPicture: (p) => viewToPlane(view, p),
});

/** Where a place of the board is on the picture, in its pixels; undefined beyond it. */
export function onPicture({ width, height }: Picture, { toPicture }: Board, at: Point): Point | undefined {
  const p = toPicture(at);
  return p && p.x >= 0 && p.y >= 0 && p.x <= width && p.y <= height ? p : undefined;
}
