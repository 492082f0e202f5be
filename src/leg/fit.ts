import {
  type BlockOptions,
  type Blocks,
  type CrotchFit,
  type DraftedBlocks,
  draftBlocks,
  SHIFT,
  UNFITTED,
  USUAL_SPREAD,
} from '../block';
import type { Body } from '../body';
import type { Mm } from '../length';
import { solveBetween } from '../plane';
import { joinBlocks, spreadLeg } from './join';
import { halfLength, legCrotchLength, legDrawn } from './leg';
import { finishedInseam } from './lengths';
import type { Leg } from './types';

/** λ goes so far both ways: three stages, each of length 1. @source practice */
const FARTHEST_FIT = 3;
/** The fit is solved to this, mm: a fiftieth of what the finished leg is held to. @source tolerance */
const FIT_REACHED = 0.001;
/** A crotch line lowered on to the knee has no inseam below it: for the search that is too long by more than any leg, mm. @source tolerance */
const NO_LEG: Mm = 1e6;

/**
 * The leg on which a crotch is fitted: these blocks at the usual spread, in pyjama shape at ankle length, with nothing
 * straightened, raised or lowered. So no choice about the leg ever moves a fork.
 *
 * @param blocks front and back, as drafted or brought along
 * @param body whose leg it is
 */
export function referenceLeg(blocks: Pick<Blocks, 'front' | 'back' | 'riseEase'>, body: Body): Leg {
  const ankleInseam = finishedInseam('ankle', body, blocks.riseEase);
  return legDrawn(spreadLeg(joinBlocks(blocks), USUAL_SPREAD), {
    spread: USUAL_SPREAD,
    straighten: 0,
    straightenAutomatic: false,
    raiseWaist: 0,
    lowerCrotch: 0,
    inseam: ankleInseam,
    ankleInseam,
    shape: 'pyjama',
    hemBody: body,
    kneesOut: 0,
  });
}

/**
 * Drafts the blocks of a body, fitted where its crotch length was measured: λ is solved so that the reference leg's
 * crotch is as long as the measured one and its ease. Where the front part was measured too, the inseam point is moved
 * after that, and λ solved again. What is still missed is told.
 *
 * @param body the body
 * @param options eases and balance
 */
export function fittedBlocks(body: Body, options: BlockOptions): DraftedBlocks {
  if (body.crotchLength === undefined) return draftBlocks(body, options);
  const plain = draftBlocks(body, options);
  const wanted = plain.blocks.crotchWanted ?? 0;
  const legAt = (crotchFit: CrotchFit): Leg => referenceLeg(draftBlocks(body, options, crotchFit).blocks, body);
  const fitted = (others: Omit<CrotchFit, 'fit'>): CrotchFit => {
    const missing = (fit: number): Mm => {
      const { front, back } = legAt({ ...others, fit });
      const length = legCrotchLength(front, back);
      return Number.isFinite(length) ? length - wanted : NO_LEG;
    };
    return { ...others, fit: solveBetween(missing, -FARTHEST_FIT, FARTHEST_FIT, FIT_REACHED) };
  };
  const first = fitted(UNFITTED);
  const frontWanted =
    body.frontCrotchLength === undefined ? undefined : body.frontCrotchLength + plain.proportions.crotchEase / 2;
  const found = frontWanted === undefined ? first : dividedAt(frontWanted);
  const { blocks, proportions } = draftBlocks(body, options, found);
  const { front, back } = referenceLeg(blocks, body);
  return {
    proportions,
    blocks: {
      ...blocks,
      crotchRest: legCrotchLength(front, back) - wanted,
      frontCrotchRest: frontWanted === undefined ? 0 : halfLength(front) - frontWanted,
    },
  };

  /** First the inseam point is moved, then the waist tipped: both give the front what they take from the back. */
  function dividedAt(front: Mm): CrotchFit {
    const missing = front - halfLength(legAt(first).front);
    const most = Math.min(SHIFT.most, SHIFT.ofFront * plain.proportions.extensionFront);
    const shift = Math.min(most, Math.max(-most, missing));
    const second = fitted({ shift, tip: 0 });
    const tip = front - halfLength(legAt(second).front);
    return Math.abs(tip) <= FIT_REACHED ? second : fitted({ shift, tip });
  }
}

/** A waist edge may tilt so far against the level; a hair inside the 6° within which its fold lies flat. @source practice */
const STEEPEST_EDGE = Math.tan((5.95 * Math.PI) / 180);

/**
 * How much higher centre back may rise over centre front on uncorrected blocks.
 *
 * @param leg the reference leg
 */
export function tiltRoom({ front, back }: Pick<Leg, 'front' | 'back'>): Mm {
  const tilt = front.waistPoint.y - back.waistPoint.y;
  return Math.max(0, STEEPEST_EDGE * (front.waistPoint.x - back.waistPoint.x) - tilt);
}
