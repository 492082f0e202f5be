import { LAYOUT_WORDS, type Lay, placedPoint } from '../../cloth';
import { cutCurves, type Piece } from '../../edges';
import { amount, type Mm, mm, say } from '../../length';
import type { Point } from '../../plane';
import { drawing, onePanel } from './draw';
import type { PictureItem, StepPicture } from './picture';
import { boundsOf, cutOff, polygon } from './polygon';

/**
 * The lay as a picture: the cloth on the table, every piece where it is cut.
 *
 * @param lay where the pieces lie
 * @param pieces all pieces of the pattern
 */
export function layPicture(lay: Lay, pieces: readonly Piece[]): StepPicture {
  const { width, length } = lay.table;
  const d = drawing(1.12 * Math.max(width, length));
  const u = d.unit;
  const cloth = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: length },
    { x: 0, y: length },
  ];
  const folded = lay.layout !== 'single';
  const lengthwise = lay.layout === 'foldedLengthwise';
  const fold: readonly Point[] = lengthwise
    ? [
        { x: 0, y: 0 },
        { x: 0, y: length },
      ]
    : [
        { x: 0, y: 0 },
        { x: width, y: 0 },
      ];
  const laid = lay.placements.flatMap((placement): readonly PictureItem[] => {
    const piece = pieces.find((one) => one.name === placement.piece);
    if (!piece) return [];
    const put = (p: Point) => placedPoint(p, placement);
    const whole = polygon(cutCurves(piece)).map(put);
    // A piece whose middle lies on the fold is seen as far as the fold.
    const points = folded ? cutOff(whole, { x: 0, y: 0 }, lengthwise ? { x: 0, y: -1 } : { x: 1, y: 0 }) : whole;
    const box = boundsOf(points);
    const [top, bottom] = piece.grainline.map(put) as [Point, Point];
    return [
      ...d.cloth('paper', points),
      ...d.arrow(top, bottom),
      ...d.arrow(bottom, top),
      d.word(
        { x: (box.left + box.right) / 2, y: box.top + Math.min(5 * u, 0.6 * (box.bottom - box.top)) },
        piece.name,
        'middle',
      ),
    ];
  });
  const across: Mm = lay.clothWidth;
  return onePanel(
    { left: -8 * u, right: width + 4 * u, top: -7 * u, bottom: length + 8 * u },
    [
      ...d.cloth(folded ? 'wrong' : 'right', cloth),
      ...laid,
      ...(folded ? [d.line('lit', ...fold)] : []),
      d.word(
        { x: 0, y: -2.5 * u },
        folded ? say`${LAYOUT_WORDS[lay.layout]}, right sides together; fold thick` : LAYOUT_WORDS.single,
      ),
      d.word({ x: 0, y: length + 5 * u }, say`${mm(length)} as it lies, cloth ${mm(across)} wide`),
    ],
    say`The lay, ${LAYOUT_WORDS[lay.layout]}: ${lay.placements.map((one) => one.piece).join(', ')}. To buy: ${amount(lay.toBuy)}.`,
  );
}
