import { isLeg, pieceKey } from '../../../edges';
import type { DrawingProps } from './drawing-props';
import { FinishedLeg } from './FinishedLeg';
import { LegNames } from './LegNames';
import { PieceName, placeOf } from './PieceName';

/** The finished pieces, flat, as the checks have measured them. */
export function CheckDrawing({ draft }: DrawingProps) {
  return draft.pieces.map((piece, i) => (
    <g key={pieceKey(piece)} transform={placeOf(draft, i)}>
      <FinishedLeg piece={piece} />
      {isLeg(piece) ? <LegNames piece={piece} /> : <PieceName piece={piece} />}
    </g>
  ));
}
