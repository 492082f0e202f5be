import { cutCurves, type Piece, type PieceRef, pieceRef } from '../edges';
import type { Mm } from '../length';
import { flattenCurves, outlineArea, type Point } from '../plane';
import { outlineCover } from './cover';
import { laidPoint, type Shape, shapeOf, type Way } from './shape';

/**
 * The cover that is laid leaves the cut line by at most this. On a pair of legs it costs a millimetre or two of cloth, and it
 * leaves some forty corners to search.
 */
const COVER: Mm = 0.5;

/** A piece as the lay sees it. */
export interface LayPiece {
  readonly ref: PieceRef;
  /** How many are cut. */
  readonly cut: number;
  /** Whether half of them are mirrored. */
  readonly mirrored: boolean;
  /** Of one copy, mm². */
  readonly area: number;
  /** Whether it is the same when it is mirrored in an upright axis, so that it can be cut on a fold. */
  readonly symmetric: boolean;
  /** Cut for one side of the body only: turned over it would be the other side's. */
  readonly oneHanded: boolean;
  /** That axis, once its grain lies along the cloth, from the piece's own origin. */
  readonly axis: Mm;
  /** Degrees by which it is turned so that its grainline runs along the cloth, its lower arrowhead down. */
  readonly grainTurn: number;
  /** The same shape for the same way. */
  readonly shape: (way: Way) => Shape;
  /** Half of a symmetric piece, upright, its axis at the left. */
  readonly half: Shape | undefined;
}

/** A piece made ready to be laid. */
export function layPiece(piece: Piece): LayPiece {
  const curves = cutCurves(piece);
  const cover = outlineCover(flattenCurves(curves), COVER);
  const grainTurn = turnOntoGrain(piece);
  const upright = cover.map((p) => laidPoint(p, { mirrored: false, turn: grainTurn }));
  const axis = middleOf(upright);
  const symmetric = isSymmetric(upright, axis);
  const shape = memoised(({ mirrored, turn }: Way) => shapeOf(cover, { mirrored, turn }));
  return {
    ref: pieceRef(piece),
    cut: piece.cut,
    mirrored: piece.mirrored,
    area: Math.abs(outlineArea(curves)),
    symmetric,
    oneHanded: !piece.mirrored && !symmetric,
    axis,
    grainTurn,
    shape,
    half: symmetric ? shapeOf(rightOf(upright, axis), { mirrored: false, turn: 0 }) : undefined,
  };
}

function memoised(make: (way: Way) => Shape): (way: Way) => Shape {
  const made = new Map<string, Shape>();
  return (way) => {
    const key = `${way.mirrored}${way.turn}`;
    const shape = made.get(key) ?? make(way);
    made.set(key, shape);
    return shape;
  };
}

/** Short bands and bands whose stretch goes round lie with their grain across the paper. */
function turnOntoGrain({ grainline: [upper, lower] }: Piece): number {
  const way = (Math.atan2(lower.y - upper.y, lower.x - upper.x) * 180) / Math.PI;
  // To a thousandth of a degree, so that what is drawn upright stays so exactly.
  return Math.round((90 - way) * 1000) / 1000 + 0;
}

function middleOf(points: readonly Point[]): Mm {
  const xs = points.map((p) => p.x);
  return (Math.min(...xs) + Math.max(...xs)) / 2;
}

/** Far below a pencil line; bands and pockets are symmetric to rounding. */
const SAME: Mm = 0.001;

function isSymmetric(points: readonly Point[], axis: Mm): boolean {
  return points.every((p) => points.some((q) => Math.abs(2 * axis - p.x - q.x) < SAME && Math.abs(p.y - q.y) < SAME));
}

/** What of a polygon lies right of an upright axis. */
function rightOf(points: readonly Point[], axis: Mm): readonly Point[] {
  return points.flatMap((b, i) => {
    const a = points[(i + points.length - 1) % points.length] as Point;
    const crossing =
      (a.x - axis) * (b.x - axis) < 0 ? [{ x: axis, y: a.y + ((b.y - a.y) * (axis - a.x)) / (b.x - a.x) }] : [];
    return b.x >= axis ? [...crossing, b] : crossing;
  });
}
