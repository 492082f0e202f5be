import { cutCurves, isLeg, type Piece, pieceName } from '../../edges';
import type { Mm } from '../../length';
import { type Point, pointsBounds } from '../../plane';
import { inTurn, mm, number, own, say } from '../../words';
import { cutPieces, type Garment } from '../garment';
import { drawing, onePanel, textWidth } from './draw';
import { cutLeg } from './leg-views';
import type { PictureItem, StepPicture } from './picture';
import { flipped, type Move, polygon, rectangle, shifted } from './polygon';

/** The cloth off the bolt, what washing leaves of it, and the leg along its grain. */
export function clothPicture(g: Garment): StepPicture {
  const { cloth } = g;
  const leg = pointsBounds(cutLeg(g));
  const [width, length] = [cloth.width, 1.25 * (leg.bottom - leg.top)];
  const shrunk = { width: width * (1 - cloth.shrinkWidth), length: length * (1 - cloth.shrinkLength) };
  const d = drawing(1.12 * Math.max(width, length));
  const u = d.unit;
  const whole = rectangle(0, 0, width, length);
  const washed = cloth.washFirst ? rectangle(0, 0, shrunk.width, shrunk.length) : whole;
  const put = shifted(0.12 * width - leg.left, (shrunk.length - leg.bottom - leg.top) / 2);
  const [top, bottom] = g.finished.sewn.grainline.map(put) as [Point, Point];
  const right = washed[1] as Point;
  return onePanel(
    { left: -4 * u, top: -7 * u, right: width + 4 * u, bottom: length + (cloth.washFirst ? 7.5 : 4) * u },
    [
      ...(cloth.washFirst ? [d.line('hidden', ...whole, whole[0] as Point)] : []),
      ...d.cloth('right', washed),
      d.line('mark', { x: 0.6 * u, y: 0 }, { x: 0.6 * u, y: washed[2]?.y ?? length }),
      d.line('mark', { x: right.x - 0.6 * u, y: 0 }, { x: right.x - 0.6 * u, y: washed[2]?.y ?? length }),
      d.line('thin', ...cutLeg(g).map(put), put(cutLeg(g)[0] as Point)),
      ...d.arrow(bottom, top),
      ...d.arrow(top, bottom),
      d.word({ x: 0, y: -2 * u }, say`selvedge`),
      d.word({ x: right.x, y: -2 * u }, say`selvedge`, 'right'),
      d.word({ x: top.x + 1.5 * u, y: (top.y + bottom.y) / 2 + u }, say`grainline`),
      ...(cloth.washFirst ? [d.word({ x: 0, y: length + 5 * u }, say`dotted: before washing`)] : []),
    ],
    cloth.washFirst
      ? say`The cloth, ${mm(width)} wide, before and after washing, with a leg on it, its grainline along the selvedge.`
      : say`The cloth, ${mm(width)} wide, with a leg on it, its grainline along the selvedge.`,
  );
}

/** Every piece as often as it is cut, right side up, legs mirrored. */
export function piecesPicture(g: Garment): StepPicture {
  const pieces = cutPieces(g);
  const others = pieces.filter((piece) => !isLeg(piece));
  const gap = 130;
  const placed: { piece: Piece; points: readonly Point[]; move: Move }[] = [];
  const put = (piece: Piece, mirroredOne: boolean, x: Mm, y: Mm): { right: Mm; bottom: Mm } => {
    const own = polygon(cutCurves(piece));
    const turn: Move = mirroredOne ? flipped(0) : (p) => p;
    const box = pointsBounds(own.map(turn));
    const move: Move = (p) => {
      const { x: px, y: py } = turn(p);
      return { x: px - box.left + x, y: py - box.top + y };
    };
    placed.push({ piece, points: own.map(move), move });
    return { right: x + box.right - box.left, bottom: y + box.bottom - box.top };
  };
  let x = 0;
  let legBottom = 0;
  for (const { piece, mirroredOne } of legsDrawn(g)) {
    const end = put(piece, mirroredOne, x, 0);
    x = end.right + gap;
    legBottom = Math.max(legBottom, end.bottom);
  }
  let [columnLeft, y, widest] = [x, 0, x];
  for (const piece of others) {
    for (const mirroredOne of copies(piece)) {
      const box = pointsBounds(polygon(cutCurves(piece)));
      if (y > 0 && y + box.bottom - box.top > legBottom) [columnLeft, y] = [widest + gap, 0];
      const end = put(piece, mirroredOne, columnLeft, y);
      y = end.bottom + gap;
      widest = Math.max(widest, end.right);
    }
  }
  const box = pointsBounds(placed.flatMap(({ points }) => points));
  const d = drawing(1.1 * Math.max(box.right, box.bottom));
  const u = d.unit;
  // A piece too narrow for its name bears a letter, which a line below the picture explains.
  const letters = new Map<Piece, string>();
  const letterOf = (piece: Piece): string => {
    const letter = letters.get(piece) ?? String.fromCharCode(65 + letters.size);
    letters.set(piece, letter);
    return letter;
  };
  const items = placed.flatMap(({ piece, points, move }): readonly PictureItem[] => {
    const around = pointsBounds(points);
    const [a, b] = piece.grainline.map(move) as [Point, Point];
    const middle = (around.left + around.right) / 2;
    const tall = around.bottom - around.top > 24 * u;
    const [wide, high] = [around.right - around.left, around.bottom - around.top];
    const fits = wide >= (textWidth(pieceName(piece)) + (tall ? 2 : 12)) * u && high > 7 * u;
    // Beside the grainline of a piece too low to have its name above that.
    const place = {
      x: tall ? middle : middle + 0.25 * wide,
      y: tall ? around.top + 0.16 * (around.bottom - around.top) : (around.top + around.bottom) / 2,
    };
    const name = fits ? pieceName(piece) : say`${own(letterOf(piece))}`;
    const short = fits ? place : { x: middle, y: around.top - 0.8 * u };
    return [...d.cloth('right', points), ...d.arrow(b, a), ...d.arrow(a, b), d.word(short, name, 'middle')];
  });
  const lettered = [...letters].map(([piece, letter]) => say`${own(letter)} ${pieceName(piece)}`);
  return onePanel(
    { left: -3 * d.unit, top: -3 * d.unit, right: box.right + 3 * d.unit, bottom: box.bottom + 7 * d.unit },
    [
      ...items,
      ...(lettered.length > 0
        ? [d.word({ x: box.right, y: box.bottom + 4.5 * d.unit }, inTurn(lettered, ' · '), 'right')]
        : []),
    ],
    inTurn([
      say`All pieces as they are cut, right side up: ${inTurn(
        pieces.map((piece) => say`${pieceName(piece)}, ${number(piece.cut, 0)}`),
        '; ',
      )}.`,
      g.sides ? say`The left leg and the right one differ.` : say`The second leg is the mirror image of the first.`,
    ]),
  );
}

/** Both legs in worn sizes, each drawn as it lies right side up. */
function legsDrawn(g: Garment): readonly { readonly piece: Piece; readonly mirroredOne: boolean }[] {
  const own = sewnAsCut(g);
  if (!g.sides) return copies(own).map((mirroredOne) => ({ piece: own, mirroredOne }));
  return [
    { piece: { ...sewnAsCut(g.sides.left), side: 'left' }, mirroredOne: true },
    { piece: { ...own, side: 'right' }, mirroredOne: false },
  ];
}

/** The leg in worn sizes, its fork's tip cut off where that is pieced. */
const sewnAsCut = ({ finished }: Garment): Piece => finished.pieced?.leg ?? finished.sewn;

/** One entry for each copy: whether it is mirrored. */
const copies = ({ cut, mirrored }: Piece): readonly boolean[] =>
  Array.from({ length: cut }, (_, i) => mirrored && i >= cut / 2);
