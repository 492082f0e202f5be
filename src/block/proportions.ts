import type { Body } from '../body';
import type { Mm } from '../length';
import {
  ABDOMEN,
  ANKLE_HEIGHT,
  BACK_RAISE,
  CREASE_TO_SIDE,
  DARTS,
  EXTENSION,
  FIT,
  FRONT_DROP,
  HEM_NARROWER,
  HIGHEST_HIP,
  KNEE_EASE,
  LEAN,
  LEAST_BACK_RAISE,
  LEG_BALANCE,
  NAPPY_ROOM,
  RISE_EASE,
  ROOM_FOR_BACK_CURVE,
  SIDE_SHAPING,
  SMALL_HIP,
} from './figures';

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

/**
 * Divides a body into the widths and levels of its two blocks.
 *
 * Formulas: practice, tried on the 6,068 bodies of ANSUR II; each figure's source stands beside it in `figures.ts`.
 *
 * @param body the body
 * @param options eases and balance
 * @param fit λ, −1…1: how far crotch depth, raise and extensions are moved to reach a measured crotch length
 * @param shift moves the inseam point forwards (positive: longer front extension, shorter back), millimetres
 */
export function proportionsOf(body: Body, options: BlockOptions, fit: number, shift: Mm): Proportions {
  const { waistGirth: waist, hipGirth: hip, highHipGirth } = body;
  const k = Math.min(1, hip / SMALL_HIP);
  const abdomen = Math.max(0, waist - hip, (highHipGirth ?? hip) - hip);
  const seatEase = RISE_EASE.least + RISE_EASE.more * clamp((hip - RISE_EASE.fromHip) / RISE_EASE.overHip, 0, 1);
  const frontNet = (hip + options.hipEase) / 4 - options.balance * k;
  const backNet = (hip + options.hipEase) / 4 + options.balance * k;
  const riseEase =
    (options.riseEase === 'auto' ? (seatEase + RISE_EASE.loungePant) * k : options.riseEase) +
    (body.nappy ? NAPPY_ROOM : 0);
  const crotchEase = options.crotchEase === 'auto' ? 2 * seatEase * k : options.crotchEase;
  const crotchLevel = body.bodyRise + riseEase + FIT.depth * fit * k;
  const extensionFront = EXTENSION.front * frontNet * (1 + FIT.front * fit) + shift;
  const extensionBack = EXTENSION.back * backNet * (1 + FIT.back * fit) - shift;
  const hipLevel = Math.max(
    Math.min(body.hipDepth, crotchLevel - ROOM_FOR_BACK_CURVE * extensionBack),
    HIGHEST_HIP * k,
  );
  const frontDrop =
    clamp(FRONT_DROP.usual - FIT.drop * fit, FRONT_DROP.least, FRONT_DROP.most) * k -
    Math.min(FRONT_DROP.mostForAbdomen, FRONT_DROP.ofAbdomen * abdomen);
  const backRaise = clamp((BACK_RAISE.usual + FIT.raise * fit) * k, LEAST_BACK_RAISE, BACK_RAISE.most);
  const shaping = waistShaping(
    Math.max(0, (hip + abdomen + options.hipEase - waist - options.waistEase) / 4),
    tan(LEAN.front.steepest) * Math.max(0, hipLevel - frontDrop),
    tan(LEAN.back.steepest) * (hipLevel + backRaise),
  );
  const knee = body.kneeGirth + KNEE_EASE * k;
  const hem = knee - HEM_NARROWER * k;
  const frontWidth = frontNet + ABDOMEN.front * abdomen;
  const backWidth = backNet + ABDOMEN.back * abdomen;
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
    creaseBack: (backWidth + extensionBack) / 2 - CREASE_TO_SIDE * k,
    kneeFront: knee / 2 - LEG_BALANCE * k,
    kneeBack: knee / 2 + LEG_BALANCE * k,
    hemFront: hem / 2 - LEG_BALANCE * k,
    hemBack: hem / 2 + LEG_BALANCE * k,
  };
}

/**
 * Shares out what the waist is smaller than the hip line: leans of the centres, the side, then darts (practice).
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
  const leanBack = Math.min(LEAN.back.most, LEAN.back.share * quarter, steepestBack);
  const leanFront = Math.min(LEAN.front.most, LEAN.front.share * quarter, steepestFront);
  const rest = Math.max(0, 2 * quarter - leanBack - leanFront);
  const side = Math.min(SIDE_SHAPING.share * rest, SIDE_SHAPING.most);
  const darts = rest - 2 * side;
  const room = DARTS.front + DARTS.back;
  const front = worthSewing(Math.min((darts * DARTS.front) / room, DARTS.front * DARTS.widest));
  const back = worthSewing(Math.min((darts * DARTS.back) / room, DARTS.back * DARTS.widest));
  return {
    leanFront,
    leanBack,
    side,
    dartsFront: dartWidths(front),
    dartsBack: dartWidths(back),
    shapingLeft: 2 * (darts - front - back),
  };
}

const worthSewing = (width: Mm): Mm => (width < DARTS.narrowest ? 0 : width);

/** Rounding must not open another dart (tolerance). */
const ROUNDING = 1e-9;

/** As few equal darts as the width needs. */
function dartWidths(width: Mm): readonly Mm[] {
  const count = Math.ceil(width / DARTS.widest - ROUNDING);
  return Array.from({ length: count }, () => width / count);
}
