import { cutCurves, type Piece } from '../edges';
import { curveBounds } from '../plane';
import type { Box } from './types';

/** The least box round a piece's cut line. */
export const pieceBounds = (piece: Piece): Box => boxRound(cutCurves(piece).map(curveBounds));

/** The least box round boxes. */
export const boxRound = (boxes: readonly Box[]): Box => ({
  left: Math.min(...boxes.map((box) => box.left)),
  top: Math.min(...boxes.map((box) => box.top)),
  right: Math.max(...boxes.map((box) => box.right)),
  bottom: Math.max(...boxes.map((box) => box.bottom)),
});
