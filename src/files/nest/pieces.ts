import { type CutEdge, cutCurves, type Piece, pieceKey, pieceLine } from '../../edges';
import type { Mm } from '../../length';
import {
  type Curve,
  curveMap,
  type Edge,
  flattenCurves,
  type Point,
  pathStart,
  pathThrough,
  point,
  pointsBounds,
} from '../../plane';
import type { Draft } from '../../project';

/** One body's piece as it lies among the others'. */
export interface NestedMember {
  /** Which of the drafts it belongs to, counted from 0. */
  readonly body: number;
  readonly piece: Piece;
}

/** The pieces of one name, laid on each other at a common point. */
export interface NestedPiece {
  readonly name: string;
  /** At least one. */
  readonly members: readonly [NestedMember, ...NestedMember[]];
  /** One piece for the sheets: an outline round all members', and every line that is drawn of them. */
  readonly whole: Piece;
}

/**
 * Lays several drafts' pieces on each other, name by name: the legs with their side lines and their crotch lines on
 * each other, where bodies are compared; all other pieces at the middle of their upper edge.
 *
 * @param drafts at least one; the first keeps its own coordinates
 * @param of `printed`: as they come to paper at its scale; `pieces`: always full size
 * @source practice
 */
export function nestedPieces(drafts: readonly Draft[], of: 'printed' | 'pieces'): readonly NestedPiece[] {
  const keys = [...new Set(drafts.flatMap((draft) => draft[of].map(pieceKey)))];
  return keys.flatMap((key) => {
    const [first, ...others] = drafts.flatMap((draft, body) => {
      const piece = draft[of].find((one) => pieceKey(one) === key);
      return piece ? [{ body, piece }] : [];
    });
    if (!first) return [];
    const home = commonPoint(first.piece);
    const laid = others.map(({ body, piece }) => {
      const at = commonPoint(piece);
      return { body, piece: pieceMoved(piece, point(home.x - at.x, home.y - at.y)) };
    });
    const members = [first, ...laid] as const;
    return [{ name: pieceKey(first.piece), members, whole: wholePiece(members) }];
  });
}

/** Where a piece lies on those of its name. */
function commonPoint(piece: Piece): Point {
  const crotch = piece.lines.find((line) => line.name === 'crotchLine');
  // The side line is x = 0 in every leg's own coordinates.
  if (crotch) return point(0, pathStart(crotch.curves).y);
  const { left, right, top } = pointsBounds(piece.stitchLine.flatMap(({ curves }) => curves.flat()));
  return point((left + right) / 2, top);
}

/** A piece with every point moved. */
function pieceMoved(piece: Piece, by: Point): Piece {
  const to = (p: Point): Point => point(p.x + by.x, p.y + by.y);
  const edges = <E extends Edge>(all: readonly E[]): readonly E[] =>
    all.map((edge) => ({ ...edge, curves: edge.curves.map((curve): Curve => curveMap(curve, to)) }));
  return {
    ...piece,
    stitchLine: edges(piece.stitchLine),
    cutLine: edges<CutEdge>(piece.cutLine),
    lines: edges(piece.lines),
    folds: edges(piece.folds),
    notches: piece.notches.map((notch) => ({ ...notch, at: to(notch.at) })),
    grainline: [to(piece.grainline[0]), to(piece.grainline[1])],
    texts: piece.texts.map((text) => ({ ...text, at: to(text.at) })),
  };
}

/**
 * What is drawn of a body for itself: cut line, folds, notches, quarters. The rest would make a thicket, and stands in
 * each body's own pattern.
 */
export const ownLines = ({ piece }: NestedMember): Piece => ({
  ...piece,
  stitchLine: [],
  lines: piece.lines.filter(({ kind }) => kind === 'quarter' || kind === 'opening'),
  texts: [],
});

/** What is drawn once for all, by the first body: grainline, the lines that lie on each other, and words. */
export function sharedLines([{ piece }]: NestedPiece['members']): Piece {
  // The title, the body's label and whose leg it is are one body's; the key says all of them.
  const shared = piece.texts.filter(({ says }) => says !== 'title' && says !== 'label' && says !== 'whose');
  return {
    ...piece,
    stitchLine: [],
    folds: [],
    notches: [],
    lines: piece.lines.filter(({ name, kind }) => name === 'crotchLine' || kind === 'side'),
    texts: shared,
  };
}

function wholePiece(members: NestedPiece['members']): Piece {
  const shared = sharedLines(members);
  const own = members.map(ownLines);
  return {
    ...shared,
    cutLine: [{ name: 'envelope', allowance: 0, curves: envelope(own) }],
    lines: [
      ...shared.lines,
      ...own.map((piece) => pieceLine('cutLine', cutCurves(piece))),
      ...own.flatMap(({ lines }) => lines),
    ],
    folds: own.flatMap(({ folds }) => folds),
    notches: own.flatMap(({ notches }) => notches),
  };
}

/** How closely the lines are followed that an envelope is made of: a tenth of the cut line's width. */
const ENVELOPE_CHORD: Mm = 0.05;
/** From one level of {@link envelope} to the next. */
const LEVEL: Mm = 4;

/**
 * One simple outline round several, as the sheets want it: at every level from the leftmost to the rightmost line. The
 * lines themselves are told besides, so that it need not follow them closely between its levels.
 */
function envelope(pieces: readonly Piece[]): readonly Curve[] {
  const runs = pieces.map((piece) => flattenCurves(cutCurves(piece), ENVELOPE_CHORD));
  const { top, bottom } = pointsBounds(runs.flat());
  const even = Array.from({ length: Math.ceil((bottom - top) / LEVEL) }, (_, i) => top + i * LEVEL);
  // Corners are where a level's ends may change most.
  const corners = pieces.flatMap(({ cutLine }) => cutLine.map(({ curves }) => pathStart(curves).y));
  const levels = [...new Set([...even, ...corners, bottom])].sort((a, b) => a - b);
  const spans = levels.map((y) => {
    const xs = runs.flatMap((run) =>
      run.flatMap((b, i) => {
        const a = run[i - 1] ?? b;
        if (Math.min(a.y, b.y) > y || Math.max(a.y, b.y) < y) return [];
        return a.y === b.y ? [a.x, b.x] : [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)];
      }),
    );
    return { y, left: Math.min(...xs), right: Math.max(...xs) };
  });
  const right = spans.map(({ y, right: x }) => point(x, y));
  const left = spans.map(({ y, left: x }) => point(x, y)).reverse();
  return pathThrough(...right, ...left, right[0] as Point);
}
