import { useId } from 'react';
import { pieceDrawing, type Stroke } from '../../../drawing';
import { type CutEdge, isDrawnLeft, isLeg, isLevel, levelName, type Piece } from '../../../edges';
import { type Curve, outlineCurves, pathStart } from '../../../plane';
import { said } from '../../../words';
import type { FoldedTurning } from '../folded';
import { bridgedText, pathText, polygonText } from '../path-text';
import { Word } from '../Word';
import { HalfTints } from './HalfTints';
import { Line, Lines } from './Line';
import { FoldTriangles, Grainline } from './Marks';

export interface FinishedLegProps {
  readonly piece: Piece;
  /** The turnings that are folded over; the others lie flat. */
  readonly turnings?: readonly FoldedTurning[];
}

/** A finished piece in the line language: tints, cut and stitching lines, folds, levels, notches, grainline. */
export function FinishedLeg({ piece, turnings = [] }: FinishedLegProps) {
  const id = useId();
  const isAway = (edge: CutEdge) => turnings.some((turning) => turning.edges.includes(edge.name));
  const cut = piece.cutLine.filter((edge) => !isAway(edge)).flatMap((edge) => edge.curves);
  const away = piece.cutLine.filter(isAway).flatMap((edge) => edge.curves);
  const lines = linesWithin(piece);
  // Without the turnings the outline runs along their folds, which are straight.
  const shown = bridgedText(cut);
  return (
    <>
      <clipPath id={id}>
        <path d={shown} />
      </clipPath>
      <path className="piece-ground" d={shown} />
      <g clipPath={`url(#${id})`}>
        {isLeg(piece) && (
          <HalfTints outline={pathText(outlineCurves(piece.stitchLine), true)} drawnLeft={isDrawnLeft(piece)} />
        )}
        {lines.map(([stroke, runs]) => (
          <Lines key={stroke} stroke={stroke} runs={runs} />
        ))}
      </g>
      {turnings.map((turning) => (
        <path key={turning.name} className="folded-over" d={polygonText(turning.area)} />
      ))}
      <path className="folded-outline" d={pathText(away)} />
      <Line stroke="cut" curves={cut} closed={away.length === 0} />
      {creases(piece, turnings).map((fold) => (
        <g key={fold.name}>
          <Line stroke="fold" curves={fold.curves} />
          <FoldTriangles fold={fold.curves} />
        </g>
      ))}
      <Grainline ends={piece.grainline} />
      <LevelWords piece={piece} />
    </>
  );
}

/**
 * The lines inside a piece, all of one line type together: a drag moves every one of them in each frame, and one path of
 * forty runs is restyled and painted sooner than forty paths.
 */
function linesWithin(piece: Piece): readonly (readonly [Stroke, readonly (readonly Curve[])[]])[] {
  const paths = pieceDrawing(piece).paths.filter(({ stroke }) => !['solid', 'grain', 'cut'].includes(stroke));
  const strokes = [...new Set(paths.map(({ stroke }) => stroke))];
  return strokes.map((stroke) => [stroke, paths.filter((path) => path.stroke === stroke).map(({ curves }) => curves)]);
}

/** The folds that are seen: what is turned under within a turning that is folded over lies beneath it. */
function creases(piece: Piece, turnings: readonly FoldedTurning[]): Piece['folds'] {
  return turnings.length === 0
    ? piece.folds
    : piece.folds.filter((fold) => turnings.some((one) => one.fold === fold.name));
}

/** The levels' names, beside the side line, where they meet no seam. */
function LevelWords({ piece }: { readonly piece: Piece }) {
  return piece.lines.filter(isLevel).map((line) => (
    <Word
      key={line.name}
      at={{ x: 0, y: pathStart(line.curves).y }}
      anchor="start"
      dx={10}
      dy={-5}
      className="word-note word-bare"
    >
      {said(levelName(line.name))}
    </Word>
  ));
}
