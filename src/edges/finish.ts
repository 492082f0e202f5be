import { type Centres, type Growth, type Leg, type LegHalf, legGrown } from '../leg';
import type { Mm } from '../length';
import { type Curve, type Edge, pathThrough, subtract, unit } from '../plane';
import { own, words } from '../words';
import { type CasingChoices, type CasingHeights, type CasingLines, casingCurves, casingLines } from './casing';
import { legPieced, type PiecedLeg, refuseTip } from './fork-tip';
import { heightsGrown, planGrown, pocketGrown } from './growth';
import { type HemChoices, type HemPlan, type HemTurning, hemPlan, hemTurning } from './hem';
import type { FoldName } from './line-names';
import { linesOf } from './lines';
import { grainlineOf, type LegWords, notchesOf, textsOf } from './marks';
import { cutLineOf, legOutline } from './outline';
import type { Piece, PieceText } from './piece';
import { type PocketChoices, pocketPlace } from './pocket';
import { type Allowances, legAllowance } from './seams';

/** What is chosen about the edges. */
export interface EdgeChoices {
  readonly growth: Growth;
  readonly waist: CasingChoices;
  readonly hem: HemChoices;
  readonly allowances: Allowances;
  readonly pocket: PocketChoices | null;
  /** How far inside the back crotch point the fork's tip is cut off; 0 where the leg stays whole. */
  readonly piecedTip: Mm;
  /** Of the body: marks lie closer on a small one. */
  readonly hipGirth: Mm;
  readonly words: LegWords;
}

/** One leg with its edges finished, and the parts of them that checks, measures and other pieces look at. */
export interface FinishedEdges {
  readonly leg: Leg;
  /** The whole leg; where its fork's tip is pieced, as if it had been sewn on already. */
  readonly piece: Piece;
  /** The leg in two pieces, where its fork's tip is cut off. */
  readonly pieced: PiecedLeg | undefined;
  readonly heights: CasingHeights;
  readonly casing: CasingLines;
  readonly hemPlan: HemPlan;
  readonly hem: HemTurning;
}

/** A finished leg: as it is worn, and as it is cut. */
export interface FinishedLeg extends Omit<FinishedEdges, 'leg'> {
  /** As it is cut and printed. */
  readonly piece: Piece;
  /** As it is worn: the same piece, but for the growth of cloth that is not washed first. */
  readonly sewn: Piece;
  /** All that the cut piece was made of, for the pieces that are sewn to it. */
  readonly cut: FinishedEdges;
}

/**
 * Turns the net leg into a pattern piece: casing and hem turnings, seam allowances, marks and words.
 *
 * For cloth that is not washed first the leg grows, and is finished again as it has grown: so its turnings lie flat, its
 * seams meet and its allowances are whole when it is sewn.
 *
 * @param leg the leg
 * @param heights of the waist's finish
 * @param choices about waist, hem and allowances
 * @throws Refusal where the hem is deeper than the leg is long
 */
export const finishLeg = (leg: Leg, heights: CasingHeights, choices: EdgeChoices): FinishedLeg =>
  finishLegs([leg], heights, choices)[0] as FinishedLeg;

/**
 * The same for the legs of a pair that differ: what is refused of one of them is told with what would do for both.
 *
 * @param legs each is finished for itself
 */
export function finishLegs(legs: readonly Leg[], heights: CasingHeights, choices: EdgeChoices): readonly FinishedLeg[] {
  const { growth, piecedTip } = choices;
  const grows = growth.lengthwise !== 1 || growth.crosswise !== 1;
  const whole = legs.map((leg) => {
    const worn = edgesFinished(leg, heights, hemPlan(choices.hem), choices);
    return { worn, cut: grows ? cutLarger(worn, choices) : worn };
  });
  if (piecedTip !== 0)
    refuseTip(
      whole.flatMap(({ worn, cut }) => [
        { piece: worn.piece, crosswise: 1 },
        { piece: cut.piece, crosswise: growth.crosswise },
      ]),
      piecedTip,
    );
  return whole.map(({ worn, cut }) => {
    const { leg: _net, piece: sewn, ...edges } = withTip(worn, choices, 1);
    const larger = grows ? withTip(cut, choices, growth.crosswise) : { ...edges, leg: worn.leg, piece: sewn };
    return { ...edges, sewn, piece: larger.piece, cut: larger };
  });
}

/** The pieces of which one leg is cut: itself, and its fork's tip where that is pieced. */
export const legPieces = ({ cut: { piece, pieced } }: FinishedLeg): readonly Piece[] =>
  pieced ? [pieced.leg, pieced.tip] : [piece];

/** The same with the fork's tip cut off, where that was chosen. */
function withTip(edges: FinishedEdges, { piecedTip, allowances }: EdgeChoices, crosswise: number): FinishedEdges {
  if (piecedTip === 0) return edges;
  return { ...edges, pieced: legPieced(edges.piece, piecedTip * crosswise, allowances) };
}

function cutLarger(worn: FinishedEdges, choices: EdgeChoices): FinishedEdges {
  const { growth, pocket } = choices;
  const grown = edgesFinished(
    legGrown(worn.leg, growth),
    heightsGrown(worn.heights, growth),
    planGrown(worn.hemPlan, growth),
    { ...choices, pocket: pocket && pocketGrown(pocket, growth) },
  );
  return { ...grown, piece: { ...grown.piece, texts: [...grown.piece.texts, growthNote(grown.piece, growth)] } };
}

function edgesFinished(leg: Leg, heights: CasingHeights, plan: HemPlan, choices: EdgeChoices): FinishedEdges {
  const { waist, allowances, pocket } = choices;
  const casing = casingLines(centresOfLeg(leg), heights, leg.higherSide);
  const hem = hemTurning(leg.front.inseam, leg.back.inseam, plan);
  const stitchLine = legOutline(leg, casing, heights.kind, hem);
  const piece: Piece = {
    kind: 'leg',
    side: undefined,
    cut: 2,
    mirrored: true,
    stitchLine,
    cutLine: cutLineOf(stitchLine, legAllowance(allowances, heights.kind, plan.kind)),
    lines: [
      ...linesOf({ leg, waist, heights, casing, plan, hem, outline: stitchLine }),
      ...(pocket ? [pocketPlace(leg, pocket, edgeAbove(heights), choices.hipGirth)] : []),
    ],
    folds: foldsOf(leg, heights, casing, plan, hem),
    notches: notchesOf(leg, allowances),
    grainline: grainlineOf(leg),
    texts: textsOf(leg, choices.words),
  };
  return { leg, piece, pieced: undefined, heights, casing, hemPlan: plan, hem };
}

/** How far the finished waist edge lies above the leg's own. */
const edgeAbove = ({ kind, fold, height }: CasingHeights): Mm => (kind === 'seamed' ? height / 2 : fold);

function foldsOf(
  leg: Leg,
  heights: CasingHeights,
  casing: CasingLines,
  plan: HemPlan,
  hem: HemTurning,
): readonly Edge<FoldName>[] {
  const fold = (name: FoldName, curves: readonly Curve[]): Edge<FoldName> => ({ name, curves });
  return [
    ...(heights.kind === 'folded' ? [fold('waistFold', casingCurves(casing, casing.fold))] : []),
    ...(plan.kind === 'folded' ? [fold('hemFold', leg.hem)] : []),
    ...(plan.kind === 'folded' && plan.turnedUnder ? [fold('turnUnderFold', pathThrough(...hem.turnUnder))] : []),
  ];
}

/** The leg's centre lines in the form in which the straightening found them. */
export function centresOfLeg(leg: Leg): Centres {
  const centre = ({ waistPoint, curveEnd, lean }: LegHalf) => ({
    waistPoint,
    curveEnd,
    lean,
    way: unit(subtract(curveEnd, waistPoint)),
  });
  return { front: centre(leg.front), back: centre(leg.back) };
}

/** Below the words of the front: how much larger than it is worn. */
function growthNote({ texts }: Piece, { lengthwise, crosswise }: Growth): PieceText {
  const lowest = texts.filter((text) => text.turn === 0 && text.at.x > 0).reduce((a, b) => (b.at.y > a.at.y ? b : a));
  return {
    text: words`cut ${own(percent(lengthwise))} longer and ${own(percent(crosswise))} wider: not washed first`,
    says: 'note',
    turn: 0,
    at: { x: lowest.at.x, y: lowest.at.y + 0.75 * lowest.size },
    size: 0.38 * lowest.size,
  };
}

const percent = (factor: number): string => `${((factor - 1) * 100).toFixed(1)} %`;
