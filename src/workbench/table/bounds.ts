import { type Curve, curveBounds } from '../../plane';
import type { Box } from '../../sheets';

/** The least box round all curves. */
export function curvesBox(curves: readonly Curve[]): Box {
  return boxRound(curves.map(curveBounds));
}

/** The least box round boxes. */
export function boxRound(boxes: readonly Box[]): Box {
  return {
    left: Math.min(...boxes.map((box) => box.left)),
    top: Math.min(...boxes.map((box) => box.top)),
    right: Math.max(...boxes.map((box) => box.right)),
    bottom: Math.max(...boxes.map((box) => box.bottom)),
  };
}
