import type { Side } from '../leg';
import { type Curve, curveMap, type Edge, type Point, pathReverse, point } from '../plane';
import { words } from '../words';
import type { Piece, PieceText } from './piece';
import { countedWords, type PieceRef, pieceName } from './piece-names';

/**
 * The pieces of both legs, each cut once for its own side where the two differ, and as they are, for both, where they
 * don't.
 *
 * @param left of the left leg, drawn as the right one is: its front on the right
 * @param right of the right leg, piece for piece
 */
export const piecesOfSides = (left: readonly Piece[], right: readonly Piece[]): readonly Piece[] =>
  right.flatMap((piece, i) => {
    const other = left[i];
    return other && !isSame(other, piece) ? [pieceOfSide(other, 'left'), pieceOfSide(piece, 'right')] : [piece];
  });

/** Whether a piece is a leg, of one side or of both. */
export const isLeg = ({ kind }: PieceRef): boolean => kind === 'leg';

/** Whether a piece is drawn with its front on the left, as only a left leg's are. */
export const isDrawnLeft = ({ side, cut }: Pick<Piece, 'side' | 'cut'>): boolean => cut === 1 && side === 'left';

/** Made by the same rules of the same figures, like pieces are alike to the last figure. */
const isSame = (a: Piece, b: Piece): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * One copy of a piece for one side. A leg is drawn as the wearer's right one; where pieces are cut in mirrored pairs the
 * left one's is mirrored here, so that every piece lies printed side up on the right side of the cloth.
 */
function pieceOfSide(piece: Piece, side: Side): Piece {
  const cut = piece.cut / 2;
  const counted = countedWords(pieceName({ kind: piece.kind, side }), cut);
  const texts = piece.texts.map((text) => (text.says === 'piece' ? { ...text, text: counted } : text));
  const own = { ...piece, side, cut, mirrored: false, texts: [...texts, ...sideTold(texts, side)] };
  return piece.mirrored && side === 'left' ? pieceMirrored(own) : own;
}

/** On the back of a leg, beside the words of its front: whose it is, and how it lies. */
function sideTold(texts: readonly PieceText[], side: Side): readonly PieceText[] {
  const back = texts.find(({ says, at }) => says === 'half' && at.x < 0);
  const count = texts.find(({ says }) => says === 'piece');
  const label = texts.find(({ says }) => says === 'label');
  if (!back || !count || !label) return [];
  return [
    {
      ...back,
      text: side === 'left' ? words`left leg` : words`right leg`,
      says: 'whose',
      at: point(back.at.x, count.at.y),
    },
    { ...back, text: words`this side up`, at: point(back.at.x, label.at.y), size: 0.6 * back.size, says: 'note' },
  ];
}

const over = ({ x, y }: Point): Point => point(-x, y);
const curvesOver = (curves: readonly Curve[]): readonly Curve[] => curves.map((curve) => curveMap(curve, over));

/** Mirrored in the upright axis; closed lines stay clockwise, and each begins where the other's edge of that name does. */
function pieceMirrored(piece: Piece): Piece {
  const line = <E extends Edge>(edge: E): E => ({ ...edge, curves: curvesOver(edge.curves) });
  return {
    ...piece,
    stitchLine: outlineMirrored(piece.stitchLine),
    cutLine: outlineMirrored(piece.cutLine),
    lines: piece.lines.map(line),
    folds: piece.folds.map(line),
    notches: piece.notches.map((notch) => ({ ...notch, at: over(notch.at), outward: over(notch.outward) })),
    grainline: [over(piece.grainline[0]), over(piece.grainline[1])],
    texts: piece.texts.map(
      (text): PieceText => ({ ...text, at: over(text.at), turn: text.turn === 0 ? 0 : -text.turn }),
    ),
  };
}

/** Run through the other way, so that it is clockwise again; the first edge stays the first. */
function outlineMirrored<E extends Edge>(outline: readonly E[]): readonly E[] {
  const [first, ...rest] = outline.map((edge) => ({ ...edge, curves: pathReverse(curvesOver(edge.curves)) }));
  return first ? [first, ...rest.reverse()] : [];
}
