import type { Body } from '../body';
import type { Mm } from '../length';
import { type Curve, edgeLength, outlineEdge, pathLength, solveBetween, TOLERANCE } from '../plane';
import { backBlock, backCrotch, backInseam, frontBlock, frontCrotch } from './construct';
import { type BlockOptions, type Proportions, proportionsOf } from './proportions';
import type { Block, Blocks } from './types';

/** The back crotch point is looked for so far above and below the front's: bounds of a search (tolerance); a lesson's drop is 1 cm. */
const DROP_LIMITS = [-60, 90] as const;
/** The inseam point is moved by at most this, where the front part of the crotch length was measured (practice). */
const MOST_SHIFT = 15;
/** And by at most this share of the front extension: on a small body 15 mm may be more than there is (practice). */
const MOST_SHIFT_SHARE = 0.5;

/** The fit is solved to this, mm (tolerance): a fiftieth of what the finished leg is held to. */
const FIT_REACHED = 0.001;

interface Pair {
  readonly proportions: Proportions;
  readonly front: Block;
  readonly back: Block;
  readonly drop: number;
}

/** Blocks and the proportions they were drawn by, for the working. */
export interface DraftedBlocks {
  readonly blocks: Blocks;
  readonly proportions: Proportions;
}

/**
 * Drafts the fitted front and back block, net.
 *
 * Where the crotch length was measured, λ is solved so that the drafted length is the measured one plus ease; where
 * its front part was measured too, the inseam point is moved by at most 15 mm after that. The rest is reported.
 *
 * @param body the body
 * @param options eases and balance
 * @param aim drafts the crotch this much longer than wanted: what the leg's own shape will take off it again
 */
export function draftBlocks(body: Body, options: BlockOptions, aim: Mm = 0): DraftedBlocks {
  const { fit, shift } = crotchFit(body, options, aim);
  const pair = pairAt(body, options, fit, shift);
  const wanted = wantedCrotch(body, pair.proportions);
  return {
    proportions: pair.proportions,
    blocks: {
      front: pair.front,
      back: pair.back,
      crotchFit: fit,
      crotchRest: wanted === undefined ? 0 : crotchLengthOf(pair.front) + crotchLengthOf(pair.back) - wanted,
      crotchWanted: wanted,
      backCrotchDrop: pair.drop,
      backRaise: pair.proportions.backRaise,
      riseEase: pair.proportions.riseEase,
      extensionFront: pair.proportions.extensionFront,
      extensionBack: pair.proportions.extensionBack,
      shapingLeft: pair.proportions.shapingLeft,
    },
  };
}

function crotchFit(body: Body, options: BlockOptions, aim: Mm): { readonly fit: number; readonly shift: number } {
  if (body.crotchLength === undefined) return { fit: 0, shift: 0 };
  const solved = (shift: number) =>
    solveBetween(
      (fit) => {
        const proportions = proportionsOf(body, options, fit, shift);
        const front = frontCrotch(proportions);
        const back = backCrotch(proportions, dropFor(proportions, front.inseam));
        const wanted = (wantedCrotch(body, proportions) ?? 0) + aim;
        return pathLength(front.crotch) + pathLength(back.crotch) - wanted;
      },
      -1,
      1,
      FIT_REACHED,
    );
  const first = solved(0);
  if (body.frontCrotchLength === undefined) return { fit: first, shift: 0 };
  const proportions = proportionsOf(body, options, first, 0);
  const frontWanted = body.frontCrotchLength + proportions.crotchEase / 2;
  const most = Math.min(MOST_SHIFT, MOST_SHIFT_SHARE * proportions.extensionFront);
  const shift = Math.min(most, Math.max(-most, frontWanted - pathLength(frontCrotch(proportions).crotch)));
  return { fit: solved(shift), shift };
}

const wantedCrotch = (body: Body, p: Proportions): number | undefined =>
  body.crotchLength === undefined ? undefined : body.crotchLength + p.crotchEase;

/** Both blocks, the back's crotch point dropped until the inseams are equal. */
function pairAt(body: Body, options: BlockOptions, fit: number, shift: number): Pair {
  const proportions = proportionsOf(body, options, fit, shift);
  const front = frontBlock(proportions);
  const drop = dropFor(proportions, outlineEdge(front.edges, 'inseam').curves);
  return { proportions, front, back: backBlock(proportions, drop), drop };
}

/** How far the back's crotch point is dropped until its inseam is as long as the front's. */
function dropFor(proportions: Proportions, frontInseam: readonly Curve[]): number {
  const inseam = pathLength(frontInseam);
  return solveBetween((d) => pathLength(backInseam(proportions, d)) - inseam, ...DROP_LIMITS, TOLERANCE.solved);
}

/** From the waist along the centre and the crotch curve to the crotch point. */
export function crotchLengthOf(block: Block): number {
  return edgeLength(outlineEdge(block.edges, 'centre')) + edgeLength(outlineEdge(block.edges, 'crotch'));
}
