import { pieceBounds } from '../../../drawing';
import { isDrawnLeft, type LineKind, type Piece, pieceName } from '../../../edges';
import { pathStart } from '../../../plane';
import { said, words } from '../../../words';
import { Word } from '../Word';

/** “front” and “back” in words either side of the side line, and what one looks for there in vain. */
export function LegNames({ piece }: { readonly piece: Piece }) {
  const box = pieceBounds(piece);
  const middle = (box.top + box.bottom) / 2;
  const whole = { from: box.top, to: box.bottom };
  const gaps = gapsBetweenLines(piece);
  const amid = gaps.find(({ to }) => to > middle) ?? whole;
  const widest = gaps.toSorted((a, b) => b.to - b.from - (a.to - a.from))[0] ?? whole;
  const y = (amid.from + amid.to) / 2;
  return (
    <>
      <Word at={{ x: box.left / 2.6, y }} dy={7} className="word-part">
        {isDrawnLeft(piece) ? words`front` : words`back`}
      </Word>
      <Word at={{ x: box.right / 2.6, y }} dy={7} className="word-part">
        {isDrawnLeft(piece) ? words`back` : words`front`}
      </Word>
      {piece.side && (
        <Word at={{ x: 0, y: box.top }} dy={-14} className="word-part">
          {said(pieceName(piece))}
        </Word>
      )}
      <Word at={{ x: 0, y: (widest.from + widest.to) / 2 }} turn={-90} dy={-6} className="word-note word-bare">
        {words`side, no seam here`}
      </Word>
    </>
  );
}

interface Gap {
  readonly from: number;
  readonly to: number;
}

/** What runs from seam to seam across a leg. */
const ACROSS: readonly LineKind[] = ['level', 'lengthen', 'stitching'];

/** The heights between the lines that run across a leg: there a word meets none of them. */
function gapsBetweenLines({ lines }: Piece): readonly Gap[] {
  const heights = lines.filter(({ kind }) => ACROSS.includes(kind)).map(({ curves }) => pathStart(curves).y);
  heights.sort((a, b) => a - b);
  return heights.slice(1).map((to, i) => ({ from: heights[i] as number, to }));
}
