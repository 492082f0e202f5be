import { isLeg, isSamePiece, type Piece, pieceName } from '../edges';
import type { Mm } from '../length';
import type { Point } from '../plane';
import { inRow, isSaid, mm, type Phrase, say, UNSAID } from '../words';
import { LAYER_WORDS } from './layout-words';
import { placedPoint } from './placed';
import type { Lay, Placement } from './types';

/** Where a grainline lies on the cloth: how far each of its arrowheads is from the nearer selvedge. */
export interface GrainPlace {
  /** The arrowheads on the table, the upper one of the two, as it lies, first. */
  readonly ends: readonly [Point, Point];
  /** Of each in turn. */
  readonly distances: readonly [Mm, Mm];
  /** Which of the cloth's long edges is measured from; both selvedges lie on the right where it is folded lengthwise. */
  readonly selvedge: 'left' | 'right';
}

/**
 * What is measured so that a piece lies on its grain: both distances alike, or a little apart where a grain tolerance was taken.
 *
 * @param piece as it is drawn on paper
 * @returns undefined where its middle lies on the fold, which is along the grain by itself
 * @source practice: both arrowheads are measured to the selvedge
 */
export function grainPlace({ layout, table }: Lay, placement: Placement, piece: Piece): GrainPlace | undefined {
  if (placement.layer === 'fold') return undefined;
  const [a, b] = piece.grainline.map((p) => placedPoint(p, placement)) as [Point, Point];
  const ends = a.y < b.y ? ([a, b] as const) : ([b, a] as const);
  const selvedge = layout === 'foldedLengthwise' || a.x + b.x > table.width ? 'right' : 'left';
  const off = ({ x }: Point): Mm => (selvedge === 'left' ? x : table.width - x);
  return { ends, distances: [off(ends[0]), off(ends[1])], selvedge };
}

/** What people call what a cut gives: of two mirrored legs the printed side tells which one it is. */
export function laidName({ layer, mirrored }: Placement, piece: Piece): Phrase {
  if (!isLeg(piece) || piece.side || !piece.mirrored) return pieceName(piece);
  if (layer === 'both') return say`both legs`;
  // Drawn as the wearer's right leg; a single layer lies right side up.
  return layer === 'single' ? pieceName({ kind: piece.kind, side: mirrored ? 'left' : 'right' }) : pieceName(piece);
}

/** One row of the lay's table: which piece, which way up, and where its grainline lies. */
export interface LaidRow {
  readonly name: Phrase;
  readonly place: Phrase;
}

/** The lay in words, piece by piece. */
export const laidRows = (lay: Lay, pieces: readonly Piece[]): readonly LaidRow[] =>
  lay.placements.flatMap((placement) => {
    const piece = pieces.find((one) => isSamePiece(one, placement.piece));
    if (!piece) return [];
    const place = grainPlace(lay, placement, piece);
    const up = placement.mirrored ? say`printed side down` : say`printed side up`;
    const said = [up, LAYER_WORDS[placement.layer], place ? grainTold(place, lay) : UNSAID].filter(isSaid);
    return [{ name: laidName(placement, piece), place: say`${inRow(said)}` }];
  });

/** Apart by less than this both distances are the same to a tape. */
const ALIKE: Mm = 0.5;

function grainTold({ distances: [upper, lower], selvedge }: GrainPlace, { layout }: Lay): Phrase {
  const from =
    layout === 'foldedLengthwise'
      ? say`the selvedges`
      : selvedge === 'left'
        ? say`the left selvedge`
        : say`the right selvedge`;
  return Math.abs(upper - lower) < ALIKE
    ? say`both arrowheads ${mm(upper)} from ${from}`
    : say`the upper arrowhead ${mm(upper)} and the lower one ${mm(lower)} from ${from}`;
}
