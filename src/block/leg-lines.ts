import {
  type Curve,
  chordSlant,
  curveFrom,
  distance,
  downWith,
  type Hollow,
  hollowLine,
  type Point,
  pathReverse,
  point,
  type Slant,
  slantExcess,
} from '../plane';

/**
 * Both lines of a fitted block's leg go through its knee in one bend: there they slant between their thigh
 * and their calf, and below the knee they run out to a little past the calf's slant.
 *
 * @source practice
 */
const KNEE_SLANT = 0.3;
const RUN_OUT = 0.35;
/** The excess makes the calf start with the slant that the thigh ends with. @source geometry; the handles practice */
const CALF_HOLLOW: Hollow = { excess: 1 / RUN_OUT, startHandle: 0.22, endHandle: 0.4 };
/** The inseam's way to the knee is short and steep, so it is hollowed less than a lounge pant's. @source practice */
const THIGH_HOLLOW: Hollow = { excess: 0.25, startHandle: 0.36, endHandle: 0.2 };
/** Of the thigh's slant over the calf's: the hollow ends at the knee with a slant of its own. @source geometry */
const THIGH_EXCESS = THIGH_HOLLOW.excess * (1 - KNEE_SLANT);

/** How much more a line slants at the knee than its calf does. */
const kneeBend = (thigh: Slant, calf: Slant): Slant => KNEE_SLANT * (thigh - calf);

/** From the knee down, starting with the bend that the thigh ended with. */
const calfLine = (knee: Point, hem: Point, bend: Slant): Curve =>
  hollowLine(knee, hem, chordSlant(knee, hem) - RUN_OUT * bend, CALF_HOLLOW);

/**
 * The steepest slant with which an inseam may leave the crotch point: the crotch curve arrives square to it, and would
 * arrive as a hook.
 *
 * @source practice; the check's limit is 20°
 */
export const STEEPEST_INSEAM = Math.tan((18.5 * Math.PI) / 180);

/**
 * The inseam, hollow all the way down, without a corner at the knee. Where a full thigh stands over a near knee it
 * would leave the crotch too steeply: there knee and hem are let out at the inseam as far as that needs.
 *
 * @param top the crotch point
 * @param slimKnee the knee point, before it is let out
 * @param slimHem the hem point, before it is let out
 * @param outwards +1 for a front (inseam on the right), −1 for a back
 * @source practice
 */
export function inseamLine(top: Point, slimKnee: Point, slimHem: Point, outwards: 1 | -1): readonly Curve[] {
  const calf = chordSlant(slimKnee, slimHem);
  const letOut = outwards * slantExcess(top, slimKnee, calf, STEEPEST_INSEAM, THIGH_EXCESS);
  return inseamThrough(top, point(slimKnee.x + letOut, slimKnee.y), point(slimHem.x + letOut, slimHem.y));
}

/**
 * The inseam through three points that are given, however steep that makes it.
 *
 * @param top the crotch point
 * @param knee the inseam's knee point
 * @param hem lower end
 * @source practice
 */
export function inseamThrough(top: Point, knee: Point, hem: Point): readonly Curve[] {
  const calf = chordSlant(knee, hem);
  const bend = kneeBend(chordSlant(top, knee), calf);
  return [hollowLine(top, knee, calf + bend, THIGH_HOLLOW), calfLine(knee, hem, bend)];
}

/** The side's handles, as shares of the chords above and below the hip, and how much more it slants at the waist. @source practice */
const SIDE = { waistSlant: 1.5, atWaist: 0.33, aboveHip: 0.4, belowHip: 0.27, aboveKnee: 0.26 } as const;

/**
 * The side, from the hem up: through the knee in one bend, then upright at the hip, then in to the waist.
 *
 * @param waist upper end
 * @param hip where it stands upright
 * @param knee the side's own knee point
 * @param hem lower end
 * @source practice
 */
export function sideLine(waist: Point, hip: Point, knee: Point, hem: Point): readonly Curve[] {
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
