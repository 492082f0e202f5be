import { type DrawnPath, drawingInk, INK_CHORD, pieceDrawing, turnCosSin } from '../drawing';
import { cutCurves, type Piece, type PieceRef, pieceRef } from '../edges';
import { type Box, flattenCurves, type Point } from '../plane';

/** A piece as the search for sheets sees it, where it was drafted: x, y, x, y for every straight stretch. */
export interface PieceInk {
  readonly ref: PieceRef;
  /** Of all its lines, and every word's middle as a stretch without length. */
  readonly stretches: Float64Array;
  /** Where among them its level lines begin, which are the last. */
  readonly levelsFrom: number;
  /** Of its cut line, closed. */
  readonly outline: Float64Array;
  /** The quarter turn, in degrees, after which none of its words stands on its head. */
  readonly quarter: 90 | -90;
}

export function pieceInk(piece: Piece): PieceInk {
  const drawing = pieceDrawing(piece);
  // A line to lengthen at is none: the pattern is cut along it, and it keeps the leg's sides apart as they should be.
  const isLevel = ({ stroke }: DrawnPath) => stroke === 'level';
  const others = drawingInk([{ ...drawing, paths: drawing.paths.filter((path) => !isLevel(path)) }]).stretches;
  const levels = drawingInk([{ ...drawing, paths: drawing.paths.filter(isLevel), texts: [] }]).stretches;
  return {
    ref: pieceRef(piece),
    stretches: Float64Array.from([...others, ...levels]),
    levelsFrom: others.length,
    outline: chained(flattenCurves(cutCurves(piece), INK_CHORD)),
    quarter: piece.texts.some(({ turn }) => turn > 0) ? -90 : 90,
  };
}

function chained(points: readonly Point[]): Float64Array {
  return Float64Array.from(
    points.flatMap((p, i) => {
      const next = points[(i + 1) % points.length] as Point;
      return [p.x, p.y, next.x, next.y];
    }),
  );
}

/** Stretches turned about the origin, then shifted. */
export function stretchesPlaced(stretches: Float64Array, turn: number, x = 0, y = 0): Float64Array {
  if (turn === 0 && x === 0 && y === 0) return stretches;
  const [cos, sin] = turnCosSin(turn);
  const placed = new Float64Array(stretches.length);
  for (let i = 0; i < stretches.length; i += 2) {
    const [px, py] = [stretches[i] as number, stretches[i + 1] as number];
    placed[i] = px * cos - py * sin + x;
    placed[i + 1] = px * sin + py * cos + y;
  }
  return placed;
}

/** The least box round stretches. */
export function stretchesBox(stretches: Float64Array): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < stretches.length; i += 2) {
    const [x, y] = [stretches[i] as number, stretches[i + 1] as number];
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return { left, top, right, bottom };
}
