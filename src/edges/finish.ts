import type { Centres, Leg, LegHalf } from '../leg';
import type { Mm } from '../length';
import {
  type Curve,
  curveMeetsLine,
  curvePoint,
  type Edge,
  type Outline,
  type Point,
  parallelOutline,
  pathReverse,
  pathThrough,
  subtract,
  unit,
} from '../plane';
import { type CasingChoices, type CasingLines, casingHeights, casingLines } from './casing';
import { type HemChoices, type HemTurning, hemTurning } from './hem';
import { grainlineOf, type LegWords, notchesOf, textsOf } from './marks';
import type { CutEdge, Piece, PieceLine } from './piece';

export type LegEdge =
  | 'waist'
  | 'centreFrontTurning'
  | 'centreFront'
  | 'crotchFront'
  | 'inseamFront'
  | 'inseamFrontTurning'
  | 'hem'
  | 'inseamBackTurning'
  | 'inseamBack'
  | 'crotchBack'
  | 'centreBack'
  | 'centreBackTurning';

/** Seam allowances by seam. */
export interface Allowances {
  readonly inseam: Mm;
  readonly crotch: Mm;
}

/** What is chosen about the edges. */
export interface EdgeChoices {
  readonly waist: CasingChoices;
  readonly hem: HemChoices;
  readonly allowances: Allowances;
  readonly words: LegWords;
}

/** A finished leg, with the parts of its edges that checks and measures look at. */
export interface FinishedLeg {
  readonly piece: Piece;
  readonly casing: CasingLines;
  readonly hem: HemTurning;
}

/**
 * Turns the net leg into a pattern piece: casing and hem turnings, seam allowances, marks and words.
 *
 * @param leg the leg
 * @param choices about waist, hem and allowances
 * @throws Refusal where the hem is deeper than the leg is long
 */
export function finishLeg(leg: Leg, choices: EdgeChoices): FinishedLeg {
  const casing = casingLines(centresOfLeg(leg), casingHeights(choices.waist));
  const hem = hemTurning(leg.front.inseam, leg.back.inseam, choices.hem);
  const stitchLine = stitchOutline(leg, casing, hem);
  const allowance = allowanceOf(choices.allowances);
  const cutLine: readonly CutEdge[] = parallelOutline(stitchLine, allowance).map((edge) => ({
    ...edge,
    allowance: allowance(edge.name),
  }));
  const piece: Piece = {
    name: 'leg',
    cut: 2,
    mirrored: true,
    stitchLine,
    cutLine,
    lines: linesOf(leg, casing, hem, stitchLine),
    folds: [
      { name: 'waist fold', curves: pathThrough(...casing.fold) },
      { name: 'hem fold', curves: leg.hem },
      ...(choices.hem.turnUnder > 0 ? [{ name: 'turn-under fold', curves: pathThrough(...hem.turnUnder) }] : []),
    ],
    notches: notchesOf(leg, choices.allowances),
    grainline: grainlineOf(leg),
    texts: textsOf(leg, choices.words),
  };
  return { piece, casing, hem };
}

/** The leg's centre lines in the form in which the straightening found them. */
function centresOfLeg(leg: Leg): Centres {
  const centre = ({ waistPoint, hipPoint, curveEnd, lean }: LegHalf) => ({
    waistPoint,
    hipPoint,
    curveEnd,
    lean,
    way: unit(subtract(curveEnd, waistPoint)),
  });
  return { front: centre(leg.front), back: centre(leg.back) };
}

const allowanceOf =
  ({ inseam, crotch }: Allowances) =>
  (edge: LegEdge): Mm =>
    edge === 'waist' || edge === 'hem' ? 0 : edge.startsWith('inseam') ? inseam : crotch;

function stitchOutline(leg: Leg, casing: CasingLines, hem: HemTurning): Outline<LegEdge> {
  const [rawBack, rawFront] = casing.raw;
  const [foldBack, foldFront] = casing.fold;
  return [
    { name: 'waist', curves: pathThrough(rawBack, rawFront) },
    { name: 'centreFrontTurning', curves: pathThrough(rawFront, foldFront) },
    { name: 'centreFront', curves: pathThrough(foldFront, leg.front.curveEnd) },
    { name: 'crotchFront', curves: leg.front.crotch },
    { name: 'inseamFront', curves: leg.front.inseam },
    { name: 'inseamFrontTurning', curves: hem.front },
    { name: 'hem', curves: pathThrough(...hem.raw) },
    { name: 'inseamBackTurning', curves: pathReverse(hem.back) },
    { name: 'inseamBack', curves: pathReverse(leg.back.inseam) },
    { name: 'crotchBack', curves: pathReverse(leg.back.crotch) },
    { name: 'centreBack', curves: pathThrough(leg.back.curveEnd, foldBack) },
    { name: 'centreBackTurning', curves: pathThrough(foldBack, rawBack) },
  ];
}

function linesOf(leg: Leg, casing: CasingLines, hem: HemTurning, outline: Outline<LegEdge>): readonly PieceLine[] {
  const level = (name: string, y: Mm): readonly PieceLine[] => {
    const line = levelLine(outline, y);
    return line ? [{ name, kind: 'level', curves: pathThrough(...line) }] : [];
  };
  return [
    { name: 'waist edge', kind: 'waistEdge', curves: leg.waistEdge },
    { name: 'casing stitching', kind: 'stitching', curves: pathThrough(...casing.waistEdge) },
    ...level('hip', leg.hipLevel),
    ...level('crotch line', leg.crotchLevel),
    ...(leg.kneeLevel === undefined ? [] : level('knee', leg.kneeLevel)),
    { name: 'side', kind: 'side', curves: pathThrough(...sideLine(casing, hem)) },
    { name: 'hem stitching', kind: 'stitching', curves: pathThrough(...hem.stitching) },
  ];
}

/** A level right across the net leg, from back to front. */
function levelLine(outline: Outline<LegEdge>, y: Mm): readonly [Point, Point] | undefined {
  const seams: readonly Edge<LegEdge>[] = outline.filter(
    (edge) => !edge.name.endsWith('Turning') && edge.name !== 'waist' && edge.name !== 'hem',
  );
  const xs = seams.flatMap((edge) =>
    edge.curves.flatMap((curve: Curve) =>
      curveMeetsLine(curve, { x: 0, y }, { x: 1, y: 0 }).map((t) => curvePoint(curve, t).x),
    ),
  );
  const [left, right] = [Math.max(...xs.filter((x) => x < 0)), Math.min(...xs.filter((x) => x > 0))];
  return Number.isFinite(left) && Number.isFinite(right)
    ? [
        { x: left, y },
        { x: right, y },
      ]
    : undefined;
}

/** The side position, from raw edge to raw edge. */
function sideLine(casing: CasingLines, hem: HemTurning): readonly [Point, Point] {
  const at = ([a, b]: readonly [Point, Point]): Point => ({ x: 0, y: a.y + ((0 - a.x) / (b.x - a.x)) * (b.y - a.y) });
  return [at(casing.raw), at(hem.raw)];
}
