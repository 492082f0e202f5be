import type { PieceText } from '../edges';
import { formatLength, type Mm } from '../length';
import { leftOf, moved } from '../plane';
import type { Draft } from '../project';
import { controlLengths, type PieceDrawing } from '../sheets';

/** The height of the capitals, and from the line to the words, on the paper. */
const CAPITALS: Mm = 2;
const AWAY: Mm = 1.8;

/** The drawings with the lengths that prove the joins written beside their lines. */
export function withControlWords(draft: Draft, drawings: readonly PieceDrawing[]): readonly PieceDrawing[] {
  const { printed, sheets, project } = draft;
  const { scale } = project.paper;
  const texts = controlLengths(printed, sheets, project.paper).map(({ name, length, at, way }): PieceText => {
    const degrees = (Math.atan2(way.y, way.x) * 180) / Math.PI;
    const backwards = degrees > 90 || degrees <= -90;
    const turn = backwards ? degrees - Math.sign(degrees) * 180 : degrees;
    // Words stand above their line as they are read.
    const up = backwards ? -1 : 1;
    return {
      at: moved(at, leftOf(way), (up * AWAY) / scale),
      text: `${name}: ${formatLength(length, project.units)} when joined`,
      size: CAPITALS / scale,
      turn,
      role: 'note',
    };
  });
  return drawings.map((drawing, i) => (i === 0 ? { ...drawing, texts: [...drawing.texts, ...texts] } : drawing));
}
