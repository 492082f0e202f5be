import { cutCurves, type Piece } from '../../../edges';
import type { Draft } from '../../../project';
import { curvesBox } from '../bounds';
import { Word } from '../Word';

/** A small piece's name and how many to cut, above it. */
export function PieceName({ piece }: { readonly piece: Piece }) {
  const box = curvesBox(cutCurves(piece));
  return (
    <Word at={{ x: box.left, y: box.top }} anchor="start" dy={-8} className="word-note">
      {`${piece.name} · cut ${piece.cut}`}
    </Word>
  );
}

/** Where a piece lies among the others, as an SVG transform: the same places as on paper. */
export function placeOf({ sheets }: Draft, index: number): string | undefined {
  const shift = sheets.places[index]?.shift;
  return shift && (shift.x !== 0 || shift.y !== 0) ? `translate(${shift.x} ${shift.y})` : undefined;
}
