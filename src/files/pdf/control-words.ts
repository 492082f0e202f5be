import type { PieceDrawing } from '../../drawing';
import type { PieceText } from '../../edges';
import type { Mm } from '../../length';
import { dot, leftOf, moved, scale as scaled } from '../../plane';
import { type Draft, sheetsOf } from '../../project';
import { controlLengths } from '../../sheets';
import { mm, printPhrase, say } from '../../words';

/** The height of the capitals, and from the line to the words, on the paper. */
const CAPITALS: Mm = 2.1;
const AWAY: Mm = 1.8;

/** The drawings with the lengths that prove the joins written beside their lines. */
export function withControlWords(draft: Draft, drawings: readonly PieceDrawing[]): readonly PieceDrawing[] {
  const { printed, project } = draft;
  const { scale } = project.paper;
  const texts = controlLengths(printed, sheetsOf(draft), project.paper).map(
    ({ name, length, at, way, inwards }): PieceText => {
      const degrees = (Math.atan2(way.y, way.x) * 180) / Math.PI;
      const backwards = degrees > 90 || degrees <= -90;
      const turn = backwards ? degrees - Math.sign(degrees) * 180 : degrees;
      const above = scaled(leftOf(way), backwards ? -1 : 1);
      // Words stand above their line as they are read, or on the inner side of a rim.
      const away = inwards && dot(inwards, above) < 0 ? -AWAY - CAPITALS : AWAY;
      return {
        at: moved(at, above, away / scale),
        text: printPhrase(say`${name}: ${mm(length)} when joined`, project.units),
        size: CAPITALS / scale,
        turn,
        says: 'note',
      };
    },
  );
  return drawings.map((drawing, i) => (i === 0 ? { ...drawing, texts: [...drawing.texts, ...texts] } : drawing));
}
