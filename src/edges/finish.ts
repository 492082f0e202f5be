import type { Centres, Leg, LegHalf } from '../leg';
import type { Mm } from '../length';
import { curveMap, type Edge, type Outline, type Point, pathThrough, subtract, unit } from '../plane';
import { type CasingChoices, type CasingHeights, type CasingLines, casingLines } from './casing';
import { type HemChoices, type HemPlan, type HemTurning, hemPlan, hemTurning } from './hem';
import { linesOf } from './lines';
import { grainlineOf, type LegWords, notchesOf, textsOf } from './marks';
import { type Allowances, cutLineOf, type LegEdge, legAllowance, legOutline } from './outline';
import type { Piece } from './piece';
import { type PocketChoices, pocketPlace } from './pocket';

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
  readonly pocket: PocketChoices | null;
  readonly words: LegWords;
}

/** A finished leg, with the parts of its edges that checks, measures and other pieces look at. */
export interface FinishedLeg {
  /** As it is cut and printed. */
  readonly piece: Piece;
  /** As it is worn: the same piece, but for the growth of cloth that is not washed first. */
  readonly sewn: Piece;
  readonly heights: CasingHeights;
  readonly casing: CasingLines;
  readonly hemPlan: HemPlan;
  readonly hem: HemTurning;
}

/**
 * Turns the net leg into a pattern piece: casing and hem turnings, seam allowances, marks and words.
 *
 * @param leg the leg
 * @param heights of the waist's finish
 * @param choices about waist, hem and allowances
 * @throws Refusal where the hem is deeper than the leg is long
 */
export function finishLeg(leg: Leg, heights: CasingHeights, choices: EdgeChoices): FinishedLeg {
  const { waist, allowances } = choices;
  const casing = casingLines(centresOfLeg(leg), heights);
  const plan = hemPlan(choices.hem);
  const hem = hemTurning(leg.front.inseam, leg.back.inseam, plan);
  const stitchLine = legOutline(leg, casing, heights.kind, hem);
  const allowance = legAllowance(allowances, heights.kind, plan.kind);
  const sewn: Piece = {
    name: 'leg',
    cut: 2,
    mirrored: true,
    stitchLine,
    cutLine: cutLineOf(stitchLine, allowance),
    lines: [
      ...linesOf({ leg, waist, heights, casing, plan, hem, outline: stitchLine }),
      ...(choices.pocket ? [pocketPlace(leg, choices.pocket)] : []),
    ],
    folds: foldsOf(leg, heights, casing, plan, hem),
    notches: notchesOf(leg, allowances),
    grainline: grainlineOf(leg),
    texts: textsOf(leg, choices.words),
  };
  return { piece: pieceGrown(sewn, choices.growth, allowance), sewn, heights, casing, hemPlan: plan, hem };
}

function foldsOf(
  leg: Leg,
  heights: CasingHeights,
  casing: CasingLines,
  plan: HemPlan,
  hem: HemTurning,
): readonly Edge[] {
  return [
    ...(heights.kind === 'folded' ? [{ name: 'waist fold', curves: pathThrough(...casing.fold) }] : []),
    ...(plan.kind === 'folded' ? [{ name: 'hem fold', curves: leg.hem }] : []),
    ...(plan.kind === 'folded' && plan.turnedUnder
      ? [{ name: 'turn-under fold', curves: pathThrough(...hem.turnUnder) }]
      : []),
  ];
}

/** The leg's centre lines in the form in which the straightening found them. */
export function centresOfLeg(leg: Leg): Centres {
  const centre = ({ waistPoint, hipPoint, curveEnd, lean }: LegHalf) => ({
    waistPoint,
    hipPoint,
    curveEnd,
    lean,
    way: unit(subtract(curveEnd, waistPoint)),
  });
  return { front: centre(leg.front), back: centre(leg.back) };
}

/**
 * A piece for cloth that is not washed first: the sewn lines grow, the allowances don't.
 *
 * @param sewn the piece as it is worn
 * @param growth longer and wider
 * @param allowance of each edge
 */
function pieceGrown(sewn: Piece, growth: Growth, allowance: (edge: LegEdge) => Mm): Piece {
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
    cutLine: cutLineOf(stitchLine, allowance),
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
