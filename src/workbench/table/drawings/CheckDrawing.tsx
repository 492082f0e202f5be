import type { DrawingProps } from './drawing-props';
import { FinishedLeg } from './FinishedLeg';
import { LegNames } from './LegNames';

/** The finished pieces, flat, as the checks have measured them. */
export function CheckDrawing({ draft }: DrawingProps) {
  return draft.pieces.map((piece) => (
    <g key={piece.name}>
      <FinishedLeg piece={piece} />
      <LegNames piece={piece} />
    </g>
  ));
}
