import { type CutEdge, cutCurves, type Piece } from '../edges';
import {
  type Curve,
  curveMap,
  type Edge,
  outlineArea,
  type Point,
  pathReverse,
  pathStart,
  pathThrough,
  point,
  pointsBounds,
  straight,
} from '../plane';
import type { Draft } from '../project';

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
  /** All lines that are drawn of them in one piece: what takes up paper. */
  readonly whole: Piece;
}

const CROTCH_LINE = 'crotch line';

/**
 * Lays several drafts' pieces on each other, name by name: the legs with their side lines and their crotch lines on each
 * other, where bodies are compared (practice); all other pieces at the middle of their upper edge.
 *
 * @param drafts at least one; the first keeps its own coordinates
 */
export function nestedPieces(drafts: readonly Draft[]): readonly NestedPiece[] {
  const names = [...new Set(drafts.flatMap(({ pieces }) => pieces.map(({ name }) => name)))];
  return names.flatMap((name) => {
    const [first, ...others] = drafts.flatMap(({ pieces }, body) => {
      const piece = pieces.find((one) => one.name === name);
      return piece ? [{ body, piece }] : [];
    });
    if (!first) return [];
    const home = commonPoint(first.piece);
    const laid = others.map(({ body, piece }) => {
      const at = commonPoint(piece);
      return { body, piece: pieceMoved(piece, point(home.x - at.x, home.y - at.y)) };
    });
    const members = [first, ...laid] as const;
    return [{ name, members, whole: wholePiece(members) }];
  });
}

/** Where a piece lies on those of its name. */
function commonPoint(piece: Piece): Point {
  const crotch = piece.lines.find((line) => line.name === CROTCH_LINE);
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
  // The title and the body's label are one body's; the key says all of them.
  const shared = piece.texts.filter(
    ({ text, role }) => role !== 'name' || text.startsWith(piece.name) || /^(front|back)$/.test(text),
  );
  return {
    ...piece,
    stitchLine: [],
    folds: [],
    notches: [],
    lines: piece.lines.filter(({ name, kind }) => name === CROTCH_LINE || kind === 'side'),
    texts: shared,
  };
}

function wholePiece(members: NestedPiece['members']): Piece {
  const shared = sharedLines(members);
  const own = members.map(ownLines);
  return {
    ...shared,
    cutLine: [{ name: 'cut lines', allowance: 0, curves: oneRun(own.map(cutCurves)) }],
    lines: [...shared.lines, ...own.flatMap(({ lines }) => lines)],
    folds: own.flatMap(({ folds }) => folds),
    notches: own.flatMap(({ notches }) => notches),
  };
}

/**
 * Several closed outlines as one closed run, as the sheets want it: from one's start straight to the next one's and, at
 * the end, all the way back. They run round in turns, the largest first, so that together they hold less than the
 * largest alone: the paper's lower bound stays one.
 */
function oneRun(outlines: readonly (readonly Curve[])[]): readonly Curve[] {
  const area = (outline: readonly Curve[]) => Math.abs(outlineArea(outline));
  const turned = [...outlines]
    .sort((a, b) => area(b) - area(a))
    .map((outline, i) => (i % 2 === 0 ? outline : pathReverse(outline)));
  const starts = turned.map(pathStart);
  const back = [...starts].reverse();
  return [
    ...turned.flatMap((outline, i) =>
      i === 0 ? outline : [straight(starts[i - 1] as Point, starts[i] as Point), ...outline],
    ),
    ...pathThrough(...back),
  ];
}
