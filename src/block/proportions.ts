import type { Body } from '../body';
import type { Mm } from '../length';
import {
  ABDOMEN,
  ANKLE_HEIGHT,
  BACK_RAISE,
  CREASE_TO_SIDE,
  CURVE_RISE,
  CURVY,
  FIT_DEPTH,
  FORK,
  FRONT_DROP,
  HEM_NARROWER,
  HIP_LINE,
  KNEE_EASE,
  LEAN,
  LEAST_BACK_RAISE,
  LEG_BALANCE,
  NAPPY_ROOM,
  RISE_EASE,
  SMALL_HIP,
  TILT,
  USUAL_SPREAD,
} from './figures';
import { type WaistShaping, waistShaping } from './waist-shaping';

/** What may be chosen about a drafted block; `auto` takes the value that goes with the body. */
export interface BlockOptions {
  readonly hipEase: Mm;
  readonly waistEase: Mm;
  readonly riseEase: Mm | 'auto';
  readonly crotchEase: Mm | 'auto';
  /** How much narrower the front is than a quarter of the hip, and the back wider. */
  readonly balance: Mm;
}

/** How a measured crotch length is met; both 0 where none was measured. */
export interface CrotchFit {
  /**
   * λ, −3…3, one path of three stages: up to 1 the back raise and the tilt, from 1 to 2 the depth, from 2 to 3 the
   * forks; negative where the blocks were too long.
   */
  readonly fit: number;
  /** How far the inseam point is moved forwards: longer front fork, shorter back. */
  readonly shift: Mm;
  /** How far the waist is tipped to give the front more: centre front up, centre back down. */
  readonly tip: Mm;
}

export const UNFITTED: CrotchFit = { fit: 0, shift: 0, tip: 0 };

/** Every width and level of one pair of blocks, millimetres. Levels count downwards from the waist at the side. */
export interface Proportions extends WaistShaping {
  /** Scales the fixed figures on small bodies. */
  readonly k: number;
  /** What waist or high hip have over the hip. */
  readonly abdomen: Mm;
  /** What of it the widths at the hip hold, in one leg: what neither centre front's lean nor the usual spread gives. */
  readonly abdomenWidened: Mm;
  /** A quarter of hip and ease, less the balance in front and more behind: the forks are shares of these. */
  readonly frontNet: Mm;
  readonly backNet: Mm;
  readonly frontWidth: Mm;
  readonly backWidth: Mm;
  /** The crotch line below the body's rise: what is chosen or usual, a nappy's room, and what the fit adds. */
  readonly riseEase: Mm;
  /** What of that was chosen, or is usual. */
  readonly riseEaseChosen: Mm;
  /** What of that the crotch fit added; negative where it took some off. */
  readonly fitDepth: Mm;
  readonly crotchEase: Mm;
  readonly crotchLevel: Mm;
  readonly hipLevel: Mm;
  /** How much higher than measured the hip line is drawn, on a body whose hip lies next to the crotch. */
  readonly hipRaised: Mm;
  readonly extensionFront: Mm;
  readonly extensionBack: Mm;
  /** How far above the crotch line the curves begin. */
  readonly curveRiseFront: Mm;
  readonly curveRiseBack: Mm;
  /** How far the waist drops at centre front (negative: it rises). */
  readonly frontDrop: Mm;
  readonly backRaise: Mm;
  /** How far centre back rises without a fit. */
  readonly usualRaise: Mm;
  /** How far centre front leans outwards at the waist, over a belly. */
  readonly leanOut: Mm;
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
const between = (from: number, to: number, share: number): number => from + (to - from) * share;
const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
const degreesOf = (radians: number): number => (radians * 180) / Math.PI;

/** What of the fit's path lies in its stage, −1…1: the first ends at ±1, the third at ±3. */
const stage = (fit: number, number: 1 | 2 | 3): number => Math.sign(fit) * clamp(Math.abs(fit) - (number - 1), 0, 1);

/**
 * Divides a body into the widths and levels of its two blocks.
 *
 * Each figure's source stands beside it in `figures.ts`. What the fit moves never moves the widths at the hip.
 *
 * @param body the body
 * @param options eases and balance
 * @param crotchFit how a measured crotch length is met
 * @source practice, tried on the 6,068 adults of ANSUR II (NATICK/TR-15/007, 2014) and on children
 */
export function proportionsOf(body: Body, options: BlockOptions, crotchFit: CrotchFit): Proportions {
  const { hipGirth: hip } = body;
  const k = Math.min(1, hip / SMALL_HIP);
  const [frontNet, backNet] = netWidths(hip, options, k);
  const levels = levelsOf(body, options, crotchFit.fit, k);
  const forks = forksOf(frontNet, backNet, crotchFit);
  const curves = curveRises(levels, forks, k);
  const waist = waistOf(body, options, crotchFit, { k, frontNet, backNet });
  const frontWidth = frontNet + ABDOMEN.front * waist.abdomenWidened;
  const backWidth = backNet + ABDOMEN.back * waist.abdomenWidened;
  const knee = body.kneeGirth + KNEE_EASE * k;
  const hem = knee - HEM_NARROWER * k;
  return {
    k,
    frontNet,
    backNet,
    frontWidth,
    backWidth,
    ...levels,
    hipRaised: body.hipDepth - levels.hipLevel,
    ...forks,
    ...curves,
    ...waist,
    kneeLevel: body.waistToKnee,
    hemLevel: body.bodyRise + (1 - ANKLE_HEIGHT) * body.insideLeg,
    creaseFront: (frontWidth + forks.extensionFront) / 2,
    creaseBack: (backWidth + forks.extensionBack) / 2 - CREASE_TO_SIDE * k,
    kneeFront: knee / 2 - LEG_BALANCE * k,
    kneeBack: knee / 2 + LEG_BALANCE * k,
    hemFront: hem / 2 - LEG_BALANCE * k,
    hemBack: hem / 2 + LEG_BALANCE * k,
  };
}

/** The widths at the hip that the forks are shares of, front and back. */
export function netWidths(hip: Mm, options: Pick<BlockOptions, 'hipEase' | 'balance'>, k: number): readonly [Mm, Mm] {
  const quarter = (hip + options.hipEase) / 4;
  return [quarter - options.balance * k, quarter + options.balance * k];
}

/** How much a hip is one that wants the larger seat ease, 0…1. */
const largeHip = (hip: Mm): number => clamp((hip - RISE_EASE.fromHip) / RISE_EASE.overHip, 0, 1);

type Levels = Pick<Proportions, 'riseEase' | 'riseEaseChosen' | 'fitDepth' | 'crotchEase' | 'crotchLevel' | 'hipLevel'>;

function levelsOf(body: Body, options: BlockOptions, fit: number, k: number): Levels {
  const seatEase = RISE_EASE.least + RISE_EASE.more * largeHip(body.hipGirth);
  const depth = stage(fit, 2);
  const fitDepth = depth * (depth > 0 ? FIT_DEPTH.down : FIT_DEPTH.up) * k;
  const riseEaseChosen = options.riseEase === 'auto' ? (seatEase + RISE_EASE.loungePant) * k : options.riseEase;
  const riseEase = riseEaseChosen + (body.nappy ? NAPPY_ROOM : 0) + fitDepth;
  const crotchLevel = body.bodyRise + riseEase;
  return {
    riseEase,
    riseEaseChosen,
    fitDepth,
    crotchEase: options.crotchEase === 'auto' ? seatEase * k : options.crotchEase,
    crotchLevel,
    hipLevel: Math.max(HIP_LINE.belowWaist * k, Math.min(body.hipDepth, crotchLevel - HIP_LINE.aboveCrotch * k)),
  };
}

type Forks = Pick<Proportions, 'extensionFront' | 'extensionBack'>;

/** The fit's third stage and the shift; each fork stays within its bounds, and a shift keeps their sum. */
function forksOf(frontNet: Mm, backNet: Mm, { fit, shift }: Omit<CrotchFit, 'tip'>): Forks {
  const forks = stage(fit, 3);
  const reached = ({ usual, least, most }: { readonly usual: number; readonly least: number; readonly most: number }) =>
    between(usual, forks > 0 ? most : least, Math.abs(forks));
  const [front, back] = [frontNet * reached(FORK.front), backNet * reached(FORK.back)];
  const shortest = Math.max(FORK.front.least * frontNet, front + back - FORK.back.most * backNet);
  const longest = Math.min(FORK.front.shifted * frontNet, front + back - FORK.back.least * backNet);
  const extensionFront = clamp(front + shift, shortest, longest);
  return { extensionFront, extensionBack: front + back - extensionFront };
}

function curveRises(
  { crotchLevel, hipLevel }: Pick<Levels, 'crotchLevel' | 'hipLevel'>,
  { extensionFront, extensionBack }: Forks,
  k: number,
): Pick<Proportions, 'curveRiseFront' | 'curveRiseBack'> {
  const rise = ({ least, most }: { readonly least: number; readonly most: number }, fork: Mm): Mm =>
    Math.min(clamp(crotchLevel - hipLevel, least * fork, most * fork), crotchLevel - HIP_LINE.aboveCrotch * k);
  return {
    curveRiseFront: rise(CURVE_RISE.front, extensionFront),
    curveRiseBack: rise(CURVE_RISE.back, extensionBack),
  };
}

type Waist = WaistShaping &
  Pick<Proportions, 'abdomen' | 'abdomenWidened' | 'leanOut' | 'frontDrop' | 'backRaise' | 'usualRaise'>;

/**
 * Waist, raise and leans. Widths and leans are found on the blocks before the fit, the back's lean on the shortest line
 * that a fit can leave it: so no fit moves them, and none leans further than it may.
 */
function waistOf(
  body: Body,
  options: BlockOptions,
  { fit, tip }: CrotchFit,
  { k, frontNet, backNet }: Pick<Proportions, 'k' | 'frontNet' | 'backNet'>,
): Waist {
  const { waistGirth: waist, hipGirth: hip, highHipGirth } = body;
  const aboveHip = Math.max(waist, highHipGirth ?? waist);
  const abdomen = Math.max(0, aboveHip - hip);
  const forks = forksOf(frontNet, backNet, UNFITTED);
  const highest = levelsOf(body, options, -2, k);
  const highestBack = curveRises(highest, { ...forks, extensionBack: FORK.back.most * backNet }, k);
  const backBegins = Math.min(highest.hipLevel, highest.crotchLevel - highestBack.curveRiseBack);
  const shaping = waistShaping(
    Math.max(0, (hip + options.hipEase - waist - options.waistEase) / 4),
    tan(LEAN.steepest) * (backBegins + BACK_RAISE.lowest * k),
  );
  const across = frontNet + backNet - shaping.leanBack;
  const raised = raiseOf(hip, waist, abdomen, k, across);
  const now = raised.at(fit, tip);
  const missing = Math.max(0, (aboveHip + options.waistEase - hip - options.hipEase) / 2);
  const mayLean = tan(Math.min(LEAN.outwards, TILT.steepest + degreesOf(Math.atan(raised.leastTilt / across))));
  // Under the longest fork that a fit may leave, the front's line is shortest: no fit makes it lean further.
  const longest = { ...forks, extensionFront: FORK.front.shifted * frontNet };
  const mostOut = (at: number, drop: Mm): Mm => {
    const levels = levelsOf(body, options, at, k);
    return mayLean * Math.max(0, levels.crotchLevel - curveRises(levels, longest, k).curveRiseFront - drop);
  };
  const leanOut = Math.min(missing, mostOut(0, raised.frontDrop));
  return {
    abdomen,
    abdomenWidened: Math.max(0, missing - leanOut - USUAL_SPREAD),
    leanOut: Math.min(leanOut, mostOut(fit, now.frontDrop)),
    ...shaping,
    ...now,
  };
}

/**
 * How far centre back rises and centre front drops: first without a fit, then along its first stage. A longer crotch goes
 * behind on a curvy body, as far as a straight waist edge may tilt, and all round on one without a waist.
 */
function raiseOf(hip: Mm, waist: Mm, abdomen: Mm, k: number, across: Mm) {
  const most = Math.min(TILT.most * k, tan(TILT.steepest) * across);
  const drop = FRONT_DROP.usual * k - Math.min(FRONT_DROP.mostForAbdomen * k, FRONT_DROP.ofAbdomen * abdomen);
  const curve = clamp(
    BACK_RAISE.ofCurve * (hip - waist - BACK_RAISE.usualCurve * k),
    -BACK_RAISE.less * k,
    BACK_RAISE.more * k,
  );
  const usual = clamp(hip * BACK_RAISE.ofHip + curve, LEAST_BACK_RAISE * k, BACK_RAISE.most);
  const raise = Math.min(usual, most - drop);
  const curvy = clamp((hip - waist) / (CURVY * hip), 0, 1);
  const tilt = raise + drop;
  const leastTilt = Math.min(tilt, (TILT.least + TILT.curvy * curvy) * k);
  return {
    leastTilt,
    at: (fit: number, tip: Mm): Pick<Proportions, 'frontDrop' | 'backRaise' | 'usualRaise'> => {
      const raising = stage(fit, 1);
      const end = (raising > 0 ? BACK_RAISE.highest : BACK_RAISE.lowest) * k;
      const fitted = between(raise, end, Math.abs(raising));
      const now = clamp(fitted + drop, leastTilt, tilt + curvy * (most - tilt));
      const frontUp = clamp(tip, Math.min(0, now - most) / 2, Math.max(0, now - TILT.tipped * k) / 2);
      return { backRaise: fitted - frontUp, usualRaise: raise, frontDrop: now - fitted - frontUp };
    },
    frontDrop: drop,
  };
}
