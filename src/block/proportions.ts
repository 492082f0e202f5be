import type { Body } from '../body';
import type { Mm } from '../length';

/** What may be chosen about a drafted block; `auto` takes the value that goes with the body. */
export interface BlockOptions {
  readonly hipEase: Mm;
  readonly waistEase: Mm;
  readonly riseEase: Mm | 'auto';
  readonly crotchEase: Mm | 'auto';
  /** How much narrower the front is than a quarter of the hip, and the back wider. */
  readonly balance: Mm;
}

/** Every width and level of one pair of blocks, millimetres. Levels count downwards from the waist at the side. */
export interface Proportions {
  /** Scales the fixed figures on small bodies. */
  readonly k: number;
  /** The abdomen's excess over the hip. */
  readonly abdomen: Mm;
  readonly frontWidth: Mm;
  readonly backWidth: Mm;
  readonly riseEase: Mm;
  readonly crotchEase: Mm;
  readonly crotchLevel: Mm;
  readonly hipLevel: Mm;
  /** How much higher than measured the hip line is drawn, so that the back curve has room below it. */
  readonly hipRaised: Mm;
  readonly extensionFront: Mm;
  readonly extensionBack: Mm;
  /** How far the waist drops at centre front (negative: it rises, over a full abdomen). */
  readonly frontDrop: Mm;
  readonly backRaise: Mm;
  /** Taken off the waist by each centre line's lean. */
  readonly leanFront: Mm;
  readonly leanBack: Mm;
  /** Taken off the waist at the side, front and back alike. */
  readonly side: Mm;
  readonly dartsFront: readonly Mm[];
  readonly dartsBack: readonly Mm[];
  /** Waist shaping without a place, over the whole waist. */
  readonly shapingLeft: Mm;
  readonly kneeLevel: Mm;
  readonly hemLevel: Mm;
  /** Where the crease lies, from the side. */
  readonly creaseFront: Mm;
  readonly creaseBack: Mm;
  readonly kneeFront: Mm;
  readonly kneeBack: Mm;
  readonly hemFront: Mm;
  readonly hemBack: Mm;
}

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));
const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** Without so much above the waist level at the side the back pulls down when sitting, however small the body (practice). */
export const LEAST_BACK_RAISE = 15;
/** Steepest leans that a cutter draws: back 8°, front 4° (practice). */
const STEEPEST_BACK = 8;
const STEEPEST_FRONT = 4;
/** The back curve needs this share of its extension below the hip line, or it turns too sharply to be sewn smoothly. */
const ROOM_FOR_BACK_CURVE = 0.7;
/** However short the rise, the hip line stays this far below the waist: the centre lines turn about it (practice). */
const HIGHEST_HIP = 15;
/**
 * What λ = ±1 changes: crotch depth, back raise and front drop in mm, extensions as shares. Most of a missing length is
 * found in depth and front extension, little in the raise: so the waist edge stays level at the side, and 98.7 % of the
 * survey's bodies reach their measured crotch length (with the recipe's own 18, 15, 6, 0.45, 0.35: 93.6 %).
 */
const FIT_DEPTH = 29;
const FIT_RAISE = 6;
const FIT_DROP = 3;
const FIT_FRONT = 0.8;
const FIT_BACK = 0.52;
/** A dart takes in 25 mm at most; two have room in front, three behind (practice). */
const WIDEST_DART = 25;
const DARTS_FRONT = 2;
const DARTS_BACK = 3;
/** The ankle lies this share of the inside leg above the floor. */
export const ANKLE_HEIGHT = 0.08;
const NAPPY_ROOM = 25;

/**
 * Divides a body into the widths and levels of its two blocks.
 *
 * Formulas: practice, tried on the 6,068 bodies of ANSUR II; rise ease ½–1 in by hip after *Measurements for Fitting
 * Pants* (New Mexico State University Extension, C-209, an older print as quoted); front extension between hip/16 and
 * hip/12 before fitting, back about twice that (*The Practical Designer*, 1911 and 1918).
 *
 * @param body the body
 * @param options eases and balance
 * @param fit λ, −1…1: how far crotch depth, raise and extensions are moved to reach a measured crotch length
 * @param shift moves the inseam point forwards (positive: longer front extension, shorter back), millimetres
 */
export function proportionsOf(body: Body, options: BlockOptions, fit: number, shift: Mm): Proportions {
  const { waistGirth: waist, hipGirth: hip, highHipGirth } = body;
  const k = Math.min(1, hip / 900);
  const abdomen = Math.max(0, waist - hip, (highHipGirth ?? hip) - hip);
  const c = clamp((hip - 875) / 105, 0, 1);
  const frontNet = (hip + options.hipEase) / 4 - options.balance * k;
  const backNet = (hip + options.hipEase) / 4 + options.balance * k;
  const riseEase =
    (options.riseEase === 'auto' ? (13 + 12 * c + 6) * k : options.riseEase) + (body.nappy ? NAPPY_ROOM : 0);
  const crotchEase = options.crotchEase === 'auto' ? 2 * (13 + 12 * c) * k : options.crotchEase;
  const crotchLevel = body.bodyRise + riseEase + FIT_DEPTH * fit * k;
  const extensionFront = 0.28 * frontNet * (1 + FIT_FRONT * fit) + shift;
  const extensionBack = 0.54 * backNet * (1 + FIT_BACK * fit) - shift;
  const hipLevel = Math.max(
    Math.min(body.hipDepth, crotchLevel - ROOM_FOR_BACK_CURVE * extensionBack),
    HIGHEST_HIP * k,
  );
  const frontDrop = clamp(8 - FIT_DROP * fit, 2, 14) * k - Math.min(16, abdomen / 4);
  const backRaise = clamp((30 + FIT_RAISE * fit) * k, LEAST_BACK_RAISE, 45);
  const shaping = waistShaping(
    Math.max(0, (hip + abdomen + options.hipEase - waist - options.waistEase) / 4),
    tan(STEEPEST_FRONT) * Math.max(0, hipLevel - frontDrop),
    tan(STEEPEST_BACK) * (hipLevel + backRaise),
  );
  const knee = body.kneeGirth + 110 * k;
  const hem = knee - 20 * k;
  const frontWidth = frontNet + 0.35 * abdomen;
  const backWidth = backNet + 0.15 * abdomen;
  return {
    k,
    abdomen,
    frontWidth,
    backWidth,
    riseEase,
    crotchEase,
    crotchLevel,
    hipLevel,
    hipRaised: body.hipDepth - hipLevel,
    extensionFront,
    extensionBack,
    frontDrop,
    backRaise,
    ...shaping,
    kneeLevel: body.waistToKnee,
    hemLevel: body.bodyRise + (1 - ANKLE_HEIGHT) * body.insideLeg,
    creaseFront: (frontWidth + extensionFront) / 2,
    creaseBack: (backWidth + extensionBack) / 2 - 5 * k,
    kneeFront: knee / 2 - 10 * k,
    kneeBack: knee / 2 + 10 * k,
    hemFront: hem / 2 - 10 * k,
    hemBack: hem / 2 + 10 * k,
  };
}

/**
 * Shares out what the waist is smaller than the hip line: leans of the centres, the side, then darts.
 *
 * @param quarter what a quarter of the waist must lose
 * @param steepestFront what the front may lean at most
 * @param steepestBack what the back may lean at most
 */
function waistShaping(
  quarter: Mm,
  steepestFront: Mm,
  steepestBack: Mm,
): Pick<Proportions, 'leanFront' | 'leanBack' | 'side' | 'dartsFront' | 'dartsBack' | 'shapingLeft'> {
  const leanBack = Math.min(30, 0.48 * quarter, steepestBack);
  const leanFront = Math.min(10, 0.16 * quarter, steepestFront);
  const rest = Math.max(0, 2 * quarter - leanBack - leanFront);
  const side = Math.min(0.2 * rest, 25);
  const darts = rest - 2 * side;
  const room = DARTS_FRONT + DARTS_BACK;
  const front = worthSewing(Math.min((darts * DARTS_FRONT) / room, DARTS_FRONT * WIDEST_DART));
  const back = worthSewing(Math.min((darts * DARTS_BACK) / room, DARTS_BACK * WIDEST_DART));
  return {
    leanFront,
    leanBack,
    side,
    dartsFront: dartWidths(front),
    dartsBack: dartWidths(back),
    shapingLeft: 2 * (darts - front - back),
  };
}

/** A dart narrower than this is no dart: what it would take stays in the waist. */
const NARROWEST_DART = 5;
const worthSewing = (width: Mm): Mm => (width < NARROWEST_DART ? 0 : width);

/** As few equal darts as the width needs. */
function dartWidths(width: Mm): readonly Mm[] {
  const count = Math.ceil(width / WIDEST_DART - 1e-9);
  return Array.from({ length: count }, () => width / count);
}
