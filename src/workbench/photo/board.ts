import { type Homography, homographyPoint, type Point } from '../../plane';
import type { View } from '../view/view';
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

/** Where a point of the window lies on the board. */
export const onBoard = ({ x, y }: Point, { scale, left, top }: View): Point => ({
  x: (x - left) / scale,
  y: (y - top) / scale,
});

/** Where a point of the board is seen in the window. */
export const inWindow = ({ x, y }: Point, { scale, left, top }: View): Point => ({
  x: x * scale + left,
  y: y * scale + top,
});

/** Where a place of the board is on the picture, in its pixels; undefined beyond it. */
export function onPicture({ width, height }: Picture, toPicture: Homography, at: Point): Point | undefined {
  const p = homographyPoint(toPicture, at);
  return p && p.x >= 0 && p.y >= 0 && p.x <= width && p.y <= height ? p : undefined;
}
