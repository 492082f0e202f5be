import {
  type Curve,
  chordSlant,
  curveFrom,
  curveMeetsLine,
  curvePoint,
  curveTangent,
  distance,
  downWith,
  type Hollow,
  hollowLine,
  moved,
  type Outline,
  type Point,
  pathEnd,
  pathReverse,
  pathStart,
  point,
  type Slant,
  slantExcess,
  straight,
  unit,
} from '../plane';
import { crotchCurve } from './crotch';
import type { Proportions } from './proportions';
import type { Block, BlockEdge, Dart } from './types';

/** What differs between the two parts; widths count outwards from the side line. */
interface PartFigures {
  readonly part: 'front' | 'back';
  readonly outwards: 1 | -1;
  readonly width: number;
  readonly extension: number;
  readonly lean: number;
  /** The waist level at the centre. */
  readonly centreTop: number;
  /** How far above the crotch line the curve begins. */
  readonly curveRise: number;
  readonly crotchDrop: number;
  readonly crease: number;
  readonly knee: number;
  readonly hem: number;
  readonly darts: readonly number[];
}

/** The front curve begins this share of its extension above the crotch line, but never above the hip (practice). */
const FRONT_CURVE_RISE = 1.2;
/** Darts end this far above the hip line, as a share of the way down to it (practice). */
const DART_LENGTH = { front: 0.5, back: 0.75 } as const;

export function frontBlock(p: Proportions): Block {
  return blockOf(p, {
    part: 'front',
    outwards: 1,
    width: p.frontWidth,
    extension: p.extensionFront,
    lean: p.leanFront,
    centreTop: p.frontDrop,
    curveRise: Math.min(FRONT_CURVE_RISE * p.extensionFront, p.crotchLevel - p.hipLevel),
    crotchDrop: 0,
    crease: p.creaseFront,
    knee: p.kneeFront,
    hem: p.hemFront,
    darts: p.dartsFront,
  });
}

/**
 * @param p the proportions
 * @param drop how far the back crotch point lies below the front's
 */
export const backBlock = (p: Proportions, drop: number): Block => blockOf(p, backFigures(p, drop));

/** The back's inseam alone, for finding its drop: the rest of the block doesn't change its length. */
export const backInseam = (p: Proportions, drop: number): readonly Curve[] => partInseam(p, backFigures(p, drop));

const backFigures = (p: Proportions, drop: number): PartFigures => ({
  part: 'back',
  outwards: -1,
  width: p.backWidth,
  extension: p.extensionBack,
  lean: p.leanBack,
  centreTop: -p.backRaise,
  curveRise: p.crotchLevel - p.hipLevel,
  crotchDrop: drop,
  crease: p.creaseBack,
  knee: p.kneeBack,
  hem: p.hemBack,
  darts: p.dartsBack,
});

/** The point at a distance outwards from the side line, at a level. */
type PointAt = (across: number, level: number) => Point;
const pointsOf =
  ({ outwards }: PartFigures): PointAt =>
  (across, level) =>
    point(outwards * across, level);

function partInseam(p: Proportions, f: PartFigures): readonly Curve[] {
  const at = pointsOf(f);
  return inseamLine(
    at(f.width + f.extension, p.crotchLevel + f.crotchDrop),
    at(f.crease + f.knee / 2, p.kneeLevel),
    at(f.crease + f.hem / 2, p.hemLevel),
    f.outwards,
  );
}

function blockOf(p: Proportions, f: PartFigures): Block {
  const at = pointsOf(f);
  const waistCentre = at(f.width - f.lean, f.centreTop);
  const hipCentre = at(f.width, p.hipLevel);
  const centreWay = unit({ x: hipCentre.x - waistCentre.x, y: hipCentre.y - waistCentre.y });
  const curveEnd = moved(hipCentre, centreWay, (p.crotchLevel - f.curveRise - p.hipLevel) / centreWay.y);
  const inseam = partInseam(p, f);
  const [crotchPoint, hem] = [pathStart(inseam), pathEnd(inseam)];
  const crotch = crotchCurve(curveEnd, centreWay, crotchPoint, curveTangent(inseam[0] as Curve, 0), f.outwards);
  const side = sideLine(p, f, at);
  const waist = waistLine(at(p.side, 0), waistCentre, centreWay, f.outwards);
  const edges: Outline<BlockEdge> = [
    { name: 'waist', curves: [waist] },
    { name: 'centre', curves: [straight(waistCentre, curveEnd)] },
    { name: 'crotch', curves: [crotch] },
    { name: 'inseam', curves: inseam },
    { name: 'hem', curves: [straight(hem, at(f.crease - f.hem / 2, p.hemLevel))] },
    { name: 'side', curves: side },
  ];
  return {
    part: f.part,
    edges,
    grainline: [at(f.crease, p.hipLevel), at(f.crease, p.hemLevel - 0.1 * (p.hemLevel - p.kneeLevel))],
    hipLevel: p.hipLevel,
    crotchLevel: p.crotchLevel,
    kneeLevel: p.kneeLevel,
    darts: dartsOn(p, f, waist),
  };
}

/**
 * Both lines of a fitted block's leg go through its knee in one bend (practice): there they slant between their thigh
 * and their calf, and below the knee they run out to a little past the calf's slant.
 */
const KNEE_SLANT = 0.3;
const RUN_OUT = 0.35;
/** The excess makes the calf start with the slant that the thigh ends with (geometry), the handles are practice. */
const CALF_HOLLOW: Hollow = { excess: 1 / RUN_OUT, startHandle: 0.22, endHandle: 0.4 };
/** The inseam's way to the knee is short and steep, so it is hollowed less than a lounge pant's (practice). */
const THIGH_HOLLOW: Hollow = { excess: 0.25, startHandle: 0.36, endHandle: 0.2 };
/** Of the thigh's slant over the calf's: the hollow ends at the knee with a slant of its own (geometry). */
const THIGH_EXCESS = THIGH_HOLLOW.excess * (1 - KNEE_SLANT);

/** How much more a line slants at the knee than its calf does. */
const kneeBend = (thigh: Slant, calf: Slant): Slant => KNEE_SLANT * (thigh - calf);

/** From the knee down, starting with the bend that the thigh ended with. */
const calfLine = (knee: Point, hem: Point, bend: Slant): Curve =>
  hollowLine(knee, hem, chordSlant(knee, hem) - RUN_OUT * bend, CALF_HOLLOW);

/**
 * The steepest slant with which an inseam may leave the crotch point: the crotch curve arrives square to it, and would
 * arrive as a hook (practice; the check's limit is 20°).
 */
export const STEEPEST_INSEAM = Math.tan((18.5 * Math.PI) / 180);

/**
 * The inseam, hollow all the way down, without a corner at the knee. Where a full thigh stands over a near knee it would
 * leave the crotch too steeply: there knee and hem are let out at the inseam as far as that needs (practice).
 */
function inseamLine(top: Point, slimKnee: Point, slimHem: Point, outwards: 1 | -1): readonly Curve[] {
  const calf = chordSlant(slimKnee, slimHem);
  const letOut = outwards * slantExcess(top, slimKnee, calf, STEEPEST_INSEAM, THIGH_EXCESS);
  const [knee, hem] = [point(slimKnee.x + letOut, slimKnee.y), point(slimHem.x + letOut, slimHem.y)];
  const bend = kneeBend(chordSlant(top, knee), calf);
  return [hollowLine(top, knee, calf + bend, THIGH_HOLLOW), calfLine(knee, hem, bend)];
}

/** The side's handles, as shares of the chords above and below the hip, and how much more it slants at the waist (practice). */
const SIDE = { waistSlant: 1.5, atWaist: 0.33, aboveHip: 0.4, belowHip: 0.27, aboveKnee: 0.26 } as const;

/** The side, from the hem up: through the knee in one bend, then upright at the hip, then in to the waist. */
function sideLine(p: Proportions, f: PartFigures, at: PointAt): readonly Curve[] {
  const [waist, hip] = [at(p.side, 0), at(0, p.hipLevel)];
  const knee = at(f.crease - f.knee / 2, p.kneeLevel);
  const hem = at(f.crease - f.hem / 2, p.hemLevel);
  const upright = downWith(0);
  const calf = chordSlant(knee, hem);
  const bend = kneeBend(chordSlant(hip, knee), calf);
  const [seat, thigh] = [distance(waist, hip), distance(hip, knee)];
  const waistWay = downWith(SIDE.waistSlant * chordSlant(waist, hip));
  return pathReverse([
    curveFrom(waist, waistWay, SIDE.atWaist * seat, hip, upright, SIDE.aboveHip * seat),
    curveFrom(hip, upright, SIDE.belowHip * thigh, knee, downWith(calf + bend), SIDE.aboveKnee * thigh),
    calfLine(knee, hem, bend),
  ]);
}

/** The waist edge's handles, as a share of its chord (practice). */
const WAIST_HANDLE = 0.33;

/** The block's waist edge: level at the side, square to the centre line (practice). */
function waistLine(side: Point, centre: Point, centreWay: Point, outwards: 1 | -1): Curve {
  const length = distance(side, centre);
  const square = { x: outwards * centreWay.y, y: -outwards * centreWay.x };
  return curveFrom(side, { x: outwards, y: 0 }, WAIST_HANDLE * length, centre, square, WAIST_HANDLE * length);
}

/** Darts evenly along the waist edge, both legs ending on it (practice). */
function dartsOn(p: Proportions, f: PartFigures, waist: Curve): readonly Dart[] {
  const [from, to] = [p.side, f.width - f.lean];
  const onWaist = (x: number): Point => curvePoint(waist, curveMeetsLine(waist, point(x, 0), { x: 0, y: 1 })[0] ?? 0);
  return f.darts.map((width, i) => {
    const middle = f.outwards * (from + ((to - from) * (i + 1)) / (f.darts.length + 1));
    const top = onWaist(middle);
    return {
      left: onWaist(middle - width / 2),
      right: onWaist(middle + width / 2),
      tip: point(middle, top.y + (p.hipLevel - top.y) * DART_LENGTH[f.part]),
    };
  });
}
