import type { Centres, Leg, LegHalf } from '../leg';
import type { Mm } from '../length';
import {
  type Curve,
  curveMap,
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

/** How much longer and wider cloth is cut that will shrink in its first wash; 1 and 1 where it was washed before. */
export interface Growth {
  readonly lengthwise: number;
  readonly crosswise: number;
}

/**
 * What is cut of cloth that shrinks: 1 ÷ (1 − shrinkage) of what is worn (practice).
 *
 * @param cloth shrinkage as fractions, and whether it was washed first
 */
export function growthFor(cloth: {
  readonly washFirst: boolean;
  readonly shrinkLength: number;
  readonly shrinkWidth: number;
}): Growth {
  if (cloth.washFirst) return { lengthwise: 1, crosswise: 1 };
  return { lengthwise: 1 / (1 - cloth.shrinkLength), crosswise: 1 / (1 - cloth.shrinkWidth) };
}

/** What is chosen about the edges. */
export interface EdgeChoices {
  readonly growth: Growth;
  readonly waist: CasingChoices;
  readonly hem: HemChoices;
  readonly allowances: Allowances;
  readonly words: LegWords;
}

/** A finished leg, with the parts of its edges that checks and measures look at. */
export interface FinishedLeg {
  /** As it is cut and printed. */
  readonly piece: Piece;
  /** As it is worn: the same piece, but for the growth of cloth that is not washed first. */
  readonly sewn: Piece;
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
  const sewn: Piece = {
    name: 'leg',
    cut: 2,
    mirrored: true,
    stitchLine,
    cutLine: cutLineOf(stitchLine, choices.allowances),
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
  return { piece: pieceGrown(sewn, choices), sewn, casing, hem };
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

function cutLineOf(stitchLine: Outline<LegEdge>, allowances: Allowances): readonly CutEdge[] {
  const allowance = allowanceOf(allowances);
  return parallelOutline(stitchLine, allowance).map((edge) => ({ ...edge, allowance: allowance(edge.name) }));
}

/** The piece for cloth that is not washed first: the sewn lines grow, the allowances don't. */
function pieceGrown(sewn: Piece, { growth, allowances }: EdgeChoices): Piece {
  if (growth.lengthwise === 1 && growth.crosswise === 1) return sewn;
  const grow = (p: Point): Point => ({ x: p.x * growth.crosswise, y: p.y * growth.lengthwise });
  const grown = <E extends Edge>(edge: E): E => ({
    ...edge,
    curves: edge.curves.map((curve) => curveMap(curve, grow)),
  });
  const stitchLine = sewn.stitchLine.map(grown) as Outline<LegEdge>;
  const note = {
    text: `cut ${percent(growth.lengthwise)} longer and ${percent(growth.crosswise)} wider: not washed first`,
    role: 'note' as const,
    turn: 0,
  };
  const lowest = sewn.texts
    .filter((text) => text.turn === 0 && text.at.x > 0)
    .reduce((a, b) => (b.at.y > a.at.y ? b : a));
  return {
    ...sewn,
    stitchLine,
    cutLine: cutLineOf(stitchLine, allowances),
    lines: sewn.lines.map(grown),
    folds: sewn.folds.map(grown),
    notches: sewn.notches.map((notch) => ({ ...notch, at: grow(notch.at) })),
    grainline: [grow(sewn.grainline[0]), grow(sewn.grainline[1])],
    texts: [
      ...sewn.texts.map((text) => ({ ...text, at: grow(text.at) })),
      { ...note, at: grow({ x: lowest.at.x, y: lowest.at.y + 0.75 * lowest.size }), size: 0.38 * lowest.size },
    ],
  };
}

const percent = (factor: number): string => `${((factor - 1) * 100).toFixed(1)} %`;

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
