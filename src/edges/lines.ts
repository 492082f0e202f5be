import { type Leg, riseAt } from '../leg';
import type { Mm } from '../length';
import {
  between,
  type Curve,
  curveMeetsLine,
  curvePoint,
  leftOf,
  moved,
  type Outline,
  type Point,
  pathThrough,
  subtract,
  unit,
} from '../plane';
import { type CasingChoices, type CasingHeights, type CasingLines, casingCurves } from './casing';
import { type EdgeName, isWorn } from './edge-names';
import type { HemPlan, HemTurning } from './hem';
import { type LineName, type PieceLine, pieceLine } from './line-names';

/** What the lines of a leg are drawn from. */
export interface LegLines {
  readonly leg: Leg;
  readonly waist: CasingChoices;
  readonly heights: CasingHeights;
  readonly casing: CasingLines;
  readonly plan: HemPlan;
  readonly hem: HemTurning;
  readonly outline: Outline<EdgeName>;
}

/** All lines inside the leg: waist edge, stitching, levels, side, quarters, openings for cords, where to lengthen. */
export function linesOf(l: LegLines): readonly PieceLine[] {
  const { leg, casing, hem, plan, heights } = l;
  const level = (name: LineName, y: Mm): readonly PieceLine[] => {
    const line = levelLine(l.outline, y);
    return line ? [pieceLine(name, pathThrough(...line))] : [];
  };
  const folded = heights.kind !== 'seamed';
  return [
    pieceLine('waistEdge', leg.waistEdge),
    ...(folded ? [pieceLine('casingStitching', casingCurves(casing, casing.waistEdge))] : []),
    ...casing.partings.map((line) => pieceLine('channelStitching', casingCurves(casing, line))),
    ...level('hip', leg.hipLevel),
    ...level('crotchLine', leg.crotchLevel),
    ...(leg.kneeLevel === undefined ? [] : level('knee', leg.kneeLevel)),
    ...lengthenLevels(leg).flatMap(({ name, y }) => level(name, y)),
    pieceLine('side', pathThrough(...sideLine(casing, hem))),
    ...(plan.kind === 'seamed' ? [] : [pieceLine('hemStitching', pathThrough(...hem.stitching))]),
    ...quarterMarks(l),
    ...hemQuarters(l),
    ...cordOpenings(l),
  ];
}

/**
 * Where a leg may be cut across to make it longer or shorter without spoiling a curve: mid-hip, mid-thigh, mid-calf.
 *
 * @source practice
 */
function lengthenLevels(leg: Leg): readonly { readonly name: LineName; readonly y: Mm }[] {
  const hem = Math.min(...leg.hem.flatMap(([a, , , d]) => [a.y, d.y]));
  const waist = Math.max(leg.front.waistPoint.y, leg.back.waistPoint.y);
  const knee = leg.kneeLevel ?? hem;
  const lowestNotch = leg.crotchLevel + CLEAR_OF_NOTCHES;
  const rise = { name: 'lengthenRise', y: (waist + leg.hipLevel) / 2 } as const;
  const amidThigh = Math.min(Math.max(lowestNotch, (leg.crotchLevel + knee) / 2), hem - CLEAR_OF_HEM);
  const thigh = { name: 'lengthenThigh', y: amidThigh } as const;
  const calf = { name: 'lengthenCalf', y: (knee + hem) / 2 } as const;
  return [
    rise,
    ...(hem > lowestNotch + CLEAR_OF_NOTCHES ? [thigh] : []),
    ...(leg.kneeLevel !== undefined && hem - knee > 3 * CLEAR_OF_HEM ? [calf] : []),
  ];
}

const CLEAR_OF_NOTCHES = 60;
const CLEAR_OF_HEM = 60;

/** A level right across the net leg, from back to front. */
function levelLine(outline: Outline<EdgeName>, y: Mm): readonly [Point, Point] | undefined {
  const seams = outline.filter(({ name }) => isWorn(name));
  const xs = seams.flatMap((edge) =>
    edge.curves.flatMap((curve: Curve) =>
      curveMeetsLine(curve, { x: 0, y }, { x: 1, y: 0 }).map((t) => curvePoint(curve, t).x),
    ),
  );
  const [left, right] = [Math.max(...xs.filter((x) => x < 0)), Math.min(...xs.filter((x) => x > 0))];
  if (!Number.isFinite(left) || !Number.isFinite(right)) return undefined;
  return [
    { x: left, y },
    { x: right, y },
  ];
}

/** The side position, from raw edge to raw edge: at the waist fold, the casing's edge and the hem. */
function sideLine(casing: CasingLines, hem: HemTurning): readonly [Point, Point] {
  const top = atSide(casing.raw);
  return [{ x: top.x, y: top.y - casing.higher }, atSide(hem.raw)];
}

const atSide = ([a, b]: readonly [Point, Point]): Point => ({ x: 0, y: a.y + ((0 - a.x) / (b.x - a.x)) * (b.y - a.y) });

/** How far a quarter mark reaches from the edge that it marks. */
const QUARTER_MARK = 12;

/**
 * The elastic's (or band's) quarters: the two centre seams and, halfway between them, this mark on each leg. It lies
 * apart from the side: the back is wider than the front.
 */
function quarterMarks({ casing, heights }: LegLines): readonly PieceLine[] {
  const down = down90(casing.waistEdge);
  const at = (line: readonly [Point, Point], reach: Mm): PieceLine => {
    const middle = risen(casing, line, between(line[0], line[1], 0.5));
    return pieceLine('quarter', pathThrough(middle, moved(middle, down, reach)));
  };
  if (heights.kind === 'folded') return [at(casing.raw, QUARTER_MARK), at(casing.waistEdge, -QUARTER_MARK)];
  return [at(casing.fold, QUARTER_MARK)];
}

/** A place on one of the casing's straight lines, as it lies where one hip is higher. */
const risen = ({ higher }: CasingLines, line: readonly [Point, Point], p: Point): Point =>
  higher === 0 ? p : { x: p.x, y: p.y - riseAt(line, higher, p.x) };

/**
 * The quarters of what a hem is gathered to, elastic, cord, cuff or band: the inseam, halfway round from it, which is
 * not the side, and halfway between.
 */
function hemQuarters({ plan, hem }: LegLines): readonly PieceLine[] {
  if (plan.kind !== 'seamed' && plan.channel === undefined) return [];
  const up = down90(hem.raw);
  const at = ([front, back]: readonly [Point, Point], share: number, reach: Mm): PieceLine => {
    const place = between(front, back, share);
    return pieceLine('hemQuarter', pathThrough(place, moved(place, up, reach)));
  };
  const shares = [0.25, 0.5, 0.75];
  const raw = shares.map((share) => at(hem.raw, share, QUARTER_MARK));
  return plan.kind === 'seamed' ? raw : [...raw, ...shares.map((share) => at(hem.stitching, share, -QUARTER_MARK))];
}

const down90 = ([a, b]: readonly [Point, Point]): Point => {
  const out = leftOf(unit(subtract(b, a)));
  return { x: -out.x, y: -out.y };
};

/** Cords come out 20 mm to each side of centre front, in the outer layer, reinforced. @source practice */
export const CORD_FROM_CENTRE = 20;
/** A buttonhole is this much longer than its cord is wide. */
const BUTTONHOLE_ROOM = 3;

/** Buttonholes or eyelets for cords: at centre front in the waist's outer layer, at the side in the hem's. */
function cordOpenings({ casing, heights, waist, hem, plan }: LegLines): readonly PieceLine[] {
  const found: PieceLine[] = [];
  const channel = heights.channels.find((one) => one.holds === 'cord');
  if (channel) {
    const [back, front] = casing.waistEdge;
    const way = unit(subtract(back, front));
    const up = down90([front, back]);
    const foot = risen(casing, casing.waistEdge, moved(front, way, CORD_FROM_CENTRE));
    const middle = moved(foot, up, (channel.from + channel.to) / 2);
    found.push(buttonhole('cordOpening', middle, up, waist.cordWidth));
  }
  if (plan.channel?.holds === 'cord') {
    const [stitched, folded] = [atSide(hem.stitching), { x: 0, y: atSide(hem.stitching).y + plan.depth }];
    found.push(buttonhole('hemCordOpening', between(stitched, folded, 0.5), { x: 0, y: 1 }, plan.channel.width));
  }
  return found;
}

function buttonhole(name: LineName, middle: Point, way: Point, width: Mm): PieceLine {
  const half = (width + BUTTONHOLE_ROOM) / 2;
  return pieceLine(name, pathThrough(moved(middle, way, -half), moved(middle, way, half)));
}
