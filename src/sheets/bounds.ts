import { cutCurves, type Piece } from '../edges';
import { curveBounds } from '../plane';
import type { Box } from './types';

/** The least box round a piece's cut line. */
export function pieceBounds(piece: Piece): Box {
  const boxes = cutCurves(piece).map(curveBounds);
  return {
    left: Math.min(...boxes.map((box) => box.left)),
    top: Math.min(...boxes.map((box) => box.top)),
    right: Math.max(...boxes.map((box) => box.right)),
    bottom: Math.max(...boxes.map((box) => box.bottom)),
  };
}
