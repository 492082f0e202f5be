import { cutCurves, type Piece } from '../../../edges';
import { curvesBox } from '../bounds';

import { Word } from '../Word';

/** “front” and “back” in words either side of the side line, and what one looks for there in vain. */
export function LegNames({ piece }: { readonly piece: Piece }) {
  const box = curvesBox(cutCurves(piece));
  const y = box.top + (box.bottom - box.top) * 0.48;
  return (
    <>
      <Word at={{ x: box.left / 2.6, y }} className="word-part">
        back
      </Word>
      <Word at={{ x: box.right / 2.6, y }} className="word-part">
        front
      </Word>
      <Word at={{ x: 0, y }} turn={-90} dy={-6} className="word-note word-bare">
        side, no seam here
      </Word>
    </>
  );
}
