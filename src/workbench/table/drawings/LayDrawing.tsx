import { useId } from 'react';
import { grainPlace, LAYER_WORDS, type Lay, laidName, type Placement, placedPoint } from '../../../cloth';
import { pieceBounds } from '../../../drawing';
import { cutCurves, isDrawnLeft, isLeg, isSamePiece, type Piece, pieceKey, pieceName } from '../../../edges';
import type { Mm } from '../../../length';
import { between, outlineCurves, pathThrough, point, pointsBounds } from '../../../plane';
import { clothOf } from '../../../project';
import { all, mm, number, printPhrase, said, say, words } from '../../../words';
import { useBench } from '../../store/bench';
import { pathText } from '../path-text';
import { Word } from '../Word';
import type { DrawingProps } from './drawing-props';
import { HalfTints } from './HalfTints';
import { LayGround } from './LayGround';
import { LaySignPatterns, type LaySigns, useLaySigns } from './LaySigns';
import { Line } from './Line';
import { type NoFit, widestOf } from './lay-box';
import { Grainline } from './Marks';

/** The cloth as it lies on the table, to scale, with every piece where it is cut. */
export function LayDrawing({ draft }: DrawingProps) {
  const { answer } = clothOf(draft);
  return answer.fits ? <LaidPieces draft={draft} lay={answer.lay} /> : <TooWide draft={draft} answer={answer} />;
}

function LaidPieces({ draft, lay }: DrawingProps & { readonly lay: Lay }) {
  const id = useId();
  const signs = useLaySigns();
  const { width, length } = lay.table;
  return (
    <>
      <LaySignPatterns {...signs} />
      <LayGround layout={lay.layout} width={width} length={length} oneWay={draft.project.cloth.oneWay} signs={signs} />
      <clipPath id={id}>
        <rect width={width} height={length} />
      </clipPath>
      {lay.placements.map((placement) => {
        const piece = draft.pieces.find((one) => isSamePiece(one, placement.piece));
        if (!piece) return null;
        return (
          <g key={`${pieceKey(placement.piece)}${placement.copies[0]}`} clipPath={`url(#${id})`}>
            <LaidPiece piece={piece} placement={placement} signs={signs} />
          </g>
        );
      })}
      {lay.placements.map((placement) => {
        const piece = draft.pieces.find((one) => isSamePiece(one, placement.piece));
        return (
          piece && (
            <g key={`${pieceKey(placement.piece)}${placement.copies[0]}`}>
              {isLeg(piece) && <GrainDistances lay={lay} piece={piece} placement={placement} />}
              <LaidName piece={piece} placement={placement} />
            </g>
          )
        );
      })}
    </>
  );
}

interface LaidProps {
  readonly piece: Piece;
  readonly placement: Placement;
}

function LaidPiece({ piece, placement, signs }: LaidProps & { readonly signs: LaySigns }) {
  const { at, turn, mirrored } = placement;
  const cut = pathText(cutCurves(piece), true);
  return (
    <g transform={`translate(${at.x} ${at.y}) rotate(${turn})${mirrored ? ' scale(-1 1)' : ''}`}>
      <path className="piece-ground" d={cut} />
      {isLeg(piece) && (
        <HalfTints outline={pathText(outlineCurves(piece.stitchLine), true)} drawnLeft={isDrawnLeft(piece)} />
      )}
      {mirrored && <path d={cut} fill={`url("#${signs.printedDown}")`} />}
      <path className="line line-cut" d={cut} />
      <Grainline ends={piece.grainline} />
    </g>
  );
}

/** From both arrowheads to the selvedge: what is measured before anything is pinned. */
function GrainDistances({ lay, piece, placement }: LaidProps & { readonly lay: Lay }) {
  const units = useBench((state) => state.project.units);
  const place = grainPlace(lay, placement, piece);
  if (!place) return null;
  const left = place.selvedge === 'left';
  return place.ends.map((end, i) => (
    <g key={end.y}>
      <Line stroke="lengthen" curves={pathThrough(end, point(left ? 0 : lay.table.width, end.y))} />
      <Word
        at={end}
        anchor={left ? 'end' : 'start'}
        dx={left ? -8 : 8}
        dy={i === 0 ? -6 : 16}
        className="word-lay word-lay-small"
      >
        {printPhrase(say`${mm(place.distances[i] ?? 0)}`, units)}
      </Word>
    </g>
  ));
}

/** The piece's name, upright whichever way it lies: beside a leg's grainline, along a narrow piece, above in any other. */
function LaidName({ piece, placement }: LaidProps) {
  const own = pieceBounds(piece);
  const box = pointsBounds(
    [point(own.left, own.top), point(own.right, own.bottom)].map((p) => placedPoint(p, placement)),
  );
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const middle = point((box.left + box.right) / 2, (box.top + box.bottom) / 2);
  const at = placement.layer === 'fold' ? { x: width / 4, y: middle.y } : middle;
  const says = [
    isLeg(piece)
      ? said(laidName(placement, piece))
      : words`${pieceName(piece)} ${all(placement.copies.map((copy) => say`${number(copy, 0)}`))}`,
    ...(placement.mirrored ? [words`printed side down`] : []),
    ...(placement.layer === 'single' ? [] : [said(LAYER_WORDS[placement.layer])]),
  ];
  const narrow = width < NARROW && height > 2 * width;
  if (narrow || height < SHALLOW)
    return (
      <Word
        // Clear of the grainline, which stands in the last third of a band.
        at={narrow ? { x: at.x, y: at.y - 0.2 * height } : at}
        turn={narrow ? -90 : 0}
        dy={4}
        className="word-lay word-lay-small"
      >
        {says.join(', ')}
      </Word>
    );
  // A leg is widest in its upper half.
  const grain = placedPoint(between(piece.grainline[0], piece.grainline[1], 0.25), placement);
  const beside = width > WIDE;
  const place = beside ? grain : { x: at.x, y: at.y - 0.36 * height };
  return says.map((text, row) => (
    <Word
      key={text}
      at={place}
      anchor={beside ? 'start' : 'middle'}
      dx={beside ? 12 : 0}
      dy={18 * row}
      className={row === 0 ? 'word-lay word-number' : 'word-lay word-lay-small'}
    >
      {text}
    </Word>
  ));
}

/** Pieces narrower than this are named along their length; pieces shallower in one line; wide ones beside their grainline. */
const NARROW: Mm = 200;
const SHALLOW: Mm = 120;
const WIDE: Mm = 300;

/** The widest piece on a strip of the cloth that can be cut, sticking out of it. */
function TooWide({ draft, answer }: DrawingProps & { readonly answer: NoFit }) {
  const units = useBench((state) => state.project.units);
  const { piece, box, width, height } = widestOf(draft, answer);
  const over = pathThrough(point(answer.room, 0), point(answer.room, height + 40));
  return (
    <>
      <rect className="cloth-ground" width={answer.room} height={height + 40} />
      <g transform={`translate(${-box.left} ${20 - box.top})`}>
        <path className="cloth-over" d={pathText(cutCurves(piece), true)} />
      </g>
      <path className="line line-cut" d={pathText(over)} />
      <Word at={{ x: answer.room, y: 0 }} anchor="end" dy={-10} className="word-number">
        {printPhrase(say`${mm(answer.room)} can be cut`, units)}
      </Word>
      <Word at={{ x: width / 2, y: height / 2 }} className="word-lay word-number">
        {printPhrase(say`${pieceName(piece)}, ${mm(width)} wide: does not fit`, units)}
      </Word>
    </>
  );
}
