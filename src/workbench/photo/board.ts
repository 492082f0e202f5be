import { type Homography, homographyPoint, type Point } from '../../plane';
import { flatOf } from './flat';
import type { Picture } from './picture';
import type { MarkId, Shot } from './work';

/** A mark on the board that is shown: the picture as it is, in pixels, or flattened, in millimetres. */
export interface Mark {
  readonly id: MarkId;
  readonly at: Point;
  readonly name: string;
  /** One or two letters beside it. */
  readonly letter?: string;
}

/** The way between a board and the picture, in its pixels. */
export interface Board {
  readonly toPicture: Homography;
  readonly fromPicture: Homography;
}

const SAME: Homography = [1, 0, 0, 0, 1, 0, 0, 0, 1];

/** The picture as it is. */
export const AS_IT_IS: Board = { toPicture: SAME, fromPicture: SAME };

/** Whether a mark is shown on the flattened paper, and not on the picture as it is. */
export const isOnPaper = ({ kind }: MarkId): boolean => kind === 'landmark' || kind === 'point';

/** The board on which a mark is shown; undefined where the photograph can't be flattened. */
export function boardOf(shot: Shot, id: MarkId): Board | undefined {
  if (!isOnPaper(id)) return AS_IT_IS;
  const flat = flatOf(shot);
  return flat && { toPicture: flat.toPicture, fromPicture: flat.toPaper };
}

/** Where a place of the board is on the picture, in its pixels; undefined beyond it. */
export function onPicture({ width, height }: Picture, toPicture: Homography, at: Point): Point | undefined {
  const p = homographyPoint(toPicture, at);
  return p && p.x >= 0 && p.y >= 0 && p.x <= width && p.y <= height ? p : undefined;
}
