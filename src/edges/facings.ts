import type { Mm } from '../length';
import { type Outline, type Point, pathReverse, pathThrough } from '../plane';
import { casingCurves, lineAt } from './casing';
import { centresOfLeg, type FinishedEdges } from './finish';
import { letterFitting, TALLEST } from './lettering';
import { cutLineOf } from './outline';
import type { Piece } from './piece';
import { countedWords, KIND_NAMES, type PieceKind } from './piece-names';
import { type Allowances, seamAllowance } from './seams';

type FacingEdge = 'waist' | 'centreFront' | 'lower' | 'centreBack' | 'inseamFront' | 'hem' | 'inseamBack' | 'upper';

/**
 * The facing of a faced casing: the leg's own shape from its upper edge down to the stitching and the catch below it. It
 * lies flat at any lean, because it is cut as the leg is.
 *
 * @param cut the leg with its edges, as it is cut
 * @param allowances by seam; the lower edge is finished by itself and bears none
 */
export function waistFacing({ leg, casing, heights }: FinishedEdges, allowances: Allowances): Piece {
  const [topBack, topFront] = casing.fold;
  const [lowBack, lowFront] = lineAt(centresOfLeg(leg), -heights.catch);
  const stitchLine: Outline<FacingEdge> = [
    { name: 'waist', curves: casingCurves(casing, casing.fold) },
    { name: 'centreFront', curves: pathThrough(topFront, lowFront) },
    { name: 'lower', curves: casingCurves(casing, [lowFront, lowBack]) },
    { name: 'centreBack', curves: pathThrough(lowBack, topBack) },
  ];
  return facingPiece('waistFacing', stitchLine, allowances, [topBack, topFront], heights.fold + heights.catch);
}

/**
 * The facing of a faced hem: the leg's own shape above the hem, as deep as it is turned.
 *
 * @param cut the leg with its edges, as it is cut
 * @param allowances by seam; the upper edge is finished by itself and bears none
 */
export function hemFacing({ leg, hem, hemPlan }: FinishedEdges, allowances: Allowances): Piece {
  const [front, back] = hem.raw;
  const { above } = hem;
  const [upperFront, upperBack] = [above.front[0]?.[0] ?? front, above.back[0]?.[0] ?? back];
  const stitchLine: Outline<FacingEdge> = [
    { name: 'upper', curves: pathThrough(upperBack, upperFront) },
    { name: 'inseamFront', curves: above.front },
    { name: 'hem', curves: leg.hem },
    { name: 'inseamBack', curves: pathReverse(above.back) },
  ];
  return facingPiece('hemFacing', stitchLine, allowances, [back, front], -(hemPlan.depth + hemPlan.beyond));
}

function facingPiece(
  kind: PieceKind,
  stitchLine: Outline<FacingEdge>,
  allowances: Allowances,
  [from, to]: readonly [Point, Point],
  depth: Mm,
): Piece {
  const text = countedWords(KIND_NAMES[kind], 2, true);
  const way = { x: to.x - from.x, y: to.y - from.y };
  const at = (share: number, down: number): Point => ({
    x: from.x + share * way.x,
    y: from.y + share * way.y + down * depth,
  });
  return {
    kind,
    side: undefined,
    cut: 2,
    mirrored: true,
    stitchLine,
    cutLine: cutLineOf(stitchLine, seamAllowance(allowances, kind)),
    lines: [],
    folds: [],
    notches: [],
    grainline: depth > 0 ? [at(0.85, 0.2), at(0.85, 0.8)] : [at(0.85, 0.8), at(0.85, 0.2)],
    texts: [
      {
        at: at(0.4, 0.55),
        text,
        size: Math.min(TALLEST.onPieces, 0.3 * Math.abs(depth), letterFitting(text, 0.6 * Math.hypot(way.x, way.y))),
        turn: 0,
        says: 'piece',
      },
    ],
  };
}
